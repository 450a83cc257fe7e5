// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The fit that all figures shown to a user come from: several chains of `AgeingChain`, each from its own start.
///
/// The model, for the logarithm of a quantity that falls as fabric ages (give the negative logarithm of one that
/// rises): intercept and slope of sets about their lot, of lots about their fabric, ages by `AgeingShape`, tests with
/// normal scatter about the mean of their place, held tests as bounds. Coupons are of a piece of cloth with its own
/// intercept.

#include "fabric/likelihood/fleet_columns.h"
#include "fabric/sampler/ageing_prior.h"
#include "fabric/sampler/posterior.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <stop_token>

namespace crownring {

struct SamplerSettings {
    std::size_t chains = 4;
    std::size_t burnIn = 1000; ///< sweeps of each chain that are thrown away
    std::size_t drawsOfChain = 1000;
    std::size_t sweepsOfDraw = 5; ///< of which the last is kept
    bool phiFree = true;          ///< false: phi stays 1
    std::uint64_t seed = 1;
    unsigned threads =
        0; ///< at most this many at a time; 0 for as many as the machine has. The draws do not depend on it
};

/// Enough sweeps for forecasts: fewer for very large fleets, whose many sets settle what is common to all of them.
[[nodiscard]] SamplerSettings settingsFor(const FleetColumns& fleet);

using Progress = std::function<void(double share)>; ///< called from the fit's threads, one at a time; share within 0..1

/// Nothing when stopped before the end. `prior.fabrics` must have one for each fabric of the fleet.
[[nodiscard]] std::optional<Posterior> sampledPosterior(const FleetColumns& fleet, const AgeingPrior& prior,
                                                        const SamplerSettings& settings, std::stop_token stop = {},
                                                        const Progress& progress = {});

}
