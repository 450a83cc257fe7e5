// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// An inspection opens, its lines are settled, it closes.

#include "civil/civil_date.h"
#include "measure/usage.h"
#include "record/kinds/kind.h"
#include "record/kinds/shop.h"
#include "record/kinds/signatures.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring {

/// One piece of work that an inspection is to accomplish.
struct Work {
    ItemId item;
    RequirementId requirement;
    bool operator==(const Work&) const = default;
};

struct InspectionOpened {
    InspectionId inspection;
    std::string visit; ///< "part-ml-inspection" …
    std::vector<ItemId> items;
    std::optional<Registration> balloon;
    std::vector<Work> work;
    std::string checklist; ///< the whole checklist in use, canonical JSON; may be empty
    std::string order{};   ///< the shop's own number of the work order
    bool operator==(const InspectionOpened&) const = default;
};

/// The item of each piece of work.
[[nodiscard]] std::vector<ItemId> itemsOfWork(const InspectionOpened& opened);

template <>
struct Kind<InspectionOpened> {
    static constexpr std::string_view name = "inspection.opened";
    static constexpr std::string_view keys =
        "inspection visit items [balloon work[{item requirement}] checklist order]";
    static constexpr TimeOfDay time{0, 0};
    static constexpr std::tuple mentions{Key{"items", &InspectionOpened::items}, Key{"work", itemsOfWork},
                                         Key{"balloon", &InspectionOpened::balloon}};
    static constexpr auto brings = &InspectionOpened::inspection;
    static constexpr std::tuple toldUnder{&InspectionOpened::inspection, &InspectionOpened::items,
                                          &InspectionOpened::balloon};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = &InspectionOpened::inspection;
    static InspectionOpened read(ObjectReader& reader);
    static void write(nlohmann::json& into, const InspectionOpened& body);
};

enum class LineState { Open, Done, NotApplicable };
inline constexpr int lineStateCount = 3;
[[nodiscard]] std::string_view lineStateName(LineState state);
[[nodiscard]] std::optional<LineState> lineStateFrom(std::string_view name);

/// Why there is nothing to do at a line.
enum class WhyNot {
    NotFitted, ///< the item has no such part
    NotAsked,  ///< the manual does not ask for it, on a page that is named
    Other,     ///< as the finding says
};
inline constexpr int whyNotCount = 3;
[[nodiscard]] std::string_view whyNotName(WhyNot why);
[[nodiscard]] std::optional<WhyNot> whyNotFrom(std::string_view name);

/// A line of the checklist was carried out, for one item or for the visit as a whole; the latest word on it holds.
struct LineSettled {
    InspectionId inspection;
    std::string line;
    std::optional<ItemId> item;
    LineState state = LineState::Done;
    std::string finding;
    std::optional<TesterId> tester;
    std::vector<std::string> photographs; ///< SHA-256 of each, 64 hex digits
    std::optional<WhyNot> why{};          ///< it does not apply; entries of old say no more than that it does not
    std::string page{};                   ///< of the manual, with `WhyNot::NotAsked`
    bool operator==(const LineSettled&) const = default;
};

template <>
struct Kind<LineSettled> {
    static constexpr std::string_view name = "line.settled";
    static constexpr std::string_view keys = "inspection line state [why page item finding tester photographs]";
    static constexpr TimeOfDay time{18, 0};
    static constexpr std::tuple mentions{Key{"inspection", &LineSettled::inspection}, Key{"item", &LineSettled::item}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&LineSettled::inspection};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = &LineSettled::inspection;
    static LineSettled read(ObjectReader& reader);
    static void write(nlohmann::json& into, const LineSettled& body);
};

enum class Outcome {
    Released,
    Discrepancies,
    Abandoned,
    Incomplete, ///< no closing: the visit goes on (`ReleaseIncomplete`)
};
inline constexpr int outcomeCount = 4;
[[nodiscard]] std::string_view outcomeName(Outcome outcome);
[[nodiscard]] std::optional<Outcome> outcomeFrom(std::string_view name);

/// All that a signature covers: these entries as they were written, and a digest over them.
struct Seal {
    std::vector<EntryId> entries;
    std::string digest; ///< 64 hex digits
    bool operator==(const Seal&) const = default;
};

/// What an item's clock showed when it was signed for: only the figures that were known.
struct SignedClock {
    ItemId item;
    Figures clock;
    bool operator==(const SignedClock&) const = default;
};

/// What was signed as not covered: it stood lapsed, spent or unproven beside the work.
struct SignedException {
    ItemId item;
    RequirementId requirement;
    std::string title; ///< as the programme has it
    std::string standing;
    bool operator==(const SignedException&) const = default;
};

struct InspectionClosed {
    InspectionId inspection;
    Outcome outcome = Outcome::Released;
    std::string statement; ///< what was signed, word for word
    std::optional<PersonId> signatory;
    std::string capacity; ///< "independent-certifying-staff" …
    std::string licence;
    std::vector<std::string> manuals; ///< data used, with revision
    std::string limitations;
    std::vector<SignedClock> clocks; ///< of what was inspected: a flight logged late changes no paper
    std::optional<Seal> seal;
    std::vector<SignedException> excepted{};
    std::optional<Proof> proof{};
    std::vector<ConfirmedText> confirmed{}; ///< the wording it rests on; signed before that was asked: none
    bool operator==(const InspectionClosed&) const = default;
};

template <>
struct Kind<InspectionClosed> {
    static constexpr std::string_view name = "inspection.closed";
    static constexpr std::string_view keys =
        "inspection outcome signatory capacity [statement licence manuals limitations clocks[{item "
        "minutes landings inflations}] seal{entries digest} excepted[{item requirement title standing}] "
        "confirmed[{text checklist revision digest by licence on against}] proof{key "
        "signature}]";
    static constexpr TimeOfDay time{18, 10};
    static constexpr std::tuple mentions{Key{"inspection", &InspectionClosed::inspection},
                                         Key{"signatory", &InspectionClosed::signatory}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&InspectionClosed::inspection};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = &InspectionClosed::inspection;
    static InspectionClosed read(ObjectReader& reader);
    static void write(nlohmann::json& into, const InspectionClosed& body);
};

/// A line that was still to be done when a release was signed.
struct Outstanding {
    std::string line;
    std::optional<ItemId> item;
    std::string title; ///< as the checklist has it
    bool operator==(const Outstanding&) const = default;
};

/// How far a limitation lets it fly; what is absent it does not bound.
struct FlownWithin {
    std::optional<CivilDate> until;      ///< the last good day
    std::optional<Minutes> minutes;      ///< aloft in all, from the release on
    std::optional<std::int64_t> flights; ///< from the release on
    bool operator==(const FlownWithin&) const = default;
};

/// The maintenance cannot be completed yet, for want of a check flight say: what was done is released within a
/// limitation, what was not is named, and the visit goes on until its closing release (ML.A.801(f)).
struct ReleaseIncomplete {
    InspectionId inspection;
    std::string statement; ///< what was signed, word for word
    PersonId signatory;
    std::string capacity;
    std::string licence;
    std::vector<std::string> manuals; ///< data used, with revision
    std::string limitations;          ///< under which it may fly
    std::vector<Outstanding> outstanding;
    std::vector<Work> covers; ///< what the visit accomplishes once that is done
    std::optional<Seal> seal;
    FlownWithin within{};
    std::optional<Proof> proof{};
    std::vector<ConfirmedText> confirmed{}; ///< as in `InspectionClosed`
    bool operator==(const ReleaseIncomplete&) const = default;
};

/// The item of each piece of work that it covers.
[[nodiscard]] std::vector<ItemId> itemsCovered(const ReleaseIncomplete& release);

template <>
struct Kind<ReleaseIncomplete> {
    static constexpr std::string_view name = "release.incomplete";
    static constexpr std::string_view keys = "inspection signatory capacity limitations outstanding[{line item title}] "
                                             "[statement licence manuals covers[{item requirement}] seal{entries "
                                             "digest} until minutes flights confirmed[{text checklist revision digest "
                                             "by licence on against}] proof{key signature}]";
    static constexpr TimeOfDay time{18, 5};
    static constexpr std::tuple mentions{Key{"inspection", &ReleaseIncomplete::inspection},
                                         Key{"signatory", &ReleaseIncomplete::signatory}, Key{"covers", itemsCovered}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&ReleaseIncomplete::inspection};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = &ReleaseIncomplete::inspection;
    static ReleaseIncomplete read(ObjectReader& reader);
    static void write(nlohmann::json& into, const ReleaseIncomplete& body);
};

/// Every item on the list of discrepancies that the inspection was closed with is answered, and somebody who is rated
/// approves the return to service: from then on what the inspection accomplished counts, from its own day.
struct ReturnApproved {
    InspectionId inspection;
    std::string statement; ///< what was signed, word for word; empty where no rule prescribes words
    PersonId signatory;
    std::string capacity; ///< "inspection-authorization" …
    std::string licence;
    std::optional<Proof> proof{};
    std::vector<ConfirmedText> confirmed{}; ///< as in `InspectionClosed`
    bool operator==(const ReturnApproved&) const = default;
};

template <>
struct Kind<ReturnApproved> {
    static constexpr std::string_view name = "return.approved";
    static constexpr std::string_view keys = "inspection signatory capacity [statement licence confirmed[{text "
                                             "revision digest by licence on against}] proof{key signature}]";
    static constexpr TimeOfDay time{18, 15};
    static constexpr std::tuple mentions{Key{"inspection", &ReturnApproved::inspection},
                                         Key{"signatory", &ReturnApproved::signatory}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&ReturnApproved::inspection};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = nothing; ///< it comes after the closing, and adds no word to what was signed
    static ReturnApproved read(ObjectReader& reader);
    static void write(nlohmann::json& into, const ReturnApproved& body);
};

/// A release is withdrawn, or the approval of a return to service: what the closing accomplished counts no more.
struct ReleaseRevoked {
    InspectionId inspection;
    std::string reason;
    std::optional<Proof> proof{}; ///< by who withdraws it (`Entry::by`)
    bool operator==(const ReleaseRevoked&) const = default;
};

template <>
struct Kind<ReleaseRevoked> {
    static constexpr std::string_view name = "release.revoked";
    static constexpr std::string_view keys = "inspection reason [proof{key signature}]";
    static constexpr TimeOfDay time{18, 20};
    static constexpr std::tuple mentions{Key{"inspection", &ReleaseRevoked::inspection}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&ReleaseRevoked::inspection};
    static constexpr bool hasRows = true;
    static constexpr auto inspection = nothing; ///< it comes after the closing, and adds no word to what was signed
    static ReleaseRevoked read(ObjectReader& reader);
    static void write(nlohmann::json& into, const ReleaseRevoked& body);
};

}
