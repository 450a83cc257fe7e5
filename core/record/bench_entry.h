// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is said on the bench: inspections, readings, defects, repairs, releases; and what a release rests on: who is
/// entitled to what, which tester is in calibration, what a type's manual states. Kinds of `Entry` (see `entry.h`).

#include "civil/civil_date.h"
#include "measure/name.h"
#include "measure/usage.h"
#include "record/item_kind.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace crownring {

/// A panel of an envelope: gores count from 1 around, rows from 1 at the mouth upward. Either may be unknown.
struct PanelPlace {
    std::optional<int> gore;
    std::optional<int> row;
    bool operator==(const PanelPlace&) const = default;
};

/// What is part of a reading's quantity besides its unit: readings that differ here are other series. Nothing of it is
/// ever converted.
struct TestConditions {
    std::optional<std::string> direction;  ///< "warp" or "weft"
    std::optional<double> jawMillimetres;  ///< width of the jaws of a grab or strip test
    std::optional<double> pressurePascals; ///< across the fabric
    std::optional<double> areaSquareCentimetres;
    bool operator==(const TestConditions&) const = default;
};

/// A measured value, or a load that was held.
struct ReadingTaken {
    ItemId item;
    std::string quantity;
    double value = 0;
    bool held = false;           ///< `value` is a load that was survived: a bound, not a value
    std::optional<double> below; ///< of a stepped indicator: at least `value`, below this
    std::string unit;            ///< of `value` and `below`
    PanelPlace place;
    TestConditions conditions;
    std::string method;
    std::optional<InspectionId> inspection;
    std::string line; ///< of its checklist
    std::optional<TesterId> tester;
    bool confirmed = false; ///< it looked impossible, was questioned, and a person stands by it
    bool operator==(const ReadingTaken&) const = default;
};

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
    bool operator==(const InspectionOpened&) const = default;
};

enum class LineState { Open, Done, NotApplicable };
inline constexpr int lineStateCount = 3;
[[nodiscard]] std::string_view lineStateName(LineState state);
[[nodiscard]] std::optional<LineState> lineStateFrom(std::string_view name);

/// A line of the checklist was carried out, for one item or for the visit as a whole; the latest word on it holds.
struct LineSettled {
    InspectionId inspection;
    std::string line;
    std::optional<ItemId> item;
    LineState state = LineState::Done;
    std::string finding;
    std::optional<TesterId> tester;
    std::vector<std::string> photographs; ///< SHA-256 of each, 64 hex digits
    bool operator==(const LineSettled&) const = default;
};

enum class Severity {
    Barring, ///< bars flight until it is cleared or deferred by who is entitled to
    Minor,   ///< to be put right, does not bar flight
};
inline constexpr int severityCount = 2;
[[nodiscard]] std::string_view severityName(Severity severity);
[[nodiscard]] std::optional<Severity> severityFrom(std::string_view name);

struct DefectFound {
    DefectId defect;
    ItemId item;
    std::string what;
    Severity severity = Severity::Barring;
    std::optional<InspectionId> inspection;
    std::string line;
    std::optional<EntryId> reading; ///< the reading that failed
    PanelPlace place;
    bool operator==(const DefectFound&) const = default;
};

/// At least one of `until` and `untilMinutes`.
struct DefectDeferred {
    DefectId defect;
    ItemId item;
    std::string reason;
    std::optional<CivilDate> until;      ///< the last good day
    std::optional<Minutes> untilMinutes; ///< a figure of the item's clock
    PersonId agreedBy;
    std::optional<InspectionId> inspection;
    bool operator==(const DefectDeferred&) const = default;
};

struct DefectCleared {
    DefectId defect;
    ItemId item;
    std::string what; ///< was done
    std::string ref;
    std::optional<InspectionId> inspection;
    bool operator==(const DefectCleared&) const = default;
};

struct RepairMade {
    ItemId item;
    std::string method;
    PanelPlace place;
    std::optional<double> widthMillimetres;
    std::optional<double> heightMillimetres;
    std::string lot; ///< of the material
    std::optional<DefectId> defect;
    std::optional<InspectionId> inspection;
    bool operator==(const RepairMade&) const = default;
};

struct PartReplaced {
    ItemId item;
    std::string part;
    std::string removedSerial;
    std::string fittedSerial;
    std::string releaseDocument; ///< that the fitted part came with
    std::optional<DefectId> defect;
    std::optional<InspectionId> inspection;
    bool operator==(const PartReplaced&) const = default;
};

enum class Outcome { Released, Discrepancies, Abandoned };
inline constexpr int outcomeCount = 3;
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
    bool operator==(const InspectionClosed&) const = default;
};

/// A person may act in a capacity from the day of the entry on.
struct PersonEntitled {
    PersonId person;
    std::string capacity;
    std::string licence;
    std::optional<CivilDate> until;     ///< the last good day
    std::vector<Registration> balloons; ///< only for these; empty: any
    bool operator==(const PersonEntitled&) const = default;
};

/// A tester is in calibration from the day of the entry on.
struct TesterCalibrated {
    TesterId tester;
    CivilDate until; ///< the last good day
    std::string what;
    std::string certificate;
    bool operator==(const TesterCalibrated&) const = default;
};

struct TypeDescribed {
    TypeName type;
    ItemKind kind = ItemKind::Other;
    std::string manual;
    std::string revision;
    std::optional<int> gores;
    std::optional<int> rows;
    bool operator==(const TypeDescribed&) const = default;
};

/// Of which lot the panels are that an envelope came with. Bounds that are not given reach to the end.
struct FabricStated {
    ItemId item;
    std::string lot;
    std::string fabric; ///< the cloth, as its maker names it; may be empty
    std::optional<int> firstGore;
    std::optional<int> lastGore;
    std::optional<int> firstRow;
    std::optional<int> lastRow;
    bool operator==(const FabricStated&) const = default;
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
    TestConditions conditions;
    std::string passes; ///< what passing means, in words
    std::string source;
    Retired retires = Retired::Panel;
    bool operator==(const LimitStated&) const = default;
};

/// An organisation's own lines, from this day on.
struct ChecklistAdopted {
    ChecklistId checklist;
    std::string document; ///< canonical JSON
    bool operator==(const ChecklistAdopted&) const = default;
};

}
