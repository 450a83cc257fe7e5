// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How a recorder moved, at even steps of time, freed of noise.

#include "exchange/track/igc_track.h"

#include <cstdint>
#include <vector>

namespace crownring {

/// Metres and metres per second in a plane that touches the earth near the track.
struct Motion {
    std::int64_t second = 0; ///< as in `Fix`
    double east = 0;
    double north = 0;
    double altitude = 0;
    double eastward = 0;
    double northward = 0;
    double climb = 0;
    bool known = true; ///< there are fixes here; otherwise drawn straight from one to the next
};

/// Ten seconds: a take-off is found to within a step or two, which is what minutes need.
inline constexpr std::int64_t motionStep = 10;

/// The track in pieces without a pause of more than five minutes, each at steps of `motionStep`. Position and speed are
/// those of a straight line through the fixes fifteen seconds before and after (more where fixes are rarer), least
/// squares. Fixes that lie more than 150 m aside or 60 m above or below the median of their five neighbours are thrown
/// out; `thrownOut` counts them.
struct MotionPieces {
    std::vector<std::vector<Motion>> pieces;
    int thrownOut = 0;
};
[[nodiscard]] MotionPieces motionOf(const IgcTrack& track);

/// Metres over the ground between two places, on a sphere.
[[nodiscard]] double metresBetween(const Fix& a, const Fix& b);

}
