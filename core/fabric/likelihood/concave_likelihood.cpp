// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/likelihood/concave_likelihood.h"

#include "problem/faults/fabric_fault.h"

#include <Eigen/Cholesky>
#include <Eigen/Eigenvalues>
#include <Eigen/QR>
#include <cmath>
#include <numbers>

namespace crownring {

namespace {

constexpr int mostSteps = 200;
constexpr int mostHalvings = 60;
// In scaled figures a coefficient of less information than this has a standard error of 10,000 standard deviations.
constexpr double leastInformation = 1e-8;

double middle(const Observation& observed) {
    switch (observed.seen) {
    case Seen::AtMost:
        return observed.high;
    case Seen::Between:
        return (observed.low + observed.high) / 2;
    case Seen::Exactly:
    case Seen::AtLeast:
        break;
    }
    return observed.low;
}

tl::unexpected<Problem> noFiniteEstimate() { return problem(FabricFault::AgeingOpen, {}, atKey("observed")); }

/// Newton's step, along the constraint if there is one; a ridge helps where figures are too far out to be told apart.
Eigen::VectorXd newtonStep(const LikelihoodAt& here, const std::optional<Constraint>& bound) {
    const auto size = here.gradient.size();
    Eigen::LLT<Eigen::MatrixXd> factor(here.information);
    for (double ridge = leastInformation; factor.info() != Eigen::Success && ridge < 1 / leastInformation; ridge *= 10)
        factor.compute(here.information + ridge * Eigen::MatrixXd::Identity(size, size));
    const Eigen::VectorXd free = factor.solve(here.gradient);
    if (!bound)
        return free;
    const Eigen::VectorXd across = factor.solve(bound->across);
    return free - across * (bound->across.dot(free) / bound->across.dot(across));
}

bool isEstimable(const Eigen::MatrixXd& information) {
    const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> spectrum(information, Eigen::EigenvaluesOnly);
    return spectrum.eigenvalues().minCoeff() > leastInformation;
}

}

Result<ConcaveLikelihood> ConcaveLikelihood::of(const CensoredSample& sample, Scatter scatter) {
    ConcaveLikelihood made(sample, scatter);
    const auto rows = sample.design.rows();
    const auto columns = sample.design.cols();
    const Eigen::ColPivHouseholderQR<Eigen::MatrixXd> ranked(sample.design);
    if (columns == 0 || ranked.rank() < columns)
        return problem(FabricFault::NotToldApart, {}, atKey("design"));
    const Eigen::HouseholderQR<Eigen::MatrixXd> factor(sample.design);
    const double length = std::sqrt(static_cast<double>(rows));
    made.m_columns = length * (factor.householderQ() * Eigen::MatrixXd::Identity(rows, columns));
    made.m_back = length * factor.matrixQR().topRows(columns).triangularView<Eigen::Upper>().solve(
                               Eigen::MatrixXd::Identity(columns, columns));
    Eigen::VectorXd low(rows);
    Eigen::VectorXd high(rows);
    Eigen::VectorXd middles(rows);
    for (Eigen::Index row = 0; row < rows; ++row) {
        const auto& observed = sample.observed.at(static_cast<std::size_t>(row));
        middles[row] = middle(observed);
        low[row] = observed.seen == Seen::AtMost ? middles[row] : observed.low;
        high[row] = observed.seen == Seen::AtMost || observed.seen == Seen::Between ? observed.high : middles[row];
    }
    made.m_plain = factor.solve(middles);
    const Eigen::VectorXd fitted = sample.design * made.m_plain;
    const double spread = (middles - fitted).norm() / length;
    if (spread > 1e-12 * middles.norm())
        made.m_scale = spread;
    made.m_low = (low - fitted) / made.m_scale;
    made.m_high = (high - fitted) / made.m_scale;
    return made;
}

LikelihoodAt ConcaveLikelihood::at(const Eigen::VectorXd& theta) const {
    const auto columns = m_columns.cols();
    const double tau = theta[columns];
    const Eigen::VectorXd moved = m_columns * theta.head(columns);
    LikelihoodAt result{0, Eigen::VectorXd::Zero(columns + 1), Eigen::MatrixXd::Zero(columns + 1, columns + 1)};
    double exact = 0;
    // Sums by z and by tau first: what is along a column is then one product of matrices.
    Eigen::VectorXd slope(moved.size());
    Eigen::VectorXd curvature(moved.size());
    Eigen::VectorXd mixed(moved.size());
    for (Eigen::Index row = 0; row < moved.size(); ++row) {
        const auto index = static_cast<std::size_t>(row);
        const auto seen = m_sample->observed[index].seen;
        const double weight = m_sample->weights.empty() ? 1 : m_sample->weights[index];
        const auto term = standardTerm(m_scatter, seen, tau * m_low[row] - moved[row], tau * m_high[row] - moved[row]);
        if (seen == Seen::Exactly)
            exact += weight;
        const double low = m_low[row];
        const double high = m_high[row];
        result.value += weight * term.value;
        slope[row] = weight * (term.low + term.high);
        curvature[row] = weight * (term.lowLow + 2 * term.lowHigh + term.highHigh);
        mixed[row] = weight * (term.lowLow * low + term.lowHigh * (low + high) + term.highHigh * high);
        result.gradient[columns] += weight * (term.low * low + term.high * high);
        result.information(columns, columns) -=
            weight * (term.lowLow * low * low + 2 * term.lowHigh * low * high + term.highHigh * high * high);
    }
    result.value += exact * (std::log(tau) - std::log(m_scale));
    result.gradient.head(columns) = -m_columns.transpose() * slope;
    result.gradient[columns] += exact / tau;
    result.information.topLeftCorner(columns, columns) = -m_columns.transpose() * curvature.asDiagonal() * m_columns;
    result.information.col(columns).head(columns) = m_columns.transpose() * mixed;
    result.information.row(columns) = result.information.col(columns).transpose().eval();
    result.information(columns, columns) += exact / (tau * tau);
    return result;
}

Eigen::VectorXd ConcaveLikelihood::leastSquares() const {
    return Eigen::VectorXd::Unit(m_columns.cols() + 1, m_columns.cols());
}

Result<HighestPoint> ConcaveLikelihood::highest(Eigen::VectorXd start, const std::optional<Constraint>& bound) const {
    HighestPoint point{std::move(start), {}, 0};
    point.likelihood = at(point.theta);
    const auto tau = point.theta.size() - 1;
    for (; point.steps < mostSteps; ++point.steps) {
        const auto step = newtonStep(point.likelihood, bound);
        // Twice what is left to gain, were the likelihood a parabola. The arithmetic does not see whether a step gains
        // when that is little.
        const double gain = step.dot(point.likelihood.information * step);
        if (!std::isfinite(gain))
            return noFiniteEstimate();
        const bool isClose = gain < 1e-9;
        double share = 1;
        LikelihoodAt next;
        for (int halvings = 0;; ++halvings, share /= 2) {
            if (halvings > mostHalvings)
                return noFiniteEstimate();
            const Eigen::VectorXd there = point.theta + share * step;
            if (!(there[tau] > 0))
                continue;
            next = at(there);
            if (isClose || next.value >= point.likelihood.value + 1e-4 * share * gain)
                break;
        }
        point.theta += share * step;
        point.likelihood = std::move(next);
        if (gain < 1e-18) {
            if (isEstimable(point.likelihood.information))
                return point;
            break;
        }
    }
    return noFiniteEstimate();
}

Eigen::VectorXd ConcaveLikelihood::natural(const Eigen::VectorXd& theta) const {
    const auto columns = m_columns.cols();
    Eigen::VectorXd result(columns + 1);
    result.head(columns) = m_plain + m_scale / theta[columns] * (m_back * theta.head(columns));
    result[columns] = std::log(m_scale) - std::log(theta[columns]);
    return result;
}

Eigen::MatrixXd ConcaveLikelihood::naturalSlope(const Eigen::VectorXd& theta) const {
    const auto columns = m_columns.cols();
    const double tau = theta[columns];
    Eigen::MatrixXd slope = Eigen::MatrixXd::Zero(columns + 1, columns + 1);
    slope.topLeftCorner(columns, columns) = m_scale / tau * m_back;
    slope.col(columns).head(columns) = -m_scale / (tau * tau) * (m_back * theta.head(columns));
    slope(columns, columns) = -1 / tau;
    return slope;
}

Constraint ConcaveLikelihood::placed(const QuantileAt& quantile, double value) const {
    const auto columns = m_columns.cols();
    Constraint bound{Eigen::VectorXd(columns + 1), -quantile.deviate * m_scale};
    bound.across.head(columns) = m_scale * (m_back.transpose() * quantile.at);
    bound.across[columns] = quantile.at.dot(m_plain) - value;
    return bound;
}

}
