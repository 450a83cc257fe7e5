// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the record knows of one item at the end of a day: the plain value that the rules are applied to.

#include "civil/moment.h"
#include "measure/name.h"
#include "measure/usage.h"
#include "record/entry.h"
#include "registry/service.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring {

/// What an accomplishment rests on.
enum class Evidence {
    Signed, ///< the release of an inspection in the record
    Paper,  ///< a paper that is named, with who signed it and the licence
    Stated, ///< it is said, and no more
};
inline constexpr int evidenceCount = 3;
/// "signed", "paper", "stated".
[[nodiscard]] std::string_view evidenceName(Evidence evidence);

/// A requirement was carried out on the item.
struct Accomplishment {
    RequirementId requirement;
    Stamp stamp;
    Figures clock;  ///< the item's clock then: stated on the paper, else computed; absent where neither is known
    Figures stated; ///< only what the paper states
    std::string method;
    Evidence evidence = Evidence::Stated;
    std::optional<CivilDate> expires{}; ///< the last good day as a certificate prints it
    bool operator==(const Accomplishment&) const = default;
};

/// Something happened to the item, itself or with the balloon that it was fitted to.
struct Occurrence {
    std::string event;
    Stamp stamp;
    std::optional<Celsius> hottest{}; ///< where that was reported
    std::optional<Minutes> lasted{};  ///< how long
    bool operator==(const Occurrence&) const = default;
};

/// What became of a defect: it was found, put off, or put right.
struct DefectMark {
    enum class Kind { Found, Deferred, Cleared };
    Kind kind = Kind::Found;
    DefectId defect;
    Stamp stamp;
    Severity severity = Severity::Barring; ///< with `Found`
    std::string what; ///< what was found, why it may wait, or what was done; empty where a reading failed
    std::optional<ReadingTaken> reading; ///< with `Found`: the one that failed, where nothing else was said
    std::optional<EntryId> failed;       ///< with `Found`: the reading that failed
    std::optional<CivilDate> until;      ///< with `Deferred`: the last good day
    std::optional<Minutes> untilMinutes; ///< with `Deferred`: a figure of the item's clock
    /// With `Deferred`: why it does not hold for what the item is flown for; with `Cleared`: why whoever said so could
    /// not have. Where that was asked for (`answers/defects`).
    std::optional<Phrase> bar{};
    bool raised = false;                      ///< with `Found`: it bars more than as it was first written
    std::optional<InspectionId> unsignedIn{}; ///< with `Cleared`: the visit of it, while no release of that stands

    /// It puts the defect right.
    [[nodiscard]] bool isCounted() const { return !bar && !unsignedIn; }
    bool operator==(const DefectMark&) const = default;
};

/// What was found, or that a reading failed.
[[nodiscard]] Argument whatOf(const DefectMark& found);

/// How many items of a list of discrepancies still stand, and how many are on it.
struct ListCount {
    int standing = 0;
    int listed = 0;
    bool operator==(const ListCount&) const = default;
};

/// An inspection of the item was closed with a list of discrepancies, and nobody has approved its return to service.
struct PendingList {
    InspectionId inspection;
    Stamp closed;
    std::optional<ListCount> count{}; ///< where that was asked for (`answers/discrepancies`)
    bool operator==(const PendingList&) const = default;
};

/// A visit of the item was released after incomplete maintenance, and its closing release is still to come.
struct IncompleteWork {
    InspectionId inspection;
    Stamp released;
    bool operator==(const IncompleteWork&) const = default;
};

/// All that the rules need to know of an item at the end of a day. Only what is dated on or before that day is in it.
struct ItemFacts {
    ItemId id;
    ItemKind kind = ItemKind::Other;
    std::optional<std::string> serial;
    std::optional<std::string> type;
    std::optional<DayOrMonth> made;
    CivilDate entered;
    Figures broughtForward = newFigures; ///< at 00:00 of `entered`
    Figures clock = newFigures;          ///< at the end of the day asked
    std::optional<Registration> balloon; ///< what it is fitted to, or carried on
    std::string place;
    std::vector<std::string> operations; ///< of that balloon
    std::optional<OutOfService> out;     ///< absent: in service
    std::vector<Accomplishment> done;    ///< in the order of their stamps
    std::vector<Occurrence> events;      ///< in the order of their stamps
    std::vector<DefectMark> defects;     ///< in the order of their stamps
    std::vector<PendingList> lists{};    ///< in the order of their stamps
    std::vector<IncompleteWork> incomplete{};
    std::optional<ItemId> carrier{}; ///< the item that it is a part of
    bool operator==(const ItemFacts&) const = default;
};

}
