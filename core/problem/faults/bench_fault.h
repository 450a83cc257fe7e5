// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Inspections, and who acts in them.

#include "problem/fault.h"

namespace crownring {

enum class BenchFault : std::uint8_t {
    NoInspection, ///< %1: its name
    NotYetOpened, ///< %1: its name, %2: the day on which it was
    NothingToInspect,
    NoItems,
    ItemNotYetThere,    ///< %1: the item, %2: the day
    NoVisit,            ///< %1: as written, %2: the visits
    NoCapacity,         ///< %1: as written, %2: the capacities
    NoCapacityToSignIn, ///< %1: as written
    SignatureIsFixed,
    SignatureDayIsFixed,
    EntryMissing,       ///< %1: its id; the record is damaged
    NoEntry,            ///< %1: its id
    NotOfTheVisit,      ///< %1: the requirement, %2: the visit
    ComponentOfBalloon, ///< %1: the balloon
    NoEventReported,    ///< %1: the visit
};
[[nodiscard]] FaultRow rowOf(BenchFault fault);

}
