// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is believed of the ageing of fabric before any reading: plain values, to be shown and edited.
///
/// No public readings of fabric in service were found; the slope's values come from new fabric at 100 and a limit of 30
/// on one scale, reached after some 300 to 600 hours, and are wide. All else is common practice, no source.

#include <cmath>
#include <vector>

namespace crownring {

struct NormalPrior {
    double mean = 0;
    double sd = 1;
};

struct FabricPrior {
    NormalPrior intercept; ///< of ln strength when new
    NormalPrior slope;     ///< of the fall of ln strength in a unit of effective age (`agePivot` is where phi turns)
};

/// A test scatters by no less, in ln strength: a tester's scale is not read finer (common practice, no source). Without
/// it readings that happen to be equal have no posterior: it would grow without end towards a scatter of nothing.
constexpr double leastScatter = 1e-3;

/// Scales of half-Cauchy priors for standard deviations.
struct SpreadPriors {
    double lotIntercept = 0.1;
    double lotSlope = 0.1;
    double setIntercept = 0.1;
    double setSlope = 0.1;
    double scatter = 0.2; ///< of one test about its mean, in ln strength
};

struct AgeingPrior {
    std::vector<FabricPrior> fabrics; ///< one for each fabric of the fleet
    SpreadPriors spreads;
    NormalPrior gamma{0.7, 0.5};
    NormalPrior lnPhi{0, 0.3};
};

/// `newStrength` as specified for the fabric and its `limit`, both > 0 and in one unit. A fabric that may lose more
/// before its limit is taken to lose more in an hour.
[[nodiscard]] inline FabricPrior fabricPrior(double newStrength, double limit) {
    const double fall = std::abs(std::log(newStrength / limit)) / std::log(100.0 / 30.0);
    return {{std::log(newStrength), 0.3}, {0.2 * fall, 0.15 * fall}};
}

/// The same of a fabric of which nothing is specified but its limit, > 0.
[[nodiscard]] inline FabricPrior fabricPrior(double limit) {
    constexpr double newOverLimit = 100.0 / 30.0;
    return fabricPrior(limit * newOverLimit, limit);
}

}
