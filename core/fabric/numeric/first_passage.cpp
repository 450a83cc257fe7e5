// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/numeric/first_passage.h"

#include "fabric/numeric/gauss_hermite.h"
#include "fabric/numeric/normal_tail.h"

#include <boost/math/distributions/normal.hpp>

#include <cmath>
#include <numbers>

namespace crownring {

namespace {

double shareBelow(double z) { return cdf(boost::math::normal(), z); }

double variance(const AgeingLine& line, double age) {
    return line.alphaVariance - 2 * age * line.covariance + age * age * line.lambdaVariance;
}

double standardised(const AgeingLine& line, double limit, double age) {
    return (limit - line.alpha + line.lambda * age) / std::sqrt(variance(line, age));
}

}

double reachedBy(const AgeingLine& line, double limit, double age) {
    return shareBelow(standardised(line, limit, age));
}

double reachedByGivenOk(const AgeingLine& line, double limit, double age, double okAge) {
    const double now = standardised(line, limit, okAge);
    return (shareBelow(standardised(line, limit, age)) - shareBelow(now)) / shareBelow(-now);
}

double neverReached(const AgeingLine& line) { return shareBelow(-line.lambda / std::sqrt(line.lambdaVariance)); }

std::optional<double> ageReached(const AgeingLine& line, double limit, double p) {
    const double z = quantile(boost::math::normal(), p);
    if (standardised(line, limit, 0) >= z)
        return 0;
    // (limit - alpha + lambda t)^2 = z^2 variance(t); of its roots the first at which both sides have the sign of z.
    const double start = limit - line.alpha;
    const double square = line.lambda * line.lambda - z * z * line.lambdaVariance;
    const double half = line.lambda * start + z * z * line.covariance;
    const double rest = start * start - z * z * line.alphaVariance;
    const double within = line.lambda * line.lambda * line.alphaVariance + 2 * line.lambda * start * line.covariance +
                          start * start * line.lambdaVariance -
                          z * z * (line.alphaVariance * line.lambdaVariance - line.covariance * line.covariance);
    if (within < 0)
        return std::nullopt;
    // Neither root by a difference of near equals (Numerical Recipes' form of the formula).
    const double sum = -(half + std::copysign(std::abs(z) * std::sqrt(within), half));
    std::optional<double> first;
    for (const double root : {sum / square, rest / sum})
        if (std::isfinite(root) && root > 0 && (start + line.lambda * root) * z >= 0 && (!first || root < *first))
            first = root;
    return first;
}

double anyTestFails(const AgeingLine& line, double limit, double age, double sigma, int tests) {
    static const auto rule = gaussHermite(61);
    const double mean = line.alpha - line.lambda * age;
    const double deviation = std::sqrt(variance(line, age));
    double allHold = 0;
    for (Eigen::Index node = 0; node < rule.nodes.size(); ++node) {
        const double strength = mean + std::numbers::sqrt2 * deviation * rule.nodes[node];
        allHold += rule.weights[node] * std::exp(tests * logNormalBelow((strength - limit) / sigma));
    }
    return 1 - allHold * std::numbers::inv_sqrtpi;
}

}
