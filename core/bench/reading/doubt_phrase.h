// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Questions about readings that look impossible. %1: the quantity, %2: the figure, %3, %4: the plausible range.

#include "problem/argument.h"

namespace crownring {

enum class DoubtPhrase : std::uint8_t {
    IsThatSo,
    IsItRather,    ///< %5: what may have been meant
    FarFromStated, ///< %3: what the manual states; %4 is not there
    HeldTooShort,  ///< %2: for how many seconds, %3: for how many the manual has it held
    HoldUnsaid,    ///< %2: for how many seconds the manual has it held
};

}
