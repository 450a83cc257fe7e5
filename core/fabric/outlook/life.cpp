// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/outlook/life.h"

#include "fabric/likelihood/effective_age.h"
#include "fabric/numeric/quantile.h"

#include <cmath>
#include <numbers>

namespace crownring {

namespace {

constexpr double hardly = 0.01; ///< share of draws below which what they say is no forecast

AgeingShape shapeOf(const Posterior& posterior, std::size_t draw) {
    return {posterior.gamma[draw], posterior.phi[draw]};
}

/// Mean logarithm at the place when `hours` are flown.
double lnMean(const Posterior& posterior, std::size_t set, std::size_t draw, const PlaceUse& use, double hours) {
    const auto& line = posterior.sets[set];
    const double dose = use.dose + use.dosePerHour * (hours - use.hours);
    return line.intercept[draw] - line.slope[draw] * effectiveAge(shapeOf(posterior, draw), hours, use.row, dose);
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

DrawColumn livesOf(const Posterior& posterior, std::size_t set, double lnLimit, const PlaceUse& use) {
    const auto& line = posterior.sets[set];
    DrawColumn lives(posterior.draws());
    for (std::size_t draw = 0; draw < lives.size(); ++draw) {
        const double age = (line.intercept[draw] - lnLimit) / line.slope[draw];
        const double effective = age > 0 ? effectiveHours(shapeOf(posterior, draw), age, use.row) : 0;
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

Band strengthAt(const Posterior& posterior, std::size_t set, const PlaceUse& use, double hoursThen) {
    DrawColumn strengths(posterior.draws());
    for (std::size_t draw = 0; draw < strengths.size(); ++draw)
        strengths[draw] = std::exp(lnMean(posterior, set, draw, use, hoursThen));
    return bandOf(strengths);
}

double chanceBelowAt(const Posterior& posterior, std::size_t set, double lnLimit, const PlaceUse& use,
                     double hoursThen) {
    std::size_t below = 0;
    for (std::size_t draw = 0; draw < posterior.draws(); ++draw)
        below += lnMean(posterior, set, draw, use, hoursThen) < lnLimit ? 1 : 0;
    return static_cast<double>(below) / static_cast<double>(posterior.draws());
}

double chanceBreaksBelow(const Posterior& posterior, std::size_t set, double lnLimit, const PlaceUse& use,
                         double hoursThen) {
    double sum = 0;
    for (std::size_t draw = 0; draw < posterior.draws(); ++draw)
        sum += normalBelow((lnLimit - lnMean(posterior, set, draw, use, hoursThen)) / posterior.scatter[draw]);
    return sum / static_cast<double>(posterior.draws());
}

double chancePullBelow(const Posterior& posterior, std::size_t set, double lnLimit, const PlaceUse& use,
                       double hoursThen, int pulls) {
    double allHold = 0;
    std::size_t counted = 0;
    for (std::size_t draw = 0; draw < posterior.draws(); ++draw) {
        if (lnMean(posterior, set, draw, use, use.hours) <= lnLimit)
            continue;
        const double then = lnMean(posterior, set, draw, use, hoursThen);
        allHold += std::pow(normalBelow((then - lnLimit) / posterior.scatter[draw]), pulls);
        ++counted;
    }
    return isHardlyAny(counted, posterior.draws()) ? 1 : 1 - allHold / static_cast<double>(counted);
}

}
