// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/outlook/best_next_reading.h"

#include "fabric/likelihood/effective_age.h"
#include "fabric/numeric/weights.h"
#include "fabric/sampler/test_likelihood.h"

#include <algorithm>
#include <cmath>

namespace crownring {

namespace {

/// What a draw says of the crown: how long it lives, and what a pull now would find.
struct Outlook {
    double life = 0;
    double mean = 0; ///< ln strength now
    double scatter = 0;
};

/// Those of the draws still in service, from the shortest life.
std::vector<Outlook> outlooksOf(const Posterior& posterior, std::size_t set, double lnLimit, const PlaceUse& use) {
    const auto lives = livesOf(posterior, set, lnLimit, use);
    const auto& line = posterior.sets[set];
    std::vector<Outlook> outlooks;
    for (std::size_t draw = 0; draw < lives.size(); ++draw) {
        const AgeingShape shape{posterior.gamma[draw], posterior.phi[draw]};
        const double age = effectiveAge(shape, use.hours, use.row, use.dose);
        if (lives[draw] > use.hours)
            outlooks.push_back({lives[draw], line.intercept[draw] - line.slope[draw] * age, posterior.scatter[draw]});
    }
    std::sort(outlooks.begin(), outlooks.end(), [](const auto& a, const auto& b) { return a.life < b.life; });
    return outlooks;
}

double bandOf(const std::vector<Outlook>& outlooks, const std::vector<double>& weights) {
    const auto lifeAt = [&](double p) {
        double sum = 0;
        for (std::size_t k = 0; k < outlooks.size(); ++k)
            if ((sum += weights[k]) >= p)
                return outlooks[k].life;
        return outlooks.back().life;
    };
    return lifeAt(0.95) - lifeAt(0.05);
}

Observation foundBy(const PlannedPull& pull, double strength) {
    if (pull.proof && strength >= std::log(*pull.proof))
        return {Seen::AtLeast, std::log(*pull.proof), 0};
    return {Seen::Exactly, strength, 0};
}

double bandAfter(const std::vector<Outlook>& outlooks, const Observation& found) {
    std::vector<double> lnWeights(outlooks.size());
    for (std::size_t k = 0; k < outlooks.size(); ++k)
        lnWeights[k] = lnLikelihood(found, outlooks[k].mean, outlooks[k].scatter);
    return bandOf(outlooks, weightsOf(lnWeights));
}

}

std::optional<WorthOfPull> worthOfPull(const Posterior& posterior, std::size_t set, double lnLimit, const PlaceUse& use,
                                       const PlannedPull& pull, std::size_t trials, std::uint64_t seed) {
    const auto outlooks = outlooksOf(posterior, set, lnLimit, use);
    if (outlooks.empty() || !lifeForecast(livesOf(posterior, set, lnLimit, use), use.hours).life)
        return std::nullopt;
    Draws draws(seed);
    const std::vector<double> equal(outlooks.size(), 1 / static_cast<double>(outlooks.size()));
    WorthOfPull worth{bandOf(outlooks, equal), 0};
    for (std::size_t trial = 0; trial < trials; ++trial) {
        // Evenly through the draws, so that fewer trials will do.
        const auto place = (static_cast<double>(trial) + draws.uniform()) / static_cast<double>(trials);
        const auto& truth = outlooks[static_cast<std::size_t>(place * static_cast<double>(outlooks.size()))];
        const double strength = truth.mean + truth.scatter * draws.normal();
        worth.bandThen += bandAfter(outlooks, foundBy(pull, strength)) / static_cast<double>(trials);
    }
    return worth;
}

}
