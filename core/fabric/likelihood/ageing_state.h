// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// All that the model of ageing does not know, at one point: ln strength of a place is intercept - slope * effective
/// age, and a test scatters about it.

#include "fabric/likelihood/fleet.h"

#include <vector>

namespace crownring {

struct Line {
    double intercept = 0; ///< ln strength when new
    double slope = 0;     ///< its fall in a unit of effective age
};

/// Standard deviations: of lots about their fabric, of sets about their lot, of a test about its place.
struct Spreads {
    double lotIntercept = 0.1;
    double lotSlope = 0.05;
    double setIntercept = 0.1;
    double setSlope = 0.05;
    double scatter = 0.1;
};

struct AgeingState {
    std::vector<Line> fabrics;
    std::vector<Line> lots;
    std::vector<Line> sets; ///< slopes > 0
    std::vector<double>
        bolts; ///< one for each coupon: the intercept of the cloth that it was cut from; drawn anew each time
    Spreads spreads;
    AgeingShape shape;
};

}
