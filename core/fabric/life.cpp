// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/life.h"

#include "fabric/effective_age.h"
#include "fabric/quantile.h"

#include <cmath>
#include <numbers>

namespace crownring {

namespace {

constexpr double hardly = 0.01; ///< share of draws below which what they say is no forecast

AgeingShape shapeOf(const Posterior& posterior, std::size_t draw) {
    return {posterior.gamma[draw], posterior.phi[draw]};
}

double lnCrown(const Posterior& posterior, std::size_t set, std::size_t draw, double hours, double dose) {
    const auto& line = posterior.sets[set];
    return line.intercept[draw] - line.slope[draw] * effectiveAge(shapeOf(posterior, draw), hours, 1, dose);
}

DrawColumn stillAbove(const DrawColumn& lives, double hoursNow) {
    DrawColumn above;
    for (const double life : lives)
        if (life > hoursNow)
            above.push_back(life);
    return above;
}

bool isHardlyAny(std::size_t some, std::size_t all) {
    return static_cast<double>(some) < hardly * static_cast<double>(all);
}

double normalBelow(double z) { return std::erfc(-z / std::numbers::sqrt2) / 2; }

}

Band bandOf(const DrawColumn& draws) {
    return {quantileOf(draws, 0.05), quantileOf(draws, 0.5), quantileOf(draws, 0.95)};
}

DrawColumn livesOf(const Posterior& posterior, std::size_t set, double lnLimit, const CrownUse& use) {
    const auto& line = posterior.sets[set];
    DrawColumn lives(posterior.draws());
    for (std::size_t draw = 0; draw < lives.size(); ++draw) {
        const double age = (line.intercept[draw] - lnLimit) / line.slope[draw];
        const double effective = age > 0 ? effectiveHours(posterior.phi[draw], age) : 0;
        const double spent = effective - doseWeight * use.dose + doseWeight * use.dosePerHour * use.hours;
        lives[draw] = age > 0 ? spent / (1 + doseWeight * use.dosePerHour) : 0;
    }
    return lives;
}

LifeForecast lifeForecast(const DrawColumn& lives, double hoursNow) {
    const auto above = stillAbove(lives, hoursNow);
    LifeForecast forecast;
    forecast.reachedAlready = 1 - static_cast<double>(above.size()) / static_cast<double>(lives.size());
    if (!isHardlyAny(above.size(), lives.size()))
        forecast.life = bandOf(above);
    return forecast;
}

double chanceReached(const DrawColumn& lives, double hoursNow, double hoursThen) {
    const auto above = stillAbove(lives, hoursNow);
    if (isHardlyAny(above.size(), lives.size()))
        return 1;
    return 1 - static_cast<double>(stillAbove(above, hoursThen).size()) / static_cast<double>(above.size());
}

Band strengthNow(const Posterior& posterior, std::size_t set, const CrownUse& use) {
    DrawColumn strengths(posterior.draws());
    for (std::size_t draw = 0; draw < strengths.size(); ++draw)
        strengths[draw] = std::exp(lnCrown(posterior, set, draw, use.hours, use.dose));
    return bandOf(strengths);
}

double chancePullBelow(const Posterior& posterior, std::size_t set, double lnLimit, const CrownUse& use,
                       double hoursThen, int pulls) {
    const double doseThen = use.dose + use.dosePerHour * (hoursThen - use.hours);
    double allHold = 0;
    std::size_t counted = 0;
    for (std::size_t draw = 0; draw < posterior.draws(); ++draw) {
        if (lnCrown(posterior, set, draw, use.hours, use.dose) <= lnLimit)
            continue;
        const double then = lnCrown(posterior, set, draw, hoursThen, doseThen);
        allHold += std::pow(normalBelow((then - lnLimit) / posterior.scatter[draw]), pulls);
        ++counted;
    }
    return isHardlyAny(counted, posterior.draws()) ? 1 : 1 - allHold / static_cast<double>(counted);
}

}
