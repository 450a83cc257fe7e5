// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Which pull at the weakest place of a set would tell most of its life: a pull is tried in thought on draws of the
/// posterior, one after the other as if it were the truth, and the band of life that would follow is that of all draws
/// weighted by what the pull found.

#include "fabric/outlook/life.h"

#include <cstdint>
#include <optional>

namespace crownring {

struct PlannedPull {
    std::optional<double>
        proof; ///< load at which it is stopped, in the unit of the readings; nothing: pulled until it breaks
};

struct WorthOfPull {
    double bandNow = 0;  ///< hours between the 5 and 95 % quantiles of life
    double bandThen = 0; ///< the same once the pull is made, on average over what it may find
};

/// Nothing where hardly a draw says that the set is still in service. `trials` >= 1 outcomes are tried.
[[nodiscard]] std::optional<WorthOfPull> worthOfPull(const Posterior& posterior, std::size_t set, double lnLimit,
                                                     const PlaceUse& use, const PlannedPull& pull,
                                                     std::size_t trials = 400, std::uint64_t seed = 1);

}
