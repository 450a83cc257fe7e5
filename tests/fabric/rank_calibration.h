// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Simulation-based calibration (Talts, Betancourt, Simpson, Vehtari and Gelman 2018, arXiv:1804.06788): parameters
/// drawn from the prior, readings drawn from them, and the parameter's rank among draws of the fit. Over many fleets
/// every rank must come equally often; a sampler that is of another model, or that leaves something out, cannot do that
/// by chance.

#include "fabric/sampler/ageing_prior.h"

#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace crownring {

inline constexpr std::size_t rankBins = 10;

struct RankCalibration {
    std::map<std::string, std::vector<long>> ranks; ///< for each quantity how often its rank was in each bin

    /// Chance that equally likely ranks come out as unequal as this (chi-square).
    [[nodiscard]] double chance(const std::string& quantity) const;
};

/// `truth` is the prior that parameters are drawn from, `believed` the one that the fit is told; the same but in a test
/// of the test itself.
[[nodiscard]] RankCalibration calibrated(long fleets, std::uint64_t seed, const AgeingPrior& truth,
                                         const AgeingPrior& believed);

/// A prior whose fleets a small fit can follow: one fabric, spreads of a quarter of the usual scale.
[[nodiscard]] AgeingPrior calibrationPrior();

}
