// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/sampler/prior_draws.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace crownring {

namespace {

double drawn(Draws& draws, const NormalPrior& prior) { return prior.mean + prior.sd * draws.normal(); }

/// Half-Cauchy, by the inverse of its distribution; never quite 0.
double drawnSpread(Draws& draws, double scale) {
    return scale * std::tan(std::numbers::pi / 2 * std::max(draws.uniform(), 1e-12));
}

Line drawnAbout(Draws& draws, const Line& middle, double intercepts, double slopes) {
    return {middle.intercept + intercepts * draws.normal(), middle.slope + slopes * draws.normal()};
}

AgeingState drawnUncut(const FleetColumns& fleet, const AgeingPrior& prior, Draws& draws) {
    AgeingState state;
    auto& spreads = state.spreads;
    spreads.lotIntercept = drawnSpread(draws, prior.spreads.lotIntercept);
    spreads.lotSlope = drawnSpread(draws, prior.spreads.lotSlope);
    spreads.setIntercept = drawnSpread(draws, prior.spreads.setIntercept);
    spreads.setSlope = drawnSpread(draws, prior.spreads.setSlope);
    spreads.scatter = std::max(drawnSpread(draws, prior.spreads.scatter), leastScatter);
    for (const auto& fabric : prior.fabrics)
        state.fabrics.push_back({drawn(draws, fabric.intercept), drawn(draws, fabric.slope)});
    for (const auto fabric : fleet.fabricOfLot)
        state.lots.push_back(drawnAbout(draws, state.fabrics[fabric], spreads.lotIntercept, spreads.lotSlope));
    for (const auto lot : fleet.lotOfSet)
        state.sets.push_back(drawnAbout(draws, state.lots[lot], spreads.setIntercept, spreads.setSlope));
    for (const auto lot : fleet.lotOfCoupon)
        state.bolts.push_back(drawnAbout(draws, state.lots[lot], spreads.setIntercept, 0).intercept);
    state.shape = {drawn(draws, prior.gamma), std::exp(drawn(draws, prior.lnPhi))};
    return state;
}

}

AgeingState drawnFromPrior(const FleetColumns& fleet, const AgeingPrior& prior, Draws& draws) {
    while (true) {
        auto state = drawnUncut(fleet, prior, draws);
        if (std::all_of(state.sets.begin(), state.sets.end(), [](const Line& set) { return set.slope > 0; }))
            return state;
    }
}

Posterior priorOfSet(const FabricPrior& fabric, const AgeingPrior& prior, std::size_t draws, std::uint64_t seed) {
    FleetColumns fleet;
    fleet.fabrics = 1;
    fleet.fabricOfLot = {0};
    fleet.lotOfSet = {0};
    auto of = prior;
    of.fabrics = {fabric};
    Draws random(seed);
    auto state = drawnFromPrior(fleet, of, random);
    auto posterior = emptyPosterior(state, 1, draws);
    for (std::size_t draw = 0; draw < draws; ++draw) {
        keepDraw(state, draw, posterior);
        state = drawnFromPrior(fleet, of, random);
    }
    return posterior;
}

}
