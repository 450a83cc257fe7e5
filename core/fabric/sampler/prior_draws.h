// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fabric/likelihood/ageing_state.h"
#include "fabric/likelihood/fleet_columns.h"
#include "fabric/numeric/draws.h"
#include "fabric/sampler/ageing_prior.h"
#include "fabric/sampler/posterior.h"

#include <cstdint>

namespace crownring {

/// A draw from the prior for all of a fleet, within the cut of `LineTree`: slopes of all sets above 0.
[[nodiscard]] AgeingState drawnFromPrior(const FleetColumns& fleet, const AgeingPrior& prior, Draws& draws);

/// What is believed of one set of one lot of this fabric before any reading.
[[nodiscard]] Posterior priorOfSet(const FabricPrior& fabric, const AgeingPrior& prior, std::size_t draws,
                                   std::uint64_t seed);

}
