// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/numeric/normal_tail.h"

#include <cmath>
#include <numbers>

namespace crownring {

namespace {

constexpr double farOut = 10;

double below(double z) { return std::erfc(-z / std::numbers::sqrt2) / 2; }

/// Laplace's continued fraction z + 1/(z + 2/(z + 3/(z + …))), from its far end; from 10 on 40 terms are exact to the
/// last digit.
double hazardFarOut(double z) {
    double rest = z;
    for (int term = 40; term >= 1; --term)
        rest = z + term / rest;
    return rest;
}

}

double logNormalDensity(double z) { return -z * z / 2 - std::log(2 * std::numbers::pi) / 2; }

double normalHazard(double z) { return z > farOut ? hazardFarOut(z) : std::exp(logNormalDensity(z)) / below(-z); }

double logNormalBelow(double z) {
    if (z > 0)
        return std::log1p(-below(-z));
    return z > -farOut ? std::log(below(z)) : logNormalDensity(z) - std::log(hazardFarOut(-z));
}

double logNormalBetween(double low, double high) {
    if (low > 0)
        return logNormalBetween(-high, -low);
    if (high <= 0) {
        const double whole = logNormalBelow(high);
        return whole + std::log(-std::expm1(logNormalBelow(low) - whole));
    }
    const double outside = below(low) + below(-high);
    return outside < 0.5 ? std::log1p(-outside)
                         : std::log((std::erf(high / std::numbers::sqrt2) - std::erf(low / std::numbers::sqrt2)) / 2);
}

}
