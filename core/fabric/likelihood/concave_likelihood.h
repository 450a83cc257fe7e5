// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The likelihood of a censored regression in the form in which it is concave, and its highest point.
///
/// In delta = beta / sigma and tau = 1 / sigma standardised errors z = tau y - x'delta are linear, and the
/// log-likelihood is concave (Olsen 1978 for the normal law, from memory; it holds for every law with a log-concave
/// density). So Newton's method with halved steps finds the one maximum from anywhere. Columns are made orthonormal and
/// y is taken as the residual of plain least squares, scaled: figures such as Arrhenius' 1/T would else cost half of
/// the digits.

#include "fabric/likelihood/censored_regression.h"

#include <optional>

namespace crownring {

struct LikelihoodAt {
    double value = 0;
    Eigen::VectorXd gradient;
    Eigen::MatrixXd information; ///< minus the second derivatives
};

/// across'theta = value.
struct Constraint {
    Eigen::VectorXd across;
    double value = 0;
};

struct HighestPoint {
    Eigen::VectorXd theta;
    LikelihoodAt likelihood;
    int steps = 0;
};

class ConcaveLikelihood {
public:
    /// BadValue where the columns depend on each other. `sample` must outlive it.
    [[nodiscard]] static Result<ConcaveLikelihood> of(const CensoredSample& sample, Scatter scatter);

    [[nodiscard]] LikelihoodAt at(const Eigen::VectorXd& theta) const;

    /// From least squares, or from `start`, which must meet the constraint if there is one. BadValue where there is no
    /// finite maximum.
    [[nodiscard]] Result<HighestPoint> highest(Eigen::VectorXd start,
                                               const std::optional<Constraint>& bound = {}) const;

    [[nodiscard]] Eigen::VectorXd leastSquares() const;

    /// theta back to coefficients and ln sigma, and how these change with theta.
    [[nodiscard]] Eigen::VectorXd natural(const Eigen::VectorXd& theta) const;
    [[nodiscard]] Eigen::MatrixXd naturalSlope(const Eigen::VectorXd& theta) const;

    /// That the quantile has this value, which is linear in theta too.
    [[nodiscard]] Constraint placed(const QuantileAt& quantile, double value) const;

private:
    ConcaveLikelihood(const CensoredSample& sample, Scatter scatter) : m_sample(&sample), m_scatter(scatter) {}

    const CensoredSample* m_sample;
    Scatter m_scatter;
    Eigen::MatrixXd m_columns;     ///< orthonormal, times the root of their length
    Eigen::MatrixXd m_back;        ///< m_columns = design * m_back
    Eigen::VectorXd m_plain;       ///< coefficients of least squares
    double m_scale = 1;            ///< of their residuals
    Eigen::VectorXd m_low, m_high; ///< bounds as scaled residuals
};

}
