// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What stands behind a flight that came from a file.

#include "problem/argument.h"

namespace crownring {

enum class FlightPhrase : std::uint8_t {
    TakeOff,      ///< %1: a time of day as the log has it
    Track,        ///< %1: the file
    FixesSkipped, ///< %1: how many
    BeganAloft,
    EndedAloft,
};

}
