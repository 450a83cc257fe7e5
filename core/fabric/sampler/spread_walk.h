// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fabric/likelihood/ageing_state.h"
#include "fabric/likelihood/fleet_columns.h"
#include "fabric/numeric/random_walk.h"
#include "fabric/sampler/ageing_prior.h"

#include <vector>

namespace crownring {

/// A random walk of the scatter and of all spreads, with the full strengths integrated out. The lines stretch along
/// with their spread, about what they are a spread about (Yu and Meng 2011, Journal of Computational and Graphical
/// Statistics 20:531-570): where tests say little of single sets, a spread given its lines hardly moves.
class SpreadWalk {
public:
    SpreadWalk(const FleetColumns& fleet, const SpreadPriors& prior);

    /// `ages` are those of the state's shape.
    void walk(Draws& draws, const std::vector<double>& ages, bool learning, AgeingState& state);

private:
    using Vector = RandomWalk<5>::Vector;

    [[nodiscard]] AgeingState stretched(const AgeingState& state, const Vector& by) const;
    [[nodiscard]] double lnPrior(const Spreads& spreads) const;

    const FleetColumns& m_fleet;
    const SpreadPriors& m_prior;
    RandomWalk<5> m_walk;
};

}
