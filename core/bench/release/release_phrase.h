// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What stands on a release besides the statement that a rule prescribes: headings, labels, sentences.

#include "problem/argument.h"

namespace crownring {

enum class ReleasePhrase : std::uint8_t {
    Caution,
    CautionText,
    Aircraft,
    Registration,
    EnvelopeType,
    EnvelopeSerial,
    Items,
    OnNoBalloon,
    TimeInService,
    AircraftTotalTime,
    TimeOf, ///< %1: an item, %2: its time
    Hours,  ///< %1: as 412:30
    NotKnown,
    HighestTemperature,
    CompletedOn,
    SignedOn,   ///< while maintenance is not complete
    ByItsLines, ///< as `ByChecklist`, of work whose lines are named
    WorkCarriedOut,
    ReadingsTaken,
    DataUsed,
    DeferredDefects,
    Discrepancies,
    ListDated,
    Limitations,
    Rectified, ///< %1: the item, %2: the defect, %3: what was done
    NotAskedFor,
    NotAskedOf,  ///< %1: an item without a type, %2: which tests
    FlownUntil,  ///< %1: the last good day
    FlownInAll,  ///< %1: hours and minutes
    FlownAtMost, ///< %1: how many flights
    ReleasedBy,
    SignedBy,
    ActingAs,
    Licence,
    Item,        ///< %1: its kind, %2: its id
    OfType,      ///< %1: an item, %2: its type
    WithSerial,  ///< %1: an item, %2: its serial number
    ByChecklist, ///< %1: the visit, %2, %3: the list and its revision, %4: on what, or which lines, %5: the inspection
    ByOwnLines,  ///< %1: the visit, %2: which lines, %3: the inspection
    Papers,
    NoLineDone,
    OfLot,              ///< %1: the repair, %2: the lot
    Readings,           ///< %1: how many
    Repair,             ///< %1: where, %2: how
    PartReplaced,       ///< %1: on what, %2: the part, %3: its release document
    DefectCleared,      ///< %1: on what, %2: how
    Defect,             ///< %1: on what, %2: what was found
    DeferredUntil,      ///< %1: a deferral, %2: the day
    DeferredUntilClock, ///< %1: a deferral, %2: a figure of the clock
    DeferredBy,         ///< %1: a deferral, %2: the person
    Placarded,          ///< %1: a deferral, %2: how
    DefectDeferred,     ///< %1: a defect, %2: why it was put off
    NotCovered,
    ExceptedSpent,    ///< %1: the item, %2: what it asks
    ExceptedLapsed,   ///< %1: the item, %2: what it asks
    ExceptedUnproven, ///< %1: the item, %2: what it asks
    NothingReleased,  ///< abandoned
    DiscrepanciesListed,
    Servicing,
    MinorWork,
    MajorWork,
    MinorChange,
    MajorChange,
    StandardWork,
    WorkTo,       ///< %1: what was done, %2: the data
    WorkGraded,   ///< %1: the work, %2: how grave it is
    WorkApproved, ///< %1: the work, %2: the form or approval
    WorkBy,       ///< %1: the work, %2: who performed it
    WorkOn,       ///< %1: the item, %2: what was done
    WorkOrder,    ///< %1: its number
    NotCompleted,
    OutstandingOn, ///< %1: the line, %2: the item
    Owner,         ///< %1: name and address
    OperatedBy,    ///< %1: who
    Accomplished,  ///< %1: the requirement, %2: the items
    ReadingsOf,    ///< %1: the item, %2: what was read, %3: how often, %4: the least and the most
    FromTo,        ///< %1, %2: the least and the most
    WithLimit,     ///< %1: what was read, %2: the limit
    PartOffAndOn,  ///< %1: the replaced part, %2, %3: the serial numbers that came off and went on
    LoosePartMl,   ///< %1: the items
    LooseUs,       ///< %1: the items
};

}
