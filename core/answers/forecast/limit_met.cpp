// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/forecast/limit_met.h"

#include <algorithm>

namespace crownring {

namespace {

/// The first day by whose evening it is met with that probability.
std::optional<CivilDate> metBy(const UseAhead& ahead, CivilDate known, const std::function<double(Hours)>& chance,
                               double share) {
    const auto chanceOn = [&](CivilDate day) {
        const auto use = ahead.upTo(day, UseClock::Minutes);
        constexpr int places = 20;
        double sum = 0;
        for (int place = 0; place < places; ++place)
            sum += chance(Hours(use.quantile((place + 0.5) / places) / 60));
        return sum / places;
    };
    auto before = known;
    auto day = addMonths(known, 12 * UseAhead::horizonYears, DayRule::Same);
    if (chanceOn(day) < share)
        return std::nullopt;
    while (addDays(before, 1) < day) {
        const auto half = addDays(before, daysBetween(before, day).value() / 2);
        (chanceOn(half) < share ? before : day) = half;
    }
    return day;
}

}

DateBand bandMet(const UseAhead& ahead, CivilDate known, CivilDate on, const std::function<double(Hours)>& chance) {
    DateBand met;
    for (const auto& [place, share] : {std::pair{&met.p10, 0.1}, {&met.p50, 0.5}, {&met.p90, 0.9}})
        if (const auto day = metBy(ahead, known, chance, share))
            *place = std::max(*day, on);
    return met;
}

}
