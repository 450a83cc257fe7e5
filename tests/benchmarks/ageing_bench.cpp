// SPDX-License-Identifier: GPL-3.0-or-later
/// What the fit of ageing costs.
///
///     crownring_ageing_bench large [sets = 10000] [readings of a set = 48]   a large fleet: seconds, R-hat, effective
///     draws crownring_ageing_bench warm                    one new reading against the full fit crownring_ageing_bench
///     write FOLDER | compare FOLDER SECONDS           for ageing_against_jags.sh
#include "coda.h"
#include "fabric/made_fleet.h"
#include "fabric/numeric/convergence.h"
#include "fabric/outlook/life.h"
#include "fabric/sampler/ageing_sampler.h"
#include "fabric/sampler/warm_start.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <numeric>
#include <string>

namespace crownring::bench {

namespace {

const AgeingPrior prior{{fabricPrior(madeNew, madeLimit)}, {}};

double secondsOf(const auto& work) {
    const auto begun = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begun).count();
}

std::map<std::string, const DrawColumn*> columnsOf(const Posterior& posterior) {
    std::map<std::string, const DrawColumn*> columns{{"fabricIntercept", &posterior.fabrics[0].intercept},
                                                     {"fabricSlope", &posterior.fabrics[0].slope},
                                                     {"spreadLotIntercept", &posterior.lotIntercept},
                                                     {"spreadLotSlope", &posterior.lotSlope},
                                                     {"spreadSetIntercept", &posterior.setIntercept},
                                                     {"spreadSetSlope", &posterior.setSlope},
                                                     {"scatter", &posterior.scatter},
                                                     {"gamma", &posterior.gamma},
                                                     {"phi", &posterior.phi}};
    for (std::size_t set = 0; set < posterior.sets.size(); ++set) {
        columns["intercept[" + std::to_string(set + 1) + "]"] = &posterior.sets[set].intercept;
        columns["slope[" + std::to_string(set + 1) + "]"] = &posterior.sets[set].slope;
    }
    return columns;
}

FabricFleet comparedFleet() {
    FleetMaking making;
    making.breakShare = 0.1;
    return madeFleet(making).fleet;
}

struct Moments {
    double mean = 0, sd = 0, effective = 0;
};

Moments momentsOf(const std::vector<double>& draws, std::size_t chains) {
    const auto count = static_cast<double>(draws.size());
    const double mean = std::accumulate(draws.begin(), draws.end(), 0.0) / count;
    double squares = 0;
    for (const double draw : draws)
        squares += (draw - mean) * (draw - mean);
    return {mean, std::sqrt(squares / count), effectiveDraws(draws, chains)};
}

void compare(const std::string& folder, double jagsSeconds) {
    const auto fleet = fleetColumns(comparedFleet()).value();
    SamplerSettings settings;
    settings.chains = 2;
    settings.drawsOfChain = 5000;
    settings.sweepsOfDraw = 2;
    settings.threads = 1;
    Posterior posterior;
    const double seconds = secondsOf([&] { posterior = sampledPosterior(fleet, prior, settings).value(); });
    double least = 1e300, leastOfJags = 1e300, farthest = 0;
    std::puts("| parameter | mean | of JAGS | apart, in standard errors | sd | of JAGS | effective draws a second | of "
              "JAGS |\n"
              "|---|---|---|---|---|---|---|---|");
    for (const auto& [name, draws] : codaOf(folder, 2)) {
        const auto ours = momentsOf(*columnsOf(posterior).at(name), settings.chains);
        const auto theirs = momentsOf(draws, 2);
        const double error = std::hypot(ours.sd / std::sqrt(ours.effective), theirs.sd / std::sqrt(theirs.effective));
        std::printf("| %s | %.5f | %.5f | %.2f | %.5f | %.5f | %.1f | %.2f |\n", name.c_str(), ours.mean, theirs.mean,
                    (ours.mean - theirs.mean) / error, ours.sd, theirs.sd, ours.effective / seconds,
                    theirs.effective / jagsSeconds);
        least = std::min(least, ours.effective / seconds);
        leastOfJags = std::min(leastOfJags, theirs.effective / jagsSeconds);
        farthest = std::max(farthest, std::abs(ours.mean - theirs.mean) / error);
    }
    std::printf("\nslowest: %.1f effective draws a second, JAGS %.2f: %.0f times; %.1f s and %.1f s; farthest apart "
                "%.1f errors\n",
                least, leastOfJags, least / leastOfJags, seconds, jagsSeconds, farthest);
}

void fitLarge(std::size_t sets, std::size_t readingsOfSet) {
    FleetMaking making;
    making.sets = sets;
    making.setsOfLot = 50;
    making.breakShare = 0.1;
    making.readingsOfSet = readingsOfSet;
    const auto made = madeFleet(making);
    const auto fleet = fleetColumns(made.fleet).value();
    const auto settings = settingsFor(fleet);
    std::printf("%zu sets, %zu readings, %zu chains of %zu + %zu x %zu sweeps\n", fleet.sets(), fleet.readings(),
                settings.chains, settings.burnIn, settings.drawsOfChain, settings.sweepsOfDraw);
    Posterior posterior;
    const double seconds = secondsOf([&] { posterior = sampledPosterior(fleet, prior, settings).value(); });
    std::printf("%.1f s\n", seconds);
    double worst = 0, least = 1e300;
    for (std::size_t set = 0; set < fleet.sets(); set += 1 + fleet.sets() / 500) {
        const auto lives = livesOf(posterior, set, std::log(madeLimit), {});
        worst = std::max(worst, rankRHat(lives, posterior.chains));
        least = std::min(least, effectiveDrawsOfQuantile(lives, posterior.chains, 0.05));
    }
    std::printf("lives of 500 sets: R-hat up to %.3f, effective draws of the 5 %% quantile from %.0f\n", worst, least);
    for (const char* name : {"fabricIntercept", "fabricSlope", "spreadLotIntercept", "spreadLotSlope",
                             "spreadSetIntercept", "spreadSetSlope", "scatter", "gamma", "phi"}) {
        const auto& draws = *columnsOf(posterior).at(name);
        const auto moments = momentsOf(draws, posterior.chains);
        std::printf("%-20s %.5f sd %.5f R-hat %.3f effective draws %.0f\n", name, moments.mean, moments.sd,
                    rankRHat(draws, posterior.chains), moments.effective);
    }
    const double warm = secondsOf([&] { (void)warmFit(posterior, fleet, fleet.sets() - 1, 1); });
    std::printf("one reading more, warm: %.2f s\n", warm);
}

void fitWarm() {
    for (const std::uint64_t seed : {1, 2, 3, 4, 5}) {
        FleetMaking making;
        making.seed = seed;
        auto made = madeFleet(making);
        const auto set = making.sets - 1;
        const auto& use = made.truth[set].use;
        SamplerSettings settings;
        const auto before = sampledPosterior(fleetColumns(made.fleet).value(), prior, settings).value();
        const double load = strengthAt(before, set, use, use.hours).low;
        made.fleet.readings.push_back({set, use.hours, 1, use.dose, {Seen::Exactly, std::log(load), 0}});
        const auto fleet = fleetColumns(made.fleet).value();
        WarmFit warm;
        Posterior full;
        const double warmSeconds = secondsOf([&] { warm = warmFit(before, fleet, set, 1); });
        const double fullSeconds = secondsOf([&] { full = sampledPosterior(fleet, prior, settings).value(); });
        const auto lives = [&](const Posterior& of) { return bandOf(livesOf(of, set, std::log(madeLimit), use)); };
        const auto one = lives(warm.posterior), other = lives(full), old = lives(before);
        std::printf(
            "before %.0f %.0f %.0f | warm %.0f %.0f %.0f in %.2f s, worth %.0f | full %.0f %.0f %.0f in %.1f s\n",
            old.low, old.middle, old.high, one.low, one.middle, one.high, warmSeconds, warm.worth, other.low,
            other.middle, other.high, fullSeconds);
    }
}

}

}

int main(int argc, char** argv) {
    using namespace crownring::bench;
    const std::string task = argc > 1 ? argv[1] : "large";
    const auto number = [&](int place, unsigned long otherwise) {
        return argc > place ? std::strtoul(argv[place], nullptr, 10) : otherwise;
    };
    if (task == "write" && argc > 2)
        writeForJags(comparedFleet(), argv[2]);
    else if (task == "compare" && argc > 3)
        compare(argv[2], std::strtod(argv[3], nullptr));
    else if (task == "warm")
        fitWarm();
    else
        fitLarge(number(2, 10'000), number(3, 48));
    return 0;
}
