// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Why a reading stands as it does against what is stated.

#include "problem/argument.h"

namespace crownring {

enum class JudgedPhrase : std::uint8_t {
    AtLeast,   ///< %1: the reading, %2: the bound
    AtMost,    ///< %1: the reading, %2: the bound
    Between,   ///< %1: the reading, %2, %3: the bounds
    Undecided, ///< %1: one of the three before
    NoLimit,   ///< %1: the quantity
    LimitWithoutPressure,
    OtherTest,        ///< %1, %2: the tests of the limit and of the reading
    TestNotSaid,      ///< %1, %2: the tests of the limit and of the reading
    DirectionNotSaid, ///< %1: that of the limit
    FuelTooCold,      ///< %1: the reading, %2: how warm the fuel was, %3: what it presses then, %4: the bound
};

}
