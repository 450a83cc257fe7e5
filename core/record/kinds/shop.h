// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a shop's releases rest on: who is entitled to what, which tester is in calibration, what a type's manual
/// states, the shop's own lines, the wording that it signs and who has confirmed it: the program's own is partly from
/// memory.

#include "civil/civil_date.h"
#include "record/kinds/item_kind.h"
#include "record/kinds/kind.h"
#include "record/kinds/panels.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring {

/// A person may act in a capacity from the day of the entry on.
struct PersonEntitled {
    PersonId person;
    std::string capacity;
    std::string licence;
    std::optional<CivilDate> until;        ///< the last good day
    std::vector<Registration> balloons;    ///< only for these; empty: any
    std::string organisation{};            ///< on whose behalf; empty: in the person's own name
    std::string approval{};                ///< number of that organisation's approval
    std::optional<CivilDate> lastReview{}; ///< the last airworthiness review before the record's own
    bool operator==(const PersonEntitled&) const = default;
};

template <>
struct Kind<PersonEntitled> {
    static constexpr std::string_view name = "person.entitled";
    static constexpr std::string_view keys =
        "person capacity licence [until balloons organisation approval last_review]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{Key{"balloons", &PersonEntitled::balloons}};
    static constexpr auto brings = &PersonEntitled::person;
    static constexpr std::tuple toldUnder{&PersonEntitled::person};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static PersonEntitled read(ObjectReader& reader);
    static void write(nlohmann::json& into, const PersonEntitled& body);
};

/// A tester is in calibration from the day of the entry on.
struct TesterCalibrated {
    TesterId tester;
    CivilDate until; ///< the last good day
    std::string what;
    std::string certificate;
    std::vector<std::string> measures; ///< quantities; empty: it is not said
    std::string unit;                  ///< of `from` and `to`
    std::optional<double> from;        ///< the range in which it is calibrated
    std::optional<double> to;
    std::string station; ///< whose it is
    bool operator==(const TesterCalibrated&) const = default;
};

template <>
struct Kind<TesterCalibrated> {
    static constexpr std::string_view name = "tester.calibrated";
    static constexpr std::string_view keys = "tester until [what certificate measures unit from to station]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&TesterCalibrated::tester};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static TesterCalibrated read(ObjectReader& reader);
    static void write(nlohmann::json& into, const TesterCalibrated& body);
};

struct TypeDescribed {
    TypeName type;
    ItemKind kind = ItemKind::Other;
    std::string manual;
    std::string revision;
    std::optional<int> gores;
    std::optional<int> rows;
    bool confirmed = false; ///< it is nearly the name of another type, and somebody stands by it
    bool operator==(const TypeDescribed&) const = default;
};

template <>
struct Kind<TypeDescribed> {
    static constexpr std::string_view name = "type.described";
    static constexpr std::string_view keys = "type kind manual revision [gores rows confirmed]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&TypeDescribed::type};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static TypeDescribed read(ObjectReader& reader);
    static void write(nlohmann::json& into, const TypeDescribed& body);
};

/// What goes when a reading lies beyond its limit.
enum class Retired { Panel, Item };
inline constexpr int retiredCount = 2;
[[nodiscard]] std::string_view retiredName(Retired retired);
[[nodiscard]] std::optional<Retired> retiredFrom(std::string_view name);

/// A bound that a type's manual puts on a reading.
struct LimitStated {
    TypeName type;
    ItemKind kind = ItemKind::Other;
    std::string quantity;
    std::string unit; ///< of `least`, `most` and `proof`
    std::optional<double> least;
    std::optional<double> most;
    std::optional<double> proof; ///< the load that is to be held
    std::optional<int> places;   ///< how many readings an inspection asks
    std::optional<Zone> zone;    ///< absent: wherever no limit of its own is stated
    TestConditions conditions;
    std::string passes; ///< what passing means, in words
    std::string source;
    Retired retires = Retired::Panel;
    bool confirmed = false;          ///< as in `TypeDescribed`
    std::optional<double> seconds{}; ///< for which the load is to be held
    bool operator==(const LimitStated&) const = default;
};

template <>
struct Kind<LimitStated> {
    static constexpr std::string_view name = "limit.stated";
    static constexpr std::string_view keys =
        "type kind quantity unit source and least, most or proof [places zone direction jaw_mm pressure_pa "
        "area_cm2 hold_s passes retires confirmed]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&LimitStated::type};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static LimitStated read(ObjectReader& reader);
    static void write(nlohmann::json& into, const LimitStated& body);
};

/// An organisation's own lines, from this day on.
struct ChecklistAdopted {
    ChecklistId checklist;
    std::string document; ///< canonical JSON
    bool operator==(const ChecklistAdopted&) const = default;
};

template <>
struct Kind<ChecklistAdopted> {
    static constexpr std::string_view name = "checklist.adopted";
    static constexpr std::string_view keys = "checklist document";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&ChecklistAdopted::checklist};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static ChecklistAdopted read(ObjectReader& reader);
    static void write(nlohmann::json& into, const ChecklistAdopted& body);
};

/// From this day on, until another adoption of that text.
struct TextAdopted {
    TextId text;          ///< "part-ml-release" …
    std::string revision; ///< one revision has one wording
    std::string title;
    std::string body; ///< with places in braces that the record fills: "{aircraft}"
    std::string source;
    std::string organisation; ///< whose wording it is from now on
    bool operator==(const TextAdopted&) const = default;
};

template <>
struct Kind<TextAdopted> {
    static constexpr std::string_view name = "text.adopted";
    static constexpr std::string_view keys = "text revision body organisation [title source]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&TextAdopted::text};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static TextAdopted read(ObjectReader& reader);
    static void write(nlohmann::json& into, const TextAdopted& body);
};

/// Of one text or one checklist: exactly what has that digest, and nothing that comes after it.
struct TextConfirmed {
    std::optional<TextId> text;
    std::optional<ChecklistId> checklist;
    std::string revision;
    std::string digest;   ///< 64 hex digits
    std::string against;  ///< which rule, as amended when
    PersonId confirmedBy; ///< who may sign such a visit
    std::string capacity;
    std::string licence;
    bool operator==(const TextConfirmed&) const = default;
};

template <>
struct Kind<TextConfirmed> {
    static constexpr std::string_view name = "text.confirmed";
    static constexpr std::string_view keys =
        "revision digest against confirmed_by capacity and text or checklist [licence]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{Key{"confirmed_by", &TextConfirmed::confirmedBy}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&TextConfirmed::text, &TextConfirmed::checklist};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static TextConfirmed read(ObjectReader& reader);
    static void write(nlohmann::json& into, const TextConfirmed& body);
};

/// Who had confirmed the wording that was signed, as the signature carries it: whoever reads the paper in ten years
/// need not look for it. Of one text or one checklist.
struct ConfirmedText {
    std::optional<TextId> text;
    std::optional<ChecklistId> checklist;
    std::string revision;
    std::string digest; ///< of what was confirmed: 64 hex digits
    PersonId by;
    std::string licence;
    CivilDate on;
    std::string against; ///< which rule, as amended when
    bool operator==(const ConfirmedText&) const = default;
};

}
