// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/sampler/ageing_chain.h"

#include "fabric/sampler/spread_draws.h"
#include "fabric/sampler/test_likelihood.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace crownring {

namespace {

AgeingState startOf(const FleetColumns& fleet, const AgeingPrior& prior, bool phiFree, Draws& draws) {
    const auto near = [&](const NormalPrior& about) { return about.mean + about.sd * (draws.uniform() - 0.5); };
    const auto spread = [&](double scale) { return scale * (0.5 + draws.uniform()); };
    AgeingState state;
    for (const auto& fabric : prior.fabrics)
        state.fabrics.push_back({near(fabric.intercept), std::max(near(fabric.slope), fabric.slope.sd / 10)});
    for (const auto fabric : fleet.fabricOfLot)
        state.lots.push_back(state.fabrics[fabric]);
    for (const auto lot : fleet.lotOfSet)
        state.sets.push_back(state.lots[lot]);
    for (const auto lot : fleet.lotOfCoupon)
        state.bolts.push_back(state.lots[lot].intercept);
    const auto& spreads = prior.spreads;
    state.spreads = {spread(spreads.lotIntercept), spread(spreads.lotSlope), spread(spreads.setIntercept),
                     spread(spreads.setSlope), spread(spreads.scatter)};
    state.shape = {near(prior.gamma), phiFree ? std::exp(near(prior.lnPhi)) : 1};
    return state;
}

bool isFinite(const Line& line) { return std::isfinite(line.intercept) && std::isfinite(line.slope); }

bool isFinite(const AgeingState& state) {
    const auto& spreads = state.spreads;
    const auto& [gamma, phi] = state.shape;
    return std::ranges::all_of(std::array{spreads.lotIntercept, spreads.lotSlope, spreads.setIntercept,
                                          spreads.setSlope, spreads.scatter, gamma, phi},
                               [](double value) { return std::isfinite(value); }) &&
           std::ranges::all_of(std::array{&state.fabrics, &state.lots, &state.sets}, [](const auto* level) {
               return std::ranges::all_of(*level, [](const Line& line) { return isFinite(line); });
           });
}

}

AgeingChain::AgeingChain(const FleetColumns& fleet, const AgeingPrior& prior, bool phiFree, std::uint64_t seed,
                         std::uint32_t number)
    : m_fleet(fleet), m_prior(prior), m_draws(seed, number), m_state(startOf(fleet, prior, phiFree, m_draws)),
      m_tree(fleet, prior), m_walk(fleet, prior, phiFree), m_common(fleet, prior, phiFree), m_sets(fleet),
      m_spreads(fleet, prior.spreads) {
    agesOf(m_fleet, m_state.shape, m_ages);
}

void AgeingChain::sweep(bool learning) {
    m_before = m_state;
    move(learning);
    if (isFinite(m_state))
        return;
    // What cannot be computed is no draw: the chain stays where it was.
    std::swap(m_state, m_before);
    agesOf(m_fleet, m_state.shape, m_ages);
}

void AgeingChain::move(bool learning) {
    drawStrengths(m_draws, m_fleet, m_ages, m_state, m_latent, m_latentCoupons);
    gatherTests(m_fleet, m_ages, m_latent, m_latentCoupons, m_state.spreads.scatter, m_tested);
    m_walk.walk(m_draws, m_latent, m_latentCoupons, learning, m_state, m_ages, m_tested, m_tree);
    m_tree.draw(m_draws, m_tested, m_state);
    drawSpreads(m_draws, m_fleet, m_prior.spreads, m_state);
    drawScatter();
    m_common.walk(m_draws, learning, m_state, m_ages);
    m_sets.walk(m_draws, m_ages, learning, m_state);
    m_spreads.walk(m_draws, m_ages, learning, m_state);
}

void AgeingChain::drawScatter() {
    const double squares = sumOfSquares(m_fleet, m_ages, m_state, m_latent, m_latentCoupons);
    const auto count = m_latent.size() + m_latentCoupons.size();
    const double drawn = drawnSpread(m_draws, m_state.spreads.scatter, m_prior.spreads.scatter, squares, count);
    // Metropolis' rule for a density that is cut: what is proposed by the uncut one is taken within, else it stays.
    if (drawn >= leastScatter)
        m_state.spreads.scatter = drawn;
}

}
