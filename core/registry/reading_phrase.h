// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A reading and how it was taken. %1 is what is read, or another such phrase: they stand in one another.

#include "problem/argument.h"

namespace crownring {

enum class ReadingPhrase : std::uint8_t {
    Read,        ///< %2: the figure
    Held,        ///< %2: the load
    Step,        ///< %2, %3: where the step begins and ends
    InGore,      ///< %2: its number
    InRow,       ///< %2: its number
    InZone,      ///< %2: of an envelope, or a place on a basket
    OfItem,      ///< %2: the item
    AtPressure,  ///< %2: the pressure
    OnArea,      ///< %2: the area
    BetweenJaws, ///< %2: their width
    Along,       ///< %2: warp or weft
    Failed,
    AReading,  ///< that is not known
    HeldAt,    ///< %1: the load
    WithLimit, ///< %1: a reading, %2: what is stated
    HeldFor,   ///< %1: how long
    Dry,
    NotDry,
    FromInside,
    FromOutside,
    StepShown, ///< %1, %2: where the step begins and ends
};

}
