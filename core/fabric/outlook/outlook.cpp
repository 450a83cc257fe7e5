// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/outlook/outlook.h"

#include "fabric/numeric/convergence.h"

#include <algorithm>
#include <cmath>

namespace crownring {

SetOutlook outlookOf(const FleetColumns& fleet, const AgeingPrior& prior, const Posterior& posterior, std::size_t set,
                     double lnLimit, const PlaceUse& use, Hours ahead) {
    const auto lives = livesOf(posterior, set, lnLimit, use);
    const double then = use.hours + ahead.value();
    SetOutlook outlook;
    outlook.use = use;
    outlook.strength = strengthAt(posterior, set, use, use.hours);
    outlook.life = lifeForecast(lives, use.hours);
    outlook.failsNext = chancePullBelow(posterior, set, lnLimit, use, then, 1);
    outlook.belowByNext = chanceReached(lives, use.hours, then);
    outlook.grounds = groundsOf(fleet, prior, posterior, set, lnLimit, use);
    return outlook;
}

std::optional<LotPace> paceOfLot(const FleetColumns& fleet, const Posterior& posterior, std::size_t lot) {
    std::vector<std::size_t> others;
    for (std::size_t other = 0; other < fleet.lots(); ++other)
        if (other != lot && fleet.fabricOfLot[other] == fleet.fabricOfLot[lot])
            others.push_back(other);
    if (others.empty())
        return std::nullopt;
    DrawColumn ratios(posterior.draws());
    std::size_t faster = 0;
    for (std::size_t draw = 0; draw < ratios.size(); ++draw) {
        double sum = 0;
        for (const auto other : others)
            sum += posterior.lots[other].slope[draw];
        ratios[draw] = posterior.lots[lot].slope[draw] * static_cast<double>(others.size()) / sum;
        faster += ratios[draw] > 1 ? 1 : 0;
    }
    return LotPace{bandOf(ratios), static_cast<double>(faster) / static_cast<double>(ratios.size())};
}

double worstRHat(const Posterior& posterior) {
    double worst = 1;
    const auto look = [&](const DrawColumn& draws) {
        if (const double rHat = rankRHat(draws, posterior.chains); rHat > worst)
            worst = rHat;
    };
    for (const auto* column : {&posterior.lotIntercept, &posterior.lotSlope, &posterior.setIntercept,
                               &posterior.setSlope, &posterior.scatter, &posterior.gamma, &posterior.phi})
        look(*column);
    for (const auto* lines : {&posterior.fabrics, &posterior.lots, &posterior.sets})
        for (const auto& line : *lines)
            look(line.slope);
    return worst;
}

AgeingPrior priorFor(std::size_t fabrics, double limit) {
    AgeingPrior prior;
    prior.fabrics.assign(fabrics, fabricPrior(limit));
    return prior;
}

}
