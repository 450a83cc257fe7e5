// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/sampler/common_move.h"

#include "fabric/sampler/test_likelihood.h"

#include <cmath>

namespace crownring {

namespace {

enum Place { Gamma, LnPhi, LnSlopes };

}

CommonMove::CommonMove(const FleetColumns& fleet, const AgeingPrior& prior, bool phiFree)
    : m_fleet(fleet), m_prior(prior), m_phiFree(phiFree), m_walk(Vector(0.05, 0.05, 0.05)) {}

void CommonMove::walk(Draws& draws, bool learning, AgeingState& state, std::vector<double>& ages) {
    auto by = m_walk.step(draws);
    if (!m_phiFree)
        by[LnPhi] = 0;
    auto proposed = moved(state, by);
    agesOf(m_fleet, proposed.shape, m_ages);
    // The factor moves the slopes of fabrics, lots and sets and two spreads. The densities of lots and sets take up
    // their part of its Jacobian, the priors of the spreads, as densities of logarithms, theirs.
    const double lnJacobian = static_cast<double>(m_fleet.fabrics) * by[LnSlopes];
    const double chance = acceptance(lnPrior(proposed) - lnPrior(state) + lnJacobian +
                                     lnLikelihood(m_fleet, m_ages, proposed) - lnLikelihood(m_fleet, ages, state));
    if (draws.uniform() < chance) {
        std::swap(state, proposed);
        std::swap(ages, m_ages);
    }
    if (learning)
        m_walk.learn(positionOf(state), chance);
}

AgeingState CommonMove::moved(const AgeingState& state, const Vector& by) const {
    auto to = state;
    to.shape.gamma += by[Gamma];
    to.shape.phi *= std::exp(by[LnPhi]);
    const double factor = std::exp(by[LnSlopes]);
    for (auto* level : {&to.fabrics, &to.lots, &to.sets})
        for (auto& line : *level)
            line.slope *= factor;
    to.spreads.lotSlope *= factor;
    to.spreads.setSlope *= factor;
    return to;
}

double CommonMove::lnPrior(const AgeingState& state) const {
    double sum = lnHalfCauchy(state.spreads.lotSlope, m_prior.spreads.lotSlope) +
                 lnHalfCauchy(state.spreads.setSlope, m_prior.spreads.setSlope) +
                 lnNormal(state.shape.gamma, m_prior.gamma.mean, m_prior.gamma.sd) +
                 lnNormal(std::log(state.shape.phi), m_prior.lnPhi.mean, m_prior.lnPhi.sd);
    for (std::size_t fabric = 0; fabric < m_fleet.fabrics; ++fabric) {
        const auto& slope = m_prior.fabrics[fabric].slope;
        sum += lnNormal(state.fabrics[fabric].slope, slope.mean, slope.sd);
    }
    return sum;
}

CommonMove::Vector CommonMove::positionOf(const AgeingState& state) const {
    double slopes = 0;
    for (const auto& set : state.sets)
        slopes += set.slope / static_cast<double>(state.sets.size());
    return {state.shape.gamma, std::log(state.shape.phi), state.sets.empty() ? 0 : std::log(slopes)};
}

}
