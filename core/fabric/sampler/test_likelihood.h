// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How likely tests are, held ones by what they bound, and full strengths drawn for those that are bounds.

#include "fabric/likelihood/ageing_state.h"
#include "fabric/likelihood/fleet_columns.h"
#include "fabric/numeric/draws.h"

#include <vector>

namespace crownring {

/// ln likelihood of one test of a place with this mean, up to a constant that depends on nothing.
[[nodiscard]] double lnLikelihood(const Observation& test, double mean, double scatter);

/// Of the tests of one set, were this its line.
[[nodiscard]] double lnLikelihoodOfSet(const FleetColumns& fleet, const std::vector<double>& ages, std::size_t set,
                                       const Line& line, double scatter);

/// Of all tests of sets and coupons, `ages` being those of the state's shape; the coupons' cloth is integrated out.
[[nodiscard]] double lnLikelihood(const FleetColumns& fleet, const std::vector<double>& ages, const AgeingState& state);

/// The full strength that a test would have found: itself where it broke, else drawn within its bounds.
[[nodiscard]] double drawnStrength(Draws& draws, const Observation& test, double mean, double scatter);

/// Of all tests; the coupons' cloth is integrated out here too.
void drawStrengths(Draws& draws, const FleetColumns& fleet, const std::vector<double>& ages, const AgeingState& state,
                   std::vector<double>& latent, std::vector<double>& latentCoupons);

/// Sum of squares of full strengths about the means of their places, and of coupons about that of their cloth.
[[nodiscard]] double sumOfSquares(const FleetColumns& fleet, const std::vector<double>& ages, const AgeingState& state,
                                  const std::vector<double>& latent, const std::vector<double>& latentCoupons);

}
