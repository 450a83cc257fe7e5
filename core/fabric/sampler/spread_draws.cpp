// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/sampler/spread_draws.h"

#include <cmath>

namespace crownring {

namespace {

double square(double value) { return value * value; }

}

double drawnSpread(Draws& draws, double now, double scale, double sumOfSquares, std::size_t count) {
    const double mixing = draws.inverseGamma(1, 1 / square(now) + 1 / square(scale));
    return std::sqrt(draws.inverseGamma((static_cast<double>(count) + 1) / 2, sumOfSquares / 2 + 1 / mixing));
}

void drawSpreads(Draws& draws, const FleetColumns& fleet, const SpreadPriors& prior, AgeingState& state) {
    Spreads squares{0, 0, 0, 0, 0};
    for (std::size_t set = 0; set < fleet.sets(); ++set) {
        const auto& lot = state.lots[fleet.lotOfSet[set]];
        squares.setIntercept += square(state.sets[set].intercept - lot.intercept);
        squares.setSlope += square(state.sets[set].slope - lot.slope);
    }
    for (std::size_t c = 0; c < fleet.coupons.size(); ++c)
        squares.setIntercept += square(state.bolts[c] - state.lots[fleet.lotOfCoupon[c]].intercept);
    for (std::size_t lot = 0; lot < fleet.lots(); ++lot) {
        const auto& fabric = state.fabrics[fleet.fabricOfLot[lot]];
        squares.lotIntercept += square(state.lots[lot].intercept - fabric.intercept);
        squares.lotSlope += square(state.lots[lot].slope - fabric.slope);
    }
    auto& now = state.spreads;
    const auto intercepts = fleet.sets() + fleet.coupons.size();
    now.setIntercept = drawnSpread(draws, now.setIntercept, prior.setIntercept, squares.setIntercept, intercepts);
    now.setSlope = drawnSpread(draws, now.setSlope, prior.setSlope, squares.setSlope, fleet.sets());
    now.lotIntercept = drawnSpread(draws, now.lotIntercept, prior.lotIntercept, squares.lotIntercept, fleet.lots());
    now.lotSlope = drawnSpread(draws, now.lotSlope, prior.lotSlope, squares.lotSlope, fleet.lots());
}

}
