// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/likelihood/standard_term.h"

#include "fabric/numeric/normal_tail.h"

#include <boost/math/distributions/normal.hpp>

#include <cmath>
#include <stdexcept>

namespace crownring {

namespace {

struct NormalLaw {
    static double logDensity(double z) { return logNormalDensity(z); }
    static double slope(double z) { return -z; }
    static double curvature(double /*z*/) { return -1; }
    static double logBelow(double z) { return logNormalBelow(z); }
    static double logAbove(double z) { return logNormalBelow(-z); }
    static double logBetween(double low, double high) { return logNormalBetween(low, high); }
    static double densityOverBelow(double z) { return normalHazard(-z); }
    static double densityOverAbove(double z) { return normalHazard(z); }
};

/// F(z) = 1 - exp(-e^z), the law of the logarithm of a Weibull variable.
struct LeastExtremeLaw {
    static double logDensity(double z) { return z - std::exp(z); }
    static double slope(double z) { return 1 - std::exp(z); }
    static double curvature(double z) { return -std::exp(z); }
    static double logBelow(double z) { return std::log(-std::expm1(-std::exp(z))); }
    static double logAbove(double z) { return -std::exp(z); }
    static double logBetween(double low, double high) {
        return -std::exp(low) + std::log(-std::expm1(std::exp(low) - std::exp(high)));
    }
    static double densityOverBelow(double z) { return std::exp(z) / std::expm1(std::exp(z)); }
    static double densityOverAbove(double z) { return std::exp(z); }
};

template <class Law>
StandardTerm between(double low, double high) {
    const double value = Law::logBetween(low, high);
    const double atLow = std::exp(Law::logDensity(low) - value);
    const double atHigh = std::exp(Law::logDensity(high) - value);
    StandardTerm term{value, -atLow, atHigh};
    term.lowLow = -atLow * (Law::slope(low) + atLow);
    term.lowHigh = atLow * atHigh;
    term.highHigh = atHigh * (Law::slope(high) - atHigh);
    return term;
}

template <class Law>
StandardTerm termOf(Seen seen, double low, double high) {
    StandardTerm term;
    switch (seen) {
    case Seen::Exactly:
        term.value = Law::logDensity(low);
        term.low = Law::slope(low);
        term.lowLow = Law::curvature(low);
        return term;
    case Seen::AtLeast:
        term.value = Law::logAbove(low);
        term.low = -Law::densityOverAbove(low);
        term.lowLow = term.low * (Law::slope(low) - term.low);
        return term;
    case Seen::AtMost:
        term.value = Law::logBelow(high);
        term.high = Law::densityOverBelow(high);
        term.highHigh = term.high * (Law::slope(high) - term.high);
        return term;
    case Seen::Between:
        return between<Law>(low, high);
    }
    throw std::logic_error("an observation of no kind");
}

}

double standardQuantile(Scatter scatter, double p) {
    return scatter == Scatter::Normal ? quantile(boost::math::normal(), p) : std::log(-std::log1p(-p));
}

StandardTerm standardTerm(Scatter scatter, Seen seen, double low, double high) {
    return scatter == Scatter::Normal ? termOf<NormalLaw>(seen, low, high) : termOf<LeastExtremeLaw>(seen, low, high);
}

}
