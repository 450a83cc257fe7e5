// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/sampler/set_walk.h"

#include "fabric/sampler/test_likelihood.h"

#include <limits>

namespace crownring {

namespace {

double lnDensity(const FleetColumns& fleet, const std::vector<double>& ages, const AgeingState& state, std::size_t set,
                 const Line& line) {
    if (line.slope <= 0)
        return -std::numeric_limits<double>::infinity();
    const auto& lot = state.lots[fleet.lotOfSet[set]];
    return lnNormal(line.intercept, lot.intercept, state.spreads.setIntercept) +
           lnNormal(line.slope, lot.slope, state.spreads.setSlope) +
           lnLikelihoodOfSet(fleet, ages, set, line, state.spreads.scatter);
}

}

SetWalk::SetWalk(const FleetColumns& fleet)
    : m_fleet(fleet), m_walks(fleet.sets(), RandomWalk<2>(RandomWalk<2>::Vector(0.05, 0.03))) {}

void SetWalk::walk(Draws& draws, const std::vector<double>& ages, bool learning, AgeingState& state) {
    for (std::size_t set = 0; set < m_fleet.sets(); ++set) {
        auto& line = state.sets[set];
        const auto by = m_walks[set].step(draws);
        const Line proposed{line.intercept + by[0], line.slope + by[1]};
        const double chance =
            acceptance(lnDensity(m_fleet, ages, state, set, proposed) - lnDensity(m_fleet, ages, state, set, line));
        if (draws.uniform() < chance)
            line = proposed;
        if (learning)
            m_walks[set].learn({line.intercept, line.slope}, chance);
    }
}

}
