// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Directives of authorities and bulletins of manufacturers, what is answered to them for items and balloons, and which
/// parts an item has: whom a directive binds may depend on these.

#include "civil/civil_date.h"
#include "measure/usage.h"
#include "record/kinds/item_kind.h"
#include "record/kinds/kind.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace crownring {

enum class IssuedBy { Authority, Manufacturer };
inline constexpr int issuedByCount = 2;
/// "authority", "manufacturer".
[[nodiscard]] std::string_view issuedByName(IssuedBy by);
[[nodiscard]] std::optional<IssuedBy> issuedByFrom(std::string_view name);

/// Serial numbers from … to, inclusive; an end that is absent is open.
struct SerialSpan {
    std::optional<std::string> from;
    std::optional<std::string> to;
    bool operator==(const SerialSpan&) const = default;
};

/// A part that must be fitted for a directive to bind.
struct PartAsked {
    std::string part;           ///< what it is, a word: "valve"; or a kind of items: "burner"
    std::optional<ItemKind> in; ///< the kind of item that it is in; absent: anywhere on the balloon
    std::vector<std::string> types;
    std::vector<SerialSpan> serials;
    bool operator==(const PartAsked&) const = default;
};

/// What an item must be; all of these.
struct AppliesTo {
    std::vector<ItemKind> kinds; ///< at least one
    std::vector<std::string> types;
    std::vector<SerialSpan> serials;
    std::vector<PartAsked> fitted; ///< to the item, or to the balloon that it is on
    bool operator==(const AppliesTo&) const = default;
};

/// How far from a day and a clock; whichever comes first.
struct DoneWithin {
    std::optional<std::int64_t> minutes, landings, inflations, days, months;
    [[nodiscard]] bool empty() const { return *this == DoneWithin(); }
    bool operator==(const DoneWithin&) const = default;
};

/// One revision of a directive. Its date is the day on which the record learnt of it; it binds from `effective` on.
struct DirectiveIssued {
    DirectiveId directive; ///< its number, as printed
    std::string revision;
    std::string title;
    std::string issuer;
    IssuedBy issuedBy = IssuedBy::Authority;
    std::string state; ///< of issue
    CivilDate effective;
    std::string source;
    AppliesTo applies;
    bool recommended = false;
    bool beforeFlight = false;
    std::optional<CivilDate> until; ///< the last good day of the first compliance
    DoneWithin first;               ///< from the effective day
    DoneWithin repeat;              ///< from each compliance; empty: it is done once
    std::string terminating;        ///< which action ends it; empty: none
    std::vector<DirectiveId> supersedes;
    std::vector<std::string> credits; ///< revisions before this one whose compliance counts
    bool operator==(const DirectiveIssued&) const = default;
};

template <>
struct Kind<DirectiveIssued> {
    static constexpr std::string_view name = "directive.issued";
    static constexpr std::string_view keys =
        "directive revision title issuer issued_by state effective source applies{kinds [types serials fitted]} "
        "[force first{before_flight by minutes landings inflations days months} repeat{minutes landings "
        "inflations days months} terminating supersedes credits]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{};
    static constexpr auto brings = &DirectiveIssued::directive;
    static constexpr std::tuple toldUnder{&DirectiveIssued::directive};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static DirectiveIssued read(ObjectReader& reader);
    static void write(nlohmann::json& into, const DirectiveIssued& body);
};

enum class DirectiveAnswer { Done, NotApplicable };
inline constexpr int directiveAnswerCount = 2;
/// "done", "not-applicable".
[[nodiscard]] std::string_view directiveAnswerName(DirectiveAnswer answer);
[[nodiscard]] std::optional<DirectiveAnswer> directiveAnswerFrom(std::string_view name);

/// Complied with, or why it need not be: for an item, or for all that it binds of a balloon.
struct DirectiveAnswered {
    std::optional<ItemId> item;
    std::optional<Registration> balloon;
    DirectiveId directive;
    std::string revision;
    DirectiveAnswer answer = DirectiveAnswer::Done;
    std::string method; ///< with `Done`
    Figures clock;      ///< of an item, what the paper states; an absent figure is computed
    std::string amoc;   ///< document that lets it be done by other means
    bool terminating = false;
    std::string why;      ///< with `NotApplicable`
    std::string capacity; ///< in which whoever answers signs for it
    std::string licence;
    std::string ref;                        ///< the paper that shows it
    std::optional<InspectionId> inspection; ///< the visit in which it was done: it counts when that is released
    bool operator==(const DirectiveAnswered&) const = default;
};

template <>
struct Kind<DirectiveAnswered> {
    static constexpr std::string_view name = "directive.answered";
    static constexpr std::string_view keys =
        "directive revision answer and item or balloon, and method or why [clock{minutes landings inflations} amoc "
        "terminating capacity licence ref inspection]";
    static constexpr TimeOfDay time{18, 0};
    static constexpr std::tuple mentions{
        Key{"directive", &DirectiveAnswered::directive}, Key{"item", &DirectiveAnswered::item},
        Key{"balloon", &DirectiveAnswered::balloon}, Key{"inspection", &DirectiveAnswered::inspection}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&DirectiveAnswered::directive, &DirectiveAnswered::item,
                                          &DirectiveAnswered::balloon, &DirectiveAnswered::inspection};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = &DirectiveAnswered::inspection;
    static DirectiveAnswered read(ObjectReader& reader);
    static void write(nlohmann::json& into, const DirectiveAnswered& body);
};

struct ListedPart {
    std::string part; ///< a word: "valve"
    std::optional<std::string> type;
    std::optional<std::string> serial;
    std::vector<ListedPart> parts;
    bool whole = false; ///< it has no other parts
    bool operator==(const ListedPart&) const = default;
};
inline constexpr int deepestPart = 4;

/// Which parts an item has, from this day on; the latest list holds.
struct PartsListed {
    ItemId item;
    std::vector<ListedPart> parts;
    bool whole = false; ///< it has no others
    std::string source; ///< where that is read
    bool operator==(const PartsListed&) const = default;
};

template <>
struct Kind<PartsListed> {
    static constexpr std::string_view name = "parts.listed";
    static constexpr std::string_view keys = "item [parts[{part [type serial parts whole]}] whole source]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{Key{"item", &PartsListed::item}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&PartsListed::item};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static PartsListed read(ObjectReader& reader);
    static void write(nlohmann::json& into, const PartsListed& body);
};

}
