// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Questions and orders that make no sense as they are.

#include "problem/fault.h"

namespace crownring {

enum class UseFault : std::uint8_t {
    EmptyKit,
    ItemNotYetThere,    ///< %1: the item, %2: the day
    NoItemOnThatDay,    ///< %1: the item, %2: the day
    BalloonNotYetThere, ///< %1: the registration, %2: the day
    NoBalloon,          ///< %1: the registration
    NoItem,             ///< %1: its id
    NoSubject,
    FlightTakenMeanwhile, ///< %1: the balloon, %2: the day
    NoRecordNamed,
    BoundNotOnce,
    NotAnAcknowledgement, ///< %1: as it is written
    NotUtf8,              ///< %1: which argument, %2: from which byte on
    SomethingToChoose,
    BadRows,
    FileUnreadable,
    NotAFile,
    NoPicture, ///< %1: what the reader says
    PictureNotKept,
    PictureTooLarge, ///< %1, %2: its pixels across and down
    NotAWholeNumber,
    NotANumber,
    OnlyTried,
    NoWork,          ///< %1: as written
    DaysNotAhead,    ///< %1, %2: the first day and the last, %3: the most years
    NotAPlan,        ///< %1: as written
    NotAFlight,      ///< %1: as written
    NotALetter,      ///< of no visit that is planned
    NoVisitPlanned,  ///< %1: its id
    TooLong,         ///< %1, %2: how many letters there are, and may be
    PlanFileTooDeep, ///< this one to the last: of files of stations and of pins
    PlanFileNotAnObject,
    PlanFileKeyTwice,
    PlanFileValueNotAllowed, ///< %1: what may stand there
    PlanFileKeyMissing,      ///< %1: what may stand there
    PlanFileKeyNotAllowed,   ///< %1: what may stand there
    PlanFileNotOfThisKind,
    PlanFileCannotBeChecked, ///< %1: what the checker says
    DaysTurnedRound,         ///< %1, %2: the first day and the last
    StationTwice,            ///< %1: its name
    NoStationOfThatName,     ///< %1: its name
    PinOfNoBalloon,          ///< %1: the registration
    PinOutsidePlan,          ///< %1, %2: the first Monday and the last of the plan
    PinWhereClosed,          ///< %1: the Monday of the week
    PinTwice,                ///< %1: the balloon, %2: the Monday
    PinsTooMany,             ///< %1: the station, %2: the Monday, %3: how many it takes
    NotARisk,
};
[[nodiscard]] FaultRow rowOf(UseFault fault);

}
