// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/likelihood/censored_regression.h"

#include "fabric/likelihood/concave_likelihood.h"
#include "problem/faults/fabric_fault.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <Eigen/Cholesky>
#include <cmath>
#include <stdexcept>

namespace crownring {

namespace {

void demandEqualLengths(const CensoredSample& sample) {
    const auto rows = static_cast<std::size_t>(sample.design.rows());
    if (sample.observed.size() != rows || !(sample.weights.empty() || sample.weights.size() == rows))
        throw std::invalid_argument("a sample of unequal columns");
}

CensoredFit fitAt(const ConcaveLikelihood& likelihood, const HighestPoint& point) {
    const auto natural = likelihood.natural(point.theta);
    const auto last = natural.size() - 1;
    // At the maximum the gradient is zero, so second derivatives change with the figures as a plain quadratic form.
    const auto slope = likelihood.naturalSlope(point.theta);
    const Eigen::LLT<Eigen::MatrixXd> factor(point.likelihood.information);
    return {natural.head(last), natural[last], slope * factor.solve(slope.transpose()), point.likelihood.value,
            point.steps};
}

Eigen::VectorXd quantileSlope(const QuantileAt& quantile, double logSigma) {
    Eigen::VectorXd slope(quantile.at.size() + 1);
    slope << quantile.at, quantile.deviate * std::exp(logSigma);
    return slope;
}

/// The profile's fall below the maximum for values of the quantile.
class Profile {
public:
    Profile(const ConcaveLikelihood& likelihood, const HighestPoint& top, const QuantileAt& quantile)
        : m_likelihood(&likelihood), m_top(&top), m_quantile(&quantile) {}

    /// Twice the fall; NaN where there is no maximum.
    [[nodiscard]] double deviance(double value) const {
        const auto bound = m_likelihood->placed(*m_quantile, value);
        // The nearest point of the constraint that keeps tau, near as the information has it.
        const auto columns = m_top->theta.size() - 1;
        const Eigen::LLT<Eigen::MatrixXd> factor(m_top->likelihood.information.topLeftCorner(columns, columns));
        const Eigen::VectorXd towards = factor.solve(bound.across.head(columns));
        Eigen::VectorXd start = m_top->theta;
        start.head(columns) +=
            towards * ((bound.value - bound.across.dot(start)) / bound.across.head(columns).dot(towards));
        const auto point = m_likelihood->highest(start, bound);
        return point ? 2 * (m_top->likelihood.value - point->likelihood.value) : std::nan("");
    }

private:
    const ConcaveLikelihood* m_likelihood;
    const HighestPoint* m_top;
    const QuantileAt* m_quantile;
};

/// The value on the side of `step` at which the deviance is `most`; NaN where it does not come to that.
double profileEnd(const Profile& profile, double from, double step, double most) {
    constexpr int mostDoublings = 12;
    double inside = from;
    double outside = from + step;
    for (int doublings = 0; profile.deviance(outside) < most; ++doublings, step *= 2) {
        if (doublings == mostDoublings)
            return std::nan("");
        inside = outside;
        outside += step;
    }
    if (std::isnan(profile.deviance(outside)))
        return std::nan("");
    std::uintmax_t tries = 100;
    const auto beyond = [&](double value) { return profile.deviance(value) - most; };
    const auto [low, high] =
        boost::math::tools::toms748_solve(beyond, std::min(inside, outside), std::max(inside, outside),
                                          boost::math::tools::eps_tolerance<double>(40), tries);
    return (low + high) / 2;
}

}

Result<CensoredFit> fitCensored(const CensoredSample& sample, Scatter scatter) {
    demandEqualLengths(sample);
    const auto likelihood = ConcaveLikelihood::of(sample, scatter);
    if (!likelihood)
        return tl::unexpected(likelihood.error());
    const auto point = likelihood->highest(likelihood->leastSquares());
    if (!point)
        return tl::unexpected(point.error());
    return fitAt(*likelihood, *point);
}

Estimate estimateAt(const CensoredFit& fit, const QuantileAt& quantile) {
    const auto slope = quantileSlope(quantile, fit.logSigma);
    return {quantile.at.dot(fit.coefficients) + quantile.deviate * std::exp(fit.logSigma),
            std::sqrt(slope.dot(fit.covariance * slope))};
}

Result<ProfileInterval> profileInterval(const CensoredSample& sample, Scatter scatter, const QuantileAt& quantile,
                                        double level) {
    demandEqualLengths(sample);
    const auto likelihood = ConcaveLikelihood::of(sample, scatter);
    if (!likelihood)
        return tl::unexpected(likelihood.error());
    const auto top = likelihood->highest(likelihood->leastSquares());
    if (!top)
        return tl::unexpected(top.error());
    const auto centre = estimateAt(fitAt(*likelihood, *top), quantile);
    const double most = boost::math::quantile(boost::math::chi_squared(1), level);
    const double step = std::sqrt(most) * centre.standardError;
    const Profile profile(*likelihood, *top, quantile);
    const ProfileInterval span{profileEnd(profile, centre.value, -step, most),
                               profileEnd(profile, centre.value, step, most)};
    if (std::isnan(span.low) || std::isnan(span.high))
        return problem(FabricFault::NoBoundOnOneSide, {}, atKey("observed"));
    return span;
}

}
