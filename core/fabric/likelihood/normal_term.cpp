// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/likelihood/normal_term.h"

#include "fabric/numeric/normal_tail.h"

#include <cmath>
#include <stdexcept>

namespace crownring {

namespace {

/// ln of the probability (for an exact value: of the density of the standardised error), and its derivatives by the
/// location in units of sigma.
struct Derivatives {
    double value = 0;
    double first = 0, second = 0, third = 0, fourth = 0;
};

Derivatives exactly(double z) { return {logNormalDensity(z), z, -1, 0, 0}; }

/// By h' = h u, u' = h u - 1 for the hazard h and u = h - z; the location runs against z.
Derivatives above(double z) {
    const double h = normalHazard(z);
    const double u = h - z;
    const double hu = h * u;
    return {logNormalBelow(-z), h, -hu, h * (u * u + hu - 1),
            -hu * (u * u + hu - 1) - h * (2 * u * (hu - 1) + hu * u + h * (hu - 1))};
}

Derivatives below(double z) {
    const auto mirrored = above(-z);
    return {mirrored.value, -mirrored.first, mirrored.second, -mirrored.third, mirrored.fourth};
}

/// Derivatives of the probability itself are Hermite's polynomials times the density at both ends; those of its
/// logarithm follow as cumulants do from moments.
Derivatives between(double low, double high) {
    const double value = logNormalBetween(low, high);
    const double a = std::exp(logNormalDensity(low) - value);
    const double b = std::exp(logNormalDensity(high) - value);
    const double m1 = a - b;
    const double m2 = low * a - high * b;
    const double m3 = (low * low - 1) * a - (high * high - 1) * b;
    const double m4 = low * (low * low - 3) * a - high * (high * high - 3) * b;
    return {value, m1, m2 - m1 * m1, m3 - 3 * m1 * m2 + 2 * m1 * m1 * m1,
            m4 - 4 * m1 * m3 - 3 * m2 * m2 + 12 * m1 * m1 * m2 - 6 * m1 * m1 * m1 * m1};
}

Derivatives derivatives(const Observation& observed, double location, double sigma) {
    const double low = (observed.low - location) / sigma;
    const double high = (observed.high - location) / sigma;
    switch (observed.seen) {
    case Seen::Exactly:
        return exactly(low);
    case Seen::AtLeast:
        return above(low);
    case Seen::AtMost:
        return below(high);
    case Seen::Between:
        return between(low, high);
    }
    throw std::logic_error("an observation of no kind");
}

}

NormalTerm normalTerm(const Observation& observed, double location, double sigma) {
    const auto d = derivatives(observed, location, sigma);
    NormalTerm term;
    term.value = observed.seen == Seen::Exactly ? d.value - std::log(sigma) : d.value;
    term.location = d.first / sigma;
    term.location2 = d.second / (sigma * sigma);
    term.location3 = d.third / (sigma * sigma * sigma);
    // Probability and density alike obey the equation of heat, dp/d ln sigma = sigma^2 d2p/d location2: nothing by ln
    // sigma needs a formula of its own.
    term.logSigma = d.second + d.first * d.first;
    term.locationLogSigma = (d.third + 2 * d.first * d.second) / sigma;
    term.location2LogSigma = (d.fourth + 2 * d.second * d.second + 2 * d.first * d.third) / (sigma * sigma);
    return term;
}

}
