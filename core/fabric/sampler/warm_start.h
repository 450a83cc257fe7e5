// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What new readings of one set change, without a new fit: the draws there are weighted by how well each foretold the
/// new readings and drawn anew by their weights; then the set's own line is walked on given all of its readings
/// (resample and move: Gilks and Berzuini 2001, Journal of the Royal Statistical Society B 63:127-146).
///
/// This aims at the same posterior as the full fit. It differs by chance only, and by more the fewer draws the weights
/// leave: all that is shared (lots, spreads, shape) is picked from what was drawn before, not drawn anew. `worth` says
/// how many independent draws are left; below `leastWorth` only a full fit will do.

#include "fabric/likelihood/fleet_columns.h"
#include "fabric/sampler/posterior.h"

#include <cstdint>

namespace crownring {

inline constexpr double leastWorth = 200; ///< draws; common practice, no source

struct WarmFit {
    Posterior posterior; ///< of one chain, since draws no longer stand in the order of chains
    double worth = 0;    ///< effective number of draws: square of the sum of the weights over the sum of their squares
};

/// `before` is the posterior of the fleet without the last `fresh` readings of `set`; `fleet` is with them. A set must
/// have been in the fleet already, if without readings.
[[nodiscard]] WarmFit warmFit(const Posterior& before, const FleetColumns& fleet, std::size_t set, std::size_t fresh,
                              std::uint64_t seed = 1);

}
