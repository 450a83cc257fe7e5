// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The ageing of a fleet by maximum (restricted) likelihood: where the sampler begins, and what can be told to many
/// digits.
///
/// Its errors are too small where sets are few, when it often puts a spread to nothing. A forecast takes the sampler's
/// figures.

#include "fabric/likelihood/ageing_state.h"
#include "fabric/likelihood/fleet_likelihood.h"
#include "fabric/numeric/first_passage.h"
#include "problem/problem.h"

#include <optional>

namespace crownring {

struct FleetFitChoice {
    bool restricted = true; ///< REML; else ML
    AgeingShape shape{};    ///< where the search begins; phi stays there unless `freePhi`
    bool freePhi = false;
    std::optional<double> lotSlope{}; ///< holds the spread of lots' slopes at this
};

/// A spread below this (0.1 % of the strength, in a unit of age) is held there and counts as none.
inline constexpr double leastSpread = 1e-3;

struct FleetFit {
    AgeingState state;
    double logLikelihood = 0;
    Eigen::VectorXd parameters; ///< in the order of `FleetParameter`, and fabrics behind them unless restricted
    Eigen::MatrixXd covariance; ///< of these; zeros for what was held
    /// With errors that allow for those of the parameters (delta method).
    std::vector<AgeingLine> sets, lots;
};

/// BadValue where the fleet's numbers make no sense (`fleetColumns`), or the readings say too little: no failure of
/// some fabric, one age only.
[[nodiscard]] Result<FleetFit> fitFleet(const FabricFleet& fleet, const FleetFitChoice& choice = {});

}
