// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// An entry is one immutable statement about the world: a flight was flown, an item was fitted, an inspection was done.
/// Everything that the program knows is a fold over entries. A mistake is not erased: an `EntryCorrected` or
/// `EntryVoided` points at the entry that it changes.

#include "civil/moment.h"
#include "measure/usage.h"
#include "record/bench_entry.h"

#include <variant>

namespace crownring {

/// An item comes into the record, with what was on its clock at 00:00 of that day.
struct ItemEntered {
    ItemId item;
    ItemKind kind = ItemKind::Other;
    std::optional<std::string> serial;
    std::optional<std::string> type;
    std::optional<DayOrMonth> made;
    Figures broughtForward = newFigures; ///< an absent figure is one that nobody knows
    bool operator==(const ItemEntered&) const = default;
};

struct BalloonEntered {
    Registration balloon;
    std::string title;
    std::vector<std::string> operations; ///< e.g. "for-hire", "instruction"
    bool operator==(const BalloonEntered&) const = default;
};

struct ItemFitted {
    Registration balloon;
    ItemId item;
    std::string place;
    bool operator==(const ItemFitted&) const = default;
};

struct ItemRemoved {
    Registration balloon;
    ItemId item;
    std::string place;
    bool operator==(const ItemRemoved&) const = default;
};

struct FlightLogged {
    Registration balloon;
    Usage use{Minutes{0}, Landings{1}, Inflations{1}};
    std::optional<std::vector<ItemId>> kit; ///< absent: what is fitted at that moment
    std::optional<double> maxCelsius;
    bool tethered = false;
    bool operator==(const FlightLogged&) const = default;
};

struct RequirementDone {
    ItemId item;
    RequirementId requirement;
    Figures clock; ///< what the paper states; an absent figure is computed
    std::string method;
    std::string ref;
    bool operator==(const RequirementDone&) const = default;
};

/// Whom a programme binds from its adoption on.
struct BoundBalloons {
    std::vector<Registration> balloons;
    bool operator==(const BoundBalloons&) const = default;
};
struct BoundItems {
    std::vector<ItemId> items;
    bool operator==(const BoundItems&) const = default;
};
struct BoundEverything {
    bool operator==(const BoundEverything&) const = default;
};
using Bound = std::variant<BoundBalloons, BoundItems, BoundEverything>;

struct ProgrammeAdopted {
    ProgrammeId programme;
    Bound bound;
    std::string document; ///< the programme's whole text as canonical JSON; empty only before `post` has filled it in
    std::string digest;   ///< SHA-256 of `document`, 64 hex digits
    bool operator==(const ProgrammeAdopted&) const = default;
};

/// Something happened to an item, or to a balloon and so to all that was fitted to it.
struct EventReported {
    std::variant<Registration, ItemId> subject;
    std::string event;
    std::optional<double> celsius; ///< how hot the fabric became; where a tell-tale gives a band, its upper edge
    std::optional<Minutes> lasted; ///< how long
    bool operator==(const EventReported&) const = default;
};

struct EntryCorrected {
    EntryId replaces;
    std::string with; ///< a JSON object: a shallow patch, null removes a key
    bool operator==(const EntryCorrected&) const = default;
};

struct EntryVoided {
    EntryId voids;
    std::string reason;
    bool operator==(const EntryVoided&) const = default;
};

using Body =
    std::variant<ItemEntered, BalloonEntered, ItemFitted, ItemRemoved, FlightLogged, RequirementDone, ProgrammeAdopted,
                 ReadingTaken, EventReported, EntryCorrected, EntryVoided, InspectionOpened, LineSettled, DefectFound,
                 DefectDeferred, DefectCleared, RepairMade, PartReplaced, InspectionClosed, PersonEntitled,
                 TesterCalibrated, TypeDescribed, LimitStated, ChecklistAdopted, FabricStated>;

struct Entry {
    EntryId id;
    CivilDate on;
    std::optional<TimeOfDay> time;
    std::string by;
    std::string note;
    Body body;
    bool operator==(const Entry&) const = default;
};

/// "flight.logged" and so on, in the order of `Body`.
[[nodiscard]] std::string_view kindName(const Body& body);
/// The alternatives of `Body` by name, in its order.
[[nodiscard]] const std::vector<std::string_view>& kindNames();

/// The time that an entry of this kind has when none is stated: a fitting 00:00, a flight 12:00, an accomplishment, a
/// reading and what is found, settled or repaired on the bench 18:00, a deferral 18:01, a clearance 18:02, the close of
/// an inspection 18:10, a removal 23:59, all others 00:00.
[[nodiscard]] TimeOfDay defaultTime(const Body& body);

[[nodiscard]] Moment momentOf(const Entry& entry);
[[nodiscard]] Stamp stampOf(const Entry& entry);

/// The id of the entry that this one corrects or voids.
[[nodiscard]] std::optional<EntryId> amends(const Entry& entry);

}
