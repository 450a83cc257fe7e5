// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is computed of fabric.

#include "problem/fault.h"

namespace crownring {

enum class FabricFault : std::uint8_t {
    NoBoundOnOneSide,
    AgeingOpen,
    NotToldApart,
    FleetOpen,
    BelongsToNothing, ///< a lot or a set
    ReadingOfNoSet,   ///< %1: its number
    NoReading,        ///< %1: its number
    NoCoupon,
    HoursUnknown,     ///< %1: the item
    HoursUnknownOn,   ///< %1: the item, %2: the day
    NoEnvelope,       ///< %1: the item, %2: the day
    TypeUnknown,      ///< %1: the envelope
    NothingStated,    ///< %1: the type
    NoManualBoundsIt, ///< %1: how it is tested
    NoEnvelopeTested,
    NoLimitToAskFor, ///< %1: the quantity asked for
    AskForAnother,   ///< %1: the quantity asked for, %2: those that there are
};
[[nodiscard]] FaultRow rowOf(FabricFault fault);

}
