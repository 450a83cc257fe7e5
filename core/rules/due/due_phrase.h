// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Rows of the due list that the record itself makes: what was found, and what was read.

#include "problem/argument.h"

namespace crownring {

enum class DuePhrase : std::uint8_t {
    Defect,   ///< %1: what was found
    FoundOn,  ///< %1: the day
    Deferred, ///< %1: why
    DefectNote,
    DefectsFound,
    TheRecordItself,
    DefectsAreNoProgramme,
    Fabric,      ///< %1: how it is tested
    FabricNote,  ///< %1: what was read, %2: the day
    FabricSaid,  ///< %1: what was read, %2: the day
    Reading,     ///< %1: the quantity
    ReadingNote, ///< %1: what was read, %2: the day
    ReadingsOfFabric,
    ReadingsAreNoProgramme,
    ListOfInspection, ///< %1: the inspection
    ListStands,       ///< %1: the list, %2: how many are on it, %3: `StillStand`
    StillStand,       ///< %n
    ListAnswered,     ///< %1: the list
    ListSignedOn,     ///< %1: the day
    ListNote,
    ListsSigned,
    ListsAreNoProgramme,
    IncompleteIn,       ///< %1: the inspection
    IncompleteSignedOn, ///< %1: the day
    IncompleteNote,
    IncompleteReleases,
    IncompleteAreNoProgramme,
    DirectivesIssued,
    DirectivesAreNoProgramme,
    DirectiveEndedBy, ///< %1: the action that ends it
    BoundAll,         ///< whom a directive binds: everything that it asks is so
    BoundOtherKind,
    BoundOtherType,         ///< %1: of what
    BoundOtherSerial,       ///< %1: of what
    BoundNothingFitted,     ///< %1: the part
    BoundTypeMissing,       ///< %1: of what
    BoundSerialMissing,     ///< %1: of what
    BoundSerialShape,       ///< %1: of what
    BoundPartsUnlisted,     ///< %1: the part
    BoundNearly,            ///< %1: of what
    BoundEntriesDiffer,     ///< %1: of what
    BoundAnswered,          ///< %1: why it is said not to be, %2: by whom, %3: the day
    DeferralBarred,         ///< %1: why it was put off, %2: why that does not hold here
    ClearedUnsigned,        ///< %1: what was done, %2: the visit
    ClearingBarred,         ///< %1: what was done, %2: why that does not hold
    CheckFlightUntil,       ///< %1: the inspection, %2: the last good day
    CheckFlightAloft,       ///< %1: the inspection, %2: how long in all, %3: how long since
    CheckFlightMoreLeft,    ///< %1: the inspection, %2: titles of lines
    CheckFlightUnsupported, ///< %1: the inspection
    CheckFlightOther,       ///< %1: the inspection
    WorkAbandoned,          ///< %1: the visit
    WorkUnreleased,         ///< %1: the visit
    CheckFlightsFlown,      ///< %1: the inspection, %2: how many in all, %3: how many since
};

}
