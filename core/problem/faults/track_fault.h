// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Tracks of recorders (IGC).

#include "problem/fault.h"

namespace crownring {

enum class TrackFault : std::uint8_t {
    NoDate,
    TooFewFixes, ///< %1: how many
    NoAltitude,
    NoFlight,
};
[[nodiscard]] FaultRow rowOf(TrackFault fault);

}
