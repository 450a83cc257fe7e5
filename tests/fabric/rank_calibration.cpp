// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/rank_calibration.h"

#include "fabric/likelihood/effective_age.h"
#include "fabric/sampler/ageing_chain.h"
#include "fabric/sampler/prior_draws.h"

#include <boost/math/special_functions/gamma.hpp>

#include <cmath>
#include <numeric>

namespace crownring {

namespace {

constexpr std::size_t draws = rankBins - 1;
constexpr std::size_t burnIn = 200;
constexpr std::size_t sweepsOfDraw = 25;

/// Two lots of three sets, tested at four ages at two heights; the readings are filled in later.
FabricFleet emptyFleet() {
    FabricFleet fleet;
    fleet.fabrics = 1;
    fleet.fabricOfLot = {0, 0};
    fleet.lotOfSet = {0, 0, 0, 1, 1, 1};
    for (std::size_t set = 0; set < fleet.lotOfSet.size(); ++set)
        for (const double hours : {60.0, 180.0, 350.0, 520.0})
            for (const double row : {1.0, 0.25})
                fleet.readings.push_back({set, hours, row, hours > 200 ? 4.0 : 0.0, {}});
    for (const auto lot : fleet.lotOfSet)
        fleet.coupons.push_back({lot, {}});
    return fleet;
}

/// By turns a pull to break, two at a proof load, and weights hung on in two steps.
Observation written(double strength, std::size_t turn) {
    const double low = std::log(45);
    const double high = std::log(70);
    if (turn % 4 == 0 || (turn % 4 != 3 && strength < high))
        return {Seen::Exactly, strength, 0};
    if (strength >= high)
        return {Seen::AtLeast, high, 0};
    return strength < low ? Observation{Seen::AtMost, 0, low} : Observation{Seen::Between, low, high};
}

void fill(FabricFleet& fleet, const AgeingState& truth, Draws& random) {
    std::size_t turn = 0;
    for (auto& reading : fleet.readings) {
        const auto& line = truth.sets[reading.set];
        const double age = effectiveAge(truth.shape, reading.hours, reading.row, reading.dose);
        const double mean = line.intercept - line.slope * age;
        reading.observed = written(mean + truth.spreads.scatter * random.normal(), turn++);
    }
    for (std::size_t c = 0; c < fleet.coupons.size(); ++c)
        fleet.coupons[c].observed = written(truth.bolts[c] + truth.spreads.scatter * random.normal(), turn++);
}

std::map<std::string, double> quantitiesOf(const AgeingState& state) {
    const auto& spreads = state.spreads;
    return {{"fabric intercept", state.fabrics[0].intercept},
            {"fabric slope", state.fabrics[0].slope},
            {"lot slope", state.lots[1].slope},
            {"set intercept", state.sets[0].intercept},
            {"set slope", state.sets[3].slope},
            {"spread of lots' intercepts", spreads.lotIntercept},
            {"spread of lots' slopes", spreads.lotSlope},
            {"spread of sets' intercepts", spreads.setIntercept},
            {"spread of sets' slopes", spreads.setSlope},
            {"scatter", spreads.scatter},
            {"gamma", state.shape.gamma},
            {"phi", state.shape.phi},
            {"age at the limit", (state.sets[1].intercept - std::log(30)) / state.sets[1].slope}};
}

}

double RankCalibration::chance(const std::string& quantity) const {
    const auto& counts = ranks.at(quantity);
    const double expected =
        static_cast<double>(std::accumulate(counts.begin(), counts.end(), 0L)) / static_cast<double>(counts.size());
    double chiSquare = 0;
    for (const long count : counts)
        chiSquare += std::pow(static_cast<double>(count) - expected, 2) / expected;
    return boost::math::gamma_q(static_cast<double>(counts.size() - 1) / 2, chiSquare / 2);
}

RankCalibration calibrated(long fleets, std::uint64_t seed, const AgeingPrior& truth, const AgeingPrior& believed) {
    RankCalibration calibration;
    for (long k = 0; k < fleets; ++k) {
        const auto number = seed * 100'000 + static_cast<std::uint64_t>(k);
        Draws random(number, 99);
        auto readings = emptyFleet();
        const auto state = drawnFromPrior(fleetColumns(readings).value(), truth, random);
        fill(readings, state, random);
        const auto fleet = fleetColumns(readings).value();
        AgeingChain chain(fleet, believed, true, number, 0);
        for (std::size_t sweep = 0; sweep < burnIn; ++sweep)
            chain.sweep(true);
        std::map<std::string, std::size_t> below;
        for (std::size_t draw = 0; draw < draws; ++draw) {
            for (std::size_t sweep = 0; sweep < sweepsOfDraw; ++sweep)
                chain.sweep(false);
            for (const auto& [name, value] : quantitiesOf(chain.state()))
                below[name] += value < quantitiesOf(state)[name];
        }
        for (const auto& [name, rank] : below) {
            calibration.ranks[name].resize(rankBins);
            ++calibration.ranks[name][rank];
        }
    }
    return calibration;
}

AgeingPrior calibrationPrior() {
    AgeingPrior prior{{fabricPrior(100, 30)}, {}};
    prior.spreads = {0.025, 0.025, 0.025, 0.025, 0.05};
    return prior;
}

}
