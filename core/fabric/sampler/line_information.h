// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is known of a line (intercept and slope) as a normal density: precision matrix and precision times mean. Sums
/// of it go up the tree of sets, lots and fabrics, and draws come down (Gelman et al., Bayesian Data Analysis, 3rd
/// ed., 5.4 and 15; Bishop 2006, 2.3.3).

#include "fabric/likelihood/ageing_state.h"
#include "fabric/numeric/draws.h"

#include <algorithm>
#include <cmath>

namespace crownring {

struct LineInformation {
    double interceptIntercept = 0, interceptSlope = 0, slopeSlope = 0; ///< precision
    double intercept = 0, slope = 0;                                   ///< precision times mean
    double lnConstant = 0; ///< ln of what stands before the exponential of the two

    LineInformation& operator+=(const LineInformation& other) {
        interceptIntercept += other.interceptIntercept;
        interceptSlope += other.interceptSlope;
        slopeSlope += other.slopeSlope;
        intercept += other.intercept;
        slope += other.slope;
        lnConstant += other.lnConstant;
        return *this;
    }
};

/// Variances of intercept and slope, independent of each other.
struct LineVariance {
    double intercept = 1;
    double slope = 1;
};

/// What a known line says of another about which it lies with this variance.
inline LineInformation informationOf(const Line& known, const LineVariance& about) {
    return {1 / about.intercept, 0, 1 / about.slope, known.intercept / about.intercept, known.slope / about.slope, 0};
}

/// What is known of a line says this of another, about which the first lies with this variance.
inline LineInformation seenThrough(const LineInformation& of, const LineVariance& about) {
    const double a = of.interceptIntercept * about.intercept;
    const double l = of.slopeSlope * about.slope;
    const double inner = of.interceptIntercept * of.slopeSlope - of.interceptSlope * of.interceptSlope;
    const double all = 1 + a + l + about.intercept * about.slope * inner;
    const double intercept = ((1 + l) * of.intercept - of.interceptSlope * about.slope * of.slope) / all;
    const double slope = ((1 + a) * of.slope - of.interceptSlope * about.intercept * of.intercept) / all;
    const double lnIntegral =
        (of.intercept * about.intercept * intercept + of.slope * about.slope * slope - std::log(all)) / 2;
    return {(of.interceptIntercept + about.slope * inner) / all,
            of.interceptSlope / all,
            (of.slopeSlope + about.intercept * inner) / all,
            intercept,
            slope,
            of.lnConstant + lnIntegral};
}

/// ln of what is known, at a line.
inline double lnAt(const LineInformation& known, const Line& line) {
    return known.lnConstant + known.intercept * line.intercept + known.slope * line.slope -
           known.interceptSlope * line.intercept * line.slope -
           (known.interceptIntercept * line.intercept * line.intercept + known.slopeSlope * line.slope * line.slope) /
               2;
}

/// Of the precision of a line with what is known of it added to that of its variance. `asOne` is the same as the
/// difference of two products, of which hardly a digit is left where tests all but fix the line at one age: then by
/// its parts, of which none is negative.
inline double determinantOf(const LineInformation& known, const LineVariance& about, double asOne) {
    constexpr double fewDigits = 1e-12;
    const double of = known.interceptIntercept * known.slopeSlope;
    if (asOne > fewDigits * of)
        return asOne;
    const double inner = std::max(of - known.interceptSlope * known.interceptSlope, 0.0);
    return inner + known.interceptIntercept / about.slope + known.slopeSlope / about.intercept +
           1 / (about.intercept * about.slope);
}

/// A line that lies about `middle` with this variance, drawn given what is known of it; its slope is above
/// `leastSlope`.
inline Line drawnLine(Draws& draws, const Line& middle, const LineVariance& about, const LineInformation& known,
                      double leastSlope) {
    const double aa = known.interceptIntercept + 1 / about.intercept;
    const double ll = known.slopeSlope + 1 / about.slope;
    const double al = known.interceptSlope;
    const double a = known.intercept - known.interceptIntercept * middle.intercept - al * middle.slope;
    const double l = known.slope - al * middle.intercept - known.slopeSlope * middle.slope;
    const double determinant = determinantOf(known, about, aa * ll - al * al);
    const double mean = middle.slope + (aa * l - al * a) / determinant;
    const double sd = std::sqrt(aa / determinant);
    const double slope = std::isinf(leastSlope) ? mean + sd * draws.normal() : draws.normalAbove(mean, sd, leastSlope);
    const double off = (a - al * (slope - middle.slope)) / aa;
    return {middle.intercept + off + draws.normal() / std::sqrt(aa), slope};
}

}
