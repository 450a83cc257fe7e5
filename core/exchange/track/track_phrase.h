// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the user should know about a track.

#include "problem/argument.h"

namespace crownring {

enum class TrackPhrase : std::uint8_t {
    NamesNoBalloon,
    SatelliteAltitudes,
};

}
