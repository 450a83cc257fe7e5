// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Readings, and the limits that they are held against.

#include "problem/fault.h"

namespace crownring {

enum class ReadingFault : std::uint8_t {
    NoQuantity,     ///< %1: as written
    NoUnit,         ///< %1: as written, %2: the units
    OtherDimension, ///< %1: as written, %2: its dimension, %3: the quantity, %4: its dimension, %5: the units
    NoPartOfIt,     ///< %1: the quantity
    NotAboveZero,   ///< %1: the figure
    HasNoDirection, ///< %1: the quantity
    NoDirection,    ///< %1: as written
    NotANumber,
    BelowAbsoluteZero,
    CannotBeNegative, ///< %1: the quantity
    CountedWhole,     ///< %1: the quantity
    NextStepNotAbove,
    CannotBeHeld, ///< %1: the quantity
    NotInSteps,   ///< %1: the quantity
    DoNotCompare, ///< %1, %2: how each was tested
    PressureUnstated,
    LimitNotANumber,
    LimitWithoutBound,
    LimitTurnedRound,
    LimitCannotBeHeld, ///< %1: the quantity
    Unconfirmed,       ///< %1: what is asked about the figure
    HeldForNothing,
    NoSuchGore, ///< %1: as written, %2: the most that an envelope has
    NoSuchRow,  ///< %1: as written, %2: the most that an envelope has
    RangeOfNothing,
    RangeWithoutUnit,
    RangeTurnedRound,
    MeasuresOther,    ///< %1: the reading, %2: the tester, %3: what that measures
    BeyondRange,      ///< %1: the reading, %2: the tester
    OutOfCalibration, ///< %1: the reading, %2: the tester, %3: the day
    NoFraction,       ///< %1: as written
    ColderThanLiquid, ///< %1: as written, %2: the coldest at which it is a liquid
    HotterThanLiquid, ///< %1: as written, %2: the hottest at which it is a liquid
    NoPlaceOfIt,      ///< %1: the quantity; of a place on a basket or its rigging
    OtherItem,        ///< %1: the quantity, %2: the kind of the item, %3: the kinds that it is read of
};
[[nodiscard]] FaultRow rowOf(ReadingFault fault);

}
