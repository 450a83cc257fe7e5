// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/outlook/forecast_gates.h"

#include "fabric/numeric/quantile.h"
#include "fabric/sampler/prior_draws.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace crownring {

namespace {

constexpr std::size_t priorDraws = 4000;

DrawColumn lnLivesAfter(const DrawColumn& lives, double hours) {
    DrawColumn logs;
    for (const double life : lives)
        if (life > hours)
            logs.push_back(std::log(life));
    return logs;
}

double varianceOf(const DrawColumn& values) {
    const auto count = static_cast<double>(values.size());
    const double mean = std::accumulate(values.begin(), values.end(), 0.0) / count;
    double squares = 0;
    for (const double value : values)
        squares += (value - mean) * (value - mean);
    return squares / (count - 1);
}

/// The readings of a fabric's sets: how many broke, at which ages, and the age of the oldest.
void lookAtFabric(const FleetColumns& fleet, std::size_t fabric, ForecastGrounds& grounds) {
    double first = std::numeric_limits<double>::infinity();
    double last = -first;
    for (std::size_t set = 0; set < fleet.sets(); ++set) {
        if (fleet.fabricOfLot[fleet.lotOfSet[set]] != fabric)
            continue;
        for (auto r = fleet.firstOfSet[set]; r < fleet.firstOfSet[set + 1]; ++r) {
            const double age = std::exp(fleet.lnAge[r]) * agePivot * hoursOfAgeUnit;
            grounds.mostFlown = std::max(grounds.mostFlown, age);
            if (fleet.observed[r].seen == Seen::AtLeast)
                continue;
            ++grounds.broken;
            first = std::min(first, age);
            last = std::max(last, age);
        }
    }
    const bool hasNew =
        std::ranges::any_of(fleet.lotOfCoupon, [&](std::size_t lot) { return fleet.fabricOfLot[lot] == fabric; });
    grounds.isOfOneAge = grounds.broken > 0 && !hasNew && last < oneAge * first;
}

Ground groundOf(const ForecastGrounds& grounds) {
    if (grounds.broken < leastBroken)
        return Ground::HeldOnly;
    return grounds.isOfOneAge || grounds.information < leastInformation ? Ground::Prior : Ground::Enough;
}

}

ForecastGrounds groundsOf(const FleetColumns& fleet, const AgeingPrior& prior, const Posterior& posterior,
                          std::size_t set, double lnLimit, const PlaceUse& use, std::uint64_t seed) {
    ForecastGrounds grounds;
    const auto fabric = fleet.fabricOfLot[fleet.lotOfSet[set]];
    lookAtFabric(fleet, fabric, grounds);
    const auto lives = livesOf(posterior, set, lnLimit, use);
    const auto believed = livesOf(priorOfSet(prior.fabrics[fabric], prior, priorDraws, seed), 0, lnLimit, use);
    const auto after = lnLivesAfter(lives, use.hours);
    const auto before = lnLivesAfter(believed, use.hours);
    if (after.size() > 1 && before.size() > 1)
        grounds.information = 1 - varianceOf(after) / varianceOf(before);
    const auto far =
        std::count_if(lives.begin(), lives.end(), [&](double life) { return life > farBeyond * grounds.mostFlown; });
    grounds.isOpenEnded = static_cast<double>(far) > rarelyBeyond * static_cast<double>(lives.size());
    grounds.isBeyondFlown = quantileOf(lives, 0.5) > grounds.mostFlown;
    grounds.ground = groundOf(grounds);
    return grounds;
}

}
