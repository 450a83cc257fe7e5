// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/sampler/test_likelihood.h"

#include "fabric/numeric/normal_table.h"
#include "fabric/numeric/normal_tail.h"

#include <cmath>

namespace crownring {

namespace {

/// Calls `visit` with every reading's number and mean.
template <class Visit>
void eachReading(const FleetColumns& fleet, const std::vector<double>& ages, const AgeingState& state, Visit visit) {
    for (std::size_t set = 0; set < fleet.sets(); ++set) {
        const auto line = state.sets[set];
        for (auto r = fleet.firstOfSet[set]; r < fleet.firstOfSet[set + 1]; ++r)
            visit(r, line.intercept - line.slope * ages[r]);
    }
}

/// Of coupons about their lot: of the test about its cloth, and of the cloth about the lot.
double spreadOfCoupons(const Spreads& spreads) { return std::hypot(spreads.scatter, spreads.setIntercept); }

}

double lnLikelihood(const Observation& test, double mean, double scatter) {
    const double low = (test.low - mean) / scatter;
    const double high = (test.high - mean) / scatter;
    switch (test.seen) {
    case Seen::Exactly:
        return -low * low / 2 - std::log(scatter);
    case Seen::AtLeast:
        return logNormalBelowQuickly(-low);
    case Seen::AtMost:
        return logNormalBelowQuickly(high);
    case Seen::Between:
        return logNormalBetween(low, high);
    }
    return 0;
}

double lnLikelihoodOfSet(const FleetColumns& fleet, const std::vector<double>& ages, std::size_t set, const Line& line,
                         double scatter) {
    double sum = 0;
    for (auto r = fleet.firstOfSet[set]; r < fleet.firstOfSet[set + 1]; ++r)
        sum += lnLikelihood(fleet.observed[r], line.intercept - line.slope * ages[r], scatter);
    return sum;
}

double lnLikelihood(const FleetColumns& fleet, const std::vector<double>& ages, const AgeingState& state) {
    double sum = 0;
    const double scatter = state.spreads.scatter;
    for (std::size_t set = 0; set < fleet.sets(); ++set)
        sum += lnLikelihoodOfSet(fleet, ages, set, state.sets[set], scatter);
    const double ofCoupons = spreadOfCoupons(state.spreads);
    for (std::size_t c = 0; c < fleet.coupons.size(); ++c)
        sum += lnLikelihood(fleet.coupons[c], state.lots[fleet.lotOfCoupon[c]].intercept, ofCoupons);
    return sum;
}

double drawnStrength(Draws& draws, const Observation& test, double mean, double scatter) {
    switch (test.seen) {
    case Seen::Exactly:
        return test.low;
    case Seen::AtLeast:
        return draws.normalAbove(mean, scatter, test.low);
    case Seen::AtMost:
        return draws.normalBelow(mean, scatter, test.high);
    case Seen::Between:
        return draws.normalBetween(mean, scatter, test.low, test.high);
    }
    return mean;
}

void drawStrengths(Draws& draws, const FleetColumns& fleet, const std::vector<double>& ages, const AgeingState& state,
                   std::vector<double>& latent, std::vector<double>& latentCoupons) {
    latent.resize(fleet.readings());
    latentCoupons.resize(fleet.coupons.size());
    const double scatter = state.spreads.scatter;
    eachReading(fleet, ages, state, [&](std::size_t r, double mean) {
        latent[r] = drawnStrength(draws, fleet.observed[r], mean, scatter);
    });
    const double ofCoupons = spreadOfCoupons(state.spreads);
    for (std::size_t c = 0; c < fleet.coupons.size(); ++c)
        latentCoupons[c] =
            drawnStrength(draws, fleet.coupons[c], state.lots[fleet.lotOfCoupon[c]].intercept, ofCoupons);
}

double sumOfSquares(const FleetColumns& fleet, const std::vector<double>& ages, const AgeingState& state,
                    const std::vector<double>& latent, const std::vector<double>& latentCoupons) {
    double sum = 0;
    eachReading(fleet, ages, state,
                [&](std::size_t r, double mean) { sum += (latent[r] - mean) * (latent[r] - mean); });
    for (std::size_t c = 0; c < fleet.coupons.size(); ++c)
        sum += (latentCoupons[c] - state.bolts[c]) * (latentCoupons[c] - state.bolts[c]);
    return sum;
}

}
