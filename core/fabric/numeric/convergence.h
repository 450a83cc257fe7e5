// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Whether chains have come to the same answer, and how many independent draws theirs are worth: Vehtari, Gelman,
/// Simpson, Carpenter and Bürkner 2021, Bayesian Analysis 16:667-718, on chains of one length that stand next to each
/// other.

#include <cstddef>
#include <span>
#include <vector>

namespace crownring {

/// Split R-hat of the values as they are; near 1 when chains agree, not a number for constants.
[[nodiscard]] double splitRHat(std::span<const double> draws, std::size_t chains);

/// The greater of R-hat of ranks and of ranks of distances from the median: also sees heavy tails and unequal widths.
[[nodiscard]] double rankRHat(std::span<const double> draws, std::size_t chains);

/// Effective number of draws for the mean; for a quantity of heavy tails give `normalScores` of its draws.
[[nodiscard]] double effectiveDraws(std::span<const double> draws, std::size_t chains);

/// Effective number of draws for the quantile at p, 0 < p < 1.
[[nodiscard]] double effectiveDrawsOfQuantile(std::span<const double> draws, std::size_t chains, double p);

/// Ranks (ties share theirs) turned into standard normal quantiles.
[[nodiscard]] std::vector<double> normalScores(std::span<const double> draws);

}
