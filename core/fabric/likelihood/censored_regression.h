// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Linear regression on readings of which some are only bounds (Tobit), by maximum likelihood: y = x'beta + sigma e,
/// with y on the scale of logarithms. The likelihood is that of y; that of the reading itself has -sum of y over the
/// exact ones besides.

#include "fabric/likelihood/standard_term.h"
#include "problem/problem.h"

#include <Eigen/Core>
#include <vector>

namespace crownring {

struct CensoredSample {
    Eigen::MatrixXd design;            ///< a row for each observation, a column for each coefficient
    std::vector<Observation> observed; ///< `Between` with low < high
    std::vector<double> weights;       ///< how often each was seen, > 0; empty for once each
};

struct CensoredFit {
    Eigen::VectorXd coefficients;
    double logSigma = 0;
    Eigen::MatrixXd covariance; ///< of the coefficients and ln sigma, in this order: the inverse observed information
    double logLikelihood = 0;
    int steps = 0; ///< of Newton's method
};

/// BadValue when the columns depend on each other, or when the data leave a coefficient or sigma without a finite
/// estimate: everything held, or no scatter at all.
[[nodiscard]] Result<CensoredFit> fitCensored(const CensoredSample& sample, Scatter scatter = Scatter::Normal);

/// x'beta + deviate sigma. `standardQuantile` gives the deviate below which a share of all readings lies.
struct QuantileAt {
    Eigen::VectorXd at; ///< x
    double deviate = 0;
};

struct Estimate {
    double value = 0;
    double standardError = 0; ///< by the delta method
};

[[nodiscard]] Estimate estimateAt(const CensoredFit& fit, const QuantileAt& quantile);

struct ProfileInterval {
    double low = 0;
    double high = 0;
};

/// All values of the quantile that a likelihood ratio test does not reject: honest where the likelihood is askew, as
/// with few failures. `level` in (0, 1), such as 0.95. Not all of x may be 0. Problems as of `fitCensored`, or BadValue
/// where the likelihood falls too little on one side for there to be an end.
[[nodiscard]] Result<ProfileInterval> profileInterval(const CensoredSample& sample, Scatter scatter,
                                                      const QuantileAt& quantile, double level);

}
