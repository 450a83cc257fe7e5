// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/sampler/spread_walk.h"

#include "fabric/sampler/test_likelihood.h"

#include <algorithm>

namespace crownring {

namespace {

Line stretchedLine(const Line& line, const Line& about, const Line& moved, double intercepts, double slopes) {
    return {moved.intercept + intercepts * (line.intercept - about.intercept),
            moved.slope + slopes * (line.slope - about.slope)};
}

bool isWithinCut(const AgeingState& state) {
    return state.spreads.scatter >= leastScatter &&
           std::all_of(state.sets.begin(), state.sets.end(), [](const Line& set) { return set.slope > 0; });
}

}

SpreadWalk::SpreadWalk(const FleetColumns& fleet, const SpreadPriors& prior)
    : m_fleet(fleet), m_prior(prior), m_walk(Vector::Constant(0.1)) {}

void SpreadWalk::walk(Draws& draws, const std::vector<double>& ages, bool learning, AgeingState& state) {
    auto proposed = stretched(state, m_walk.step(draws));
    const double chance = isWithinCut(proposed)
                              ? acceptance(lnPrior(proposed.spreads) - lnPrior(state.spreads) +
                                           lnLikelihood(m_fleet, ages, proposed) - lnLikelihood(m_fleet, ages, state))
                              : 0;
    if (draws.uniform() < chance)
        std::swap(state, proposed);
    const auto& now = state.spreads;
    Vector position(now.scatter, now.lotIntercept, now.lotSlope, now.setIntercept, now.setSlope);
    if (learning)
        m_walk.learn(position.array().log(), chance);
}

AgeingState SpreadWalk::stretched(const AgeingState& state, const Vector& by) const {
    const Vector factors = by.array().exp();
    auto to = state;
    auto& spreads = to.spreads;
    spreads.scatter *= factors[0];
    spreads.lotIntercept *= factors[1];
    spreads.lotSlope *= factors[2];
    spreads.setIntercept *= factors[3];
    spreads.setSlope *= factors[4];
    for (std::size_t lot = 0; lot < m_fleet.lots(); ++lot) {
        const auto& fabric = state.fabrics[m_fleet.fabricOfLot[lot]];
        to.lots[lot] = stretchedLine(state.lots[lot], fabric, fabric, factors[1], factors[2]);
    }
    for (std::size_t set = 0; set < m_fleet.sets(); ++set) {
        const auto lot = m_fleet.lotOfSet[set];
        to.sets[set] = stretchedLine(state.sets[set], state.lots[lot], to.lots[lot], factors[3], factors[4]);
    }
    return to;
}

double SpreadWalk::lnPrior(const Spreads& spreads) const {
    return lnHalfCauchy(spreads.scatter, m_prior.scatter) + lnHalfCauchy(spreads.lotIntercept, m_prior.lotIntercept) +
           lnHalfCauchy(spreads.lotSlope, m_prior.lotSlope) + lnHalfCauchy(spreads.setIntercept, m_prior.setIntercept) +
           lnHalfCauchy(spreads.setSlope, m_prior.setSlope);
}

}
