// SPDX-License-Identifier: GPL-3.0-or-later
/// How often the forecast's bands hold the truth, on made-up fleets: a table in Markdown.
///
///     crownring_coverage [fleets of each cell = 20] [seed = 1] [threads = 0: all]
///     crownring_coverage ranks [fleets = 2000] [seed = 1]      simulation-based calibration of the sampler, long
#include "fabric/made_fleet.h"
#include "fabric/numeric/convergence.h"
#include "fabric/outlook/life.h"
#include "fabric/rank_calibration.h"
#include "fabric/sampler/ageing_sampler.h"

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ranges>
#include <string>

namespace crownring::bench {

namespace {

constexpr double nearEnd = 150; ///< hours of remaining life: the sets that matter most

struct Tally {
    long sets = 0, held = 0, lowerHeld = 0;
    long nearSets = 0, nearLowerHeld = 0;
    long unmixed = 0; ///< sets whose chains had not come to one answer
    double width = 0; ///< of the band, in lives
    double brier = 0;
    long failing = 0;

    Tally& operator+=(const Tally& other) {
        sets += other.sets;
        held += other.held;
        lowerHeld += other.lowerHeld;
        nearSets += other.nearSets;
        nearLowerHeld += other.nearLowerHeld;
        unmixed += other.unmixed;
        width += other.width;
        brier += other.brier;
        failing += other.failing;
        return *this;
    }
};

void judge(const Posterior& posterior, std::size_t set, const MadeSet& truth, Tally& tally) {
    if (truth.retired || truth.life <= truth.use.hours)
        return;
    const double lnLimit = std::log(madeLimit);
    const auto lives = livesOf(posterior, set, lnLimit, truth.use);
    const auto forecast = lifeForecast(lives, truth.use.hours);
    ++tally.sets;
    tally.unmixed += rankRHat(lives, posterior.chains) > 1.05;
    const bool isNear = truth.life < truth.use.hours + nearEnd;
    tally.nearSets += isNear;
    const double fails =
        chancePullBelow(posterior, set, lnLimit, truth.use, truth.use.hours + inspectionEvery, crownPulls);
    tally.failing += truth.nextFails;
    tally.brier += (fails - truth.nextFails) * (fails - truth.nextFails);
    if (!forecast.life)
        return;
    const auto& band = *forecast.life;
    tally.held += band.low <= truth.life && truth.life <= band.high;
    tally.lowerHeld += band.low <= truth.life;
    tally.nearLowerHeld += isNear && band.low <= truth.life;
    tally.width += (band.high - band.low) / truth.life;
}

Tally judgedCell(const FleetMaking& cell, long fleets, unsigned threads) {
    const AgeingPrior prior{{fabricPrior(madeNew, madeLimit)}, {}};
    Tally tally;
    auto making = cell;
    for (long fleet = 0; fleet < fleets; ++fleet, ++making.seed) {
        const auto made = madeFleet(making);
        SamplerSettings settings;
        settings.chains = 2;
        settings.burnIn = 500;
        settings.drawsOfChain = 600;
        settings.sweepsOfDraw = 3;
        settings.seed = making.seed;
        settings.threads = threads;
        const auto posterior = sampledPosterior(fleetColumns(made.fleet).value(), prior, settings).value();
        for (std::size_t set = 0; set < made.truth.size(); ++set)
            judge(posterior, set, made.truth[set], tally);
    }
    return tally;
}

double share(double some, double all) { return all > 0 ? some / all : std::nan(""); }

void printRow(const std::string& name, const Tally& tally) {
    const auto sets = static_cast<double>(tally.sets);
    const double rate = share(static_cast<double>(tally.failing), sets);
    std::printf("| %s | %ld | %.3f | %.3f | %.3f (%ld) | %.2f | %.4f | %.4f | %ld |\n", name.c_str(), tally.sets,
                share(static_cast<double>(tally.held), sets), share(static_cast<double>(tally.lowerHeld), sets),
                share(static_cast<double>(tally.nearLowerHeld), static_cast<double>(tally.nearSets)), tally.nearSets,
                share(tally.width, sets), share(tally.brier, sets), rate * (1 - rate), tally.unmixed);
    std::fflush(stdout);
}

std::string nameOf(const FleetMaking& cell) {
    char name[80];
    std::snprintf(name, sizeof name, "%zu sets, proof %.1f, broken %.0f %%, %s, phi %.1f", cell.sets, cell.proof,
                  100 * cell.breakShare, cell.lognormalSlopes ? "lognormal" : "normal", cell.phi);
    return name;
}

std::vector<FleetMaking> cells(std::uint64_t seed) {
    std::vector<FleetMaking> all;
    for (const double proof : {1.0, 1.5, 2.0})
        for (const double breakShare : {0.0, 0.15})
            for (const bool lognormal : {false, true})
                for (const double phi : {0.7, 1.0, 1.4})
                    for (const std::size_t sets : {8U, 24U, 60U}) {
                        FleetMaking cell;
                        cell.sets = sets;
                        cell.proof = proof;
                        cell.breakShare = breakShare;
                        cell.lognormalSlopes = lognormal;
                        cell.phi = phi;
                        cell.seed = seed * 1'000'000 + all.size() * 10'000;
                        all.push_back(cell);
                    }
    return all;
}

/// @param first number of the first cell, so that a run can be taken up again
void run(long fleets, std::uint64_t seed, unsigned threads, std::size_t first) {
    std::printf(
        "| cell | sets | 90 %% band holds | lower 95 %% holds | the same within %.0f h of the end | width / life |"
        " Brier of next pulls | Brier of the base rate | unmixed |\n|---|---|---|---|---|---|---|---|---|\n",
        nearEnd);
    Tally pooled;
    Tally ofProof;
    double proof = 0;
    const auto closeProof = [&] {
        if (proof > 0)
            printRow("**proof " + std::to_string(proof).substr(0, 3) + "**", ofProof);
        ofProof = {};
    };
    for (const auto& cell : cells(seed) | std::views::drop(static_cast<std::ptrdiff_t>(first))) {
        if (cell.proof != proof)
            closeProof();
        proof = cell.proof;
        const auto tally = judgedCell(cell, fleets, threads);
        printRow(nameOf(cell), tally);
        pooled += tally;
        ofProof += tally;
    }
    closeProof();
    printRow("**all**", pooled);
}

void rank(long fleets, std::uint64_t seed) {
    const auto calibration = calibrated(fleets, seed, calibrationPrior(), calibrationPrior());
    std::printf("| quantity | chance of ranks as unequal | fleets in each tenth |\n|---|---|---|\n");
    for (const auto& [quantity, counts] : calibration.ranks) {
        std::printf("| %s | %.3f |", quantity.c_str(), calibration.chance(quantity));
        for (const long count : counts)
            std::printf(" %ld", count);
        std::printf(" |\n");
    }
}

}

}

int main(int argc, char** argv) {
    const auto number = [&](int place, unsigned long otherwise) {
        return argc > place ? std::strtoul(argv[place], nullptr, 10) : otherwise;
    };
    if (argc > 1 && std::string(argv[1]) == "ranks")
        crownring::bench::rank(static_cast<long>(number(2, 2000)), number(3, 1));
    else
        crownring::bench::run(static_cast<long>(number(1, 20)), number(2, 1), static_cast<unsigned>(number(3, 0)),
                              number(4, 0));
    return 0;
}
