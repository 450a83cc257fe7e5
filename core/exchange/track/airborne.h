// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// When a track was off the ground: spans from leaving the surface to touching it (14 CFR 1.1, "time in service").

#include "exchange/track/motion.h"

#include <cstdint>
#include <vector>

namespace crownring {

struct AirborneSpan {
    std::int64_t takeOff = 0; ///< as in `Fix::second`
    std::int64_t landing = 0;
    bool beganAloft = false;  ///< the recording began in the air: the take-off was earlier
    bool endedAloft = false;  ///< it ended in the air: the landing was later
    bool drivenAfter = false; ///< the recorder went by car before the next span of the same piece
};

/// The spans of one piece of motion, in order.
///
/// The phases (`phasesOf`) say where to look; then the ground decides. The ground is the lower part (the lowest fifth)
/// of the altitudes while standing; the take-off is the last moment within `nearGround` of it before the balloon is
/// clearly up, or the first faster than walking, if that is earlier; the landing is the mirror image. So a hover at
/// twenty metres in calm air before the climb counts as flown, and so does a level approach. Standing between two flown
/// stretches is a landing only when it lies below both: no balloon lands upwards. A stretch that does not rise 15 m
/// above both of its ends was carried or driven, not flown. (Figures: common practice, no source.)
/// @param nearGround metres; what the altitude wanders while nothing moves
[[nodiscard]] std::vector<AirborneSpan> airborneSpans(const std::vector<Motion>& motion, double nearGround);

}
