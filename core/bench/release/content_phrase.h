// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the rules want on a release.

#include "problem/argument.h"

namespace crownring {

enum class ContentPhrase : std::uint8_t {
    Work,
    Date,
    Person,
    Capacity,
    Licence,
    Manuals,
    AircraftTime,
    Time,
    Discrepancies,
    DiscrepanciesDate,
    HighestTemperature,
};

}
