// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Logs that are as even as can be, so that what is foretold of them can be said by hand.

#include "forecast/use_ahead.h"

#include <functional>

namespace crownring::testing {

inline CivilDate dayOf(const char* text) { return CivilDate::parse(text).value(); }

/// So many flights of an hour on a day; 0 for none.
inline UseLog flownLog(const char* first, const char* last, const std::function<int(CivilDate)>& flightsOn) {
    UseLog log{dayOf(first), dayOf(last), {}};
    for (auto day = log.first; day <= log.last; day = addDays(day, 1))
        if (const int flights = flightsOn(day); flights > 0)
            log.days.push_back({day, flights, {Minutes(60 * flights), Landings(flights), Inflations(flights)}});
    return log;
}

inline int everyFourthDay(CivilDate day) { return day.dayNumber() % 4 == 0 ? 1 : 0; }
inline int inSummer(CivilDate day) { return day.month() >= 5 && day.month() <= 9 ? everyFourthDay(day) : 0; }

inline FleetPattern patternOf(std::initializer_list<UseLog> logs) {
    std::vector<MonthlyUse> months;
    for (const auto& log : logs)
        months.push_back(inMonths(log));
    return fleetPattern(months);
}

inline UseAhead aheadOf(const UseLog& log, const FleetPattern& fleet, std::span<const StatedPlan> plans = {}) {
    return {utilisationOf(inMonths(log), fleet), addDays(log.last, 1), plans};
}

inline double hours(const UseDistribution& use) { return use.mean() / 60; }

}
