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
    WorkCarriedOut,
    DataUsed,
    DeferredDefects,
    Discrepancies,
    ListDated,
    Limitations,
    ReleasedBy,
    SignedBy,
    ActingAs,
    Licence,
    Item,               ///< %1: its kind, %2: its id
    OfType,             ///< %1: an item, %2: its type
    WithSerial,         ///< %1: an item, %2: its serial number
    ByChecklist,        ///< %1: the visit, %2, %3: the list and its revision, %4: how much was done, %5: the inspection
    ByOwnLines,         ///< %1: the visit, %2: how much was done, %3: the inspection
    LinesDone,          ///< %1: how many
    LinesNotApplicable, ///< %1: how many
    Readings,           ///< %1: how many
    Repair,             ///< %1: where, %2: how
    PartReplaced,       ///< %1: on what, %2: the part, %3: its release document
    DefectCleared,      ///< %1: on what, %2: how
    Defect,             ///< %1: on what, %2: what was found
    DefectDeferred,     ///< %1: a defect, %2: why it was put off
    NotCovered,
    ExceptedSpent,    ///< %1: the item, %2: what it asks
    ExceptedLapsed,   ///< %1: the item, %2: what it asks
    ExceptedUnproven, ///< %1: the item, %2: what it asks
    NothingReleased,  ///< abandoned
    DiscrepanciesListed,
    LoosePartMl, ///< %1: the items
    LooseUs,     ///< %1: the items
};

}
