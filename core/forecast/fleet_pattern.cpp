// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/fleet_pattern.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace crownring {

namespace {

constexpr double leastSeason = 0.002; ///< of the mean pace: no month is impossible
constexpr double leastDispersion = 0.5;
constexpr int rounds = 4;
/// What stands in for a fleet that flew nothing (common practice, no source).
constexpr double usualFlightsOfDay = 1.0 / 14;
constexpr PerFlight usualFlight{60, 20.0 * 20.0};
constexpr PerFlight once{1, 0};

/// To a mean of 1, every month possible.
ByMonth normalised(ByMonth season) {
    for (int turn = 0; turn < 2; ++turn) {
        const double mean = std::accumulate(season.begin(), season.end(), 0.0) / monthsOfYear;
        for (auto& each : season)
            each = mean > 0 ? std::max(each / mean, leastSeason) : 1;
    }
    return season;
}

/// Each month's flights over what the levels alone would give, by iterated proportional fitting. A month that no log
/// covers gets the mean.
ByMonth commonSeason(std::span<const MonthlyUse> logs) {
    ByMonth season;
    season.fill(1);
    for (int round = 0; round < rounds; ++round) {
        ByMonth flown{}, expected{};
        for (const auto& log : logs) {
            const auto levels = yearlyLevels(log, season);
            for (std::size_t i = 0; i < levels.size(); ++i) {
                ofMonth(flown, log.months[i].month) += log.months[i].flights;
                ofMonth(expected, log.months[i].month) += levels[i] * log.months[i].days;
            }
        }
        ByMonth next;
        for (std::size_t month = 0; month < season.size(); ++month)
            next[month] = expected[month] > 0 ? flown[month] / expected[month] : 1;
        season = normalised(next);
    }
    return season;
}

/// The level of a log's last year.
double lastLevel(const MonthlyUse& log, const ByMonth& season) {
    const auto levels = yearlyLevels(log, season);
    return levels.empty() ? 0 : levels.back();
}

PerFlight meanFlight(double flights, double sum, double squares, const PerFlight& usual) {
    if (flights < 1 || sum <= 0)
        return usual;
    const double mean = sum / flights;
    return {mean, std::max(squares / flights - mean * mean, 0.0)};
}

}

std::vector<double> yearlyLevels(const MonthlyUse& log, const ByMonth& season) {
    std::vector<double> levels(log.months.size());
    for (std::size_t end = log.months.size(); end > 0;) {
        // A first year of less than half its length goes with the next.
        const std::size_t from = end >= monthsOfYear + monthsOfYear / 2 ? end - monthsOfYear : 0;
        double flown = 0, expected = 0;
        for (std::size_t i = from; i < end; ++i) {
            flown += log.months[i].flights;
            expected += log.months[i].days * ofMonth(season, log.months[i].month);
        }
        std::fill(levels.begin() + static_cast<std::ptrdiff_t>(from), levels.begin() + static_cast<std::ptrdiff_t>(end),
                  expected > 0 ? flown / expected : 0);
        end = from;
    }
    return levels;
}

MonthScatter scatterOf(const MonthlyUse& log, const ByMonth& season) {
    MonthScatter scatter;
    const auto levels = yearlyLevels(log, season);
    for (std::size_t i = 0; i < levels.size(); ++i) {
        const auto& month = log.months[i];
        const double expected = levels[i] * month.days * ofMonth(season, month.month);
        scatter.month.squares += (month.flights - expected) * (month.flights - expected);
        scatter.month.expected += expected * (monthsOfYear - 2.0) / monthsOfYear; // a level, and a share of the season
        scatter.month.freedom += expected > 0.2 ? (monthsOfYear - 2.0) / monthsOfYear : 0;
        if (month.weeks > 1 && month.weekFlights > 0) {
            const double mean = month.weekFlights / month.weeks;
            scatter.week.squares += month.weekSquares - month.weeks * mean * mean;
            scatter.week.expected += (month.weeks - 1) * mean;
            scatter.week.freedom += month.weeks - 1;
        }
    }
    return scatter;
}

FleetPattern fleetPattern(std::span<const MonthlyUse> logs) {
    FleetPattern pattern;
    pattern.level = usualFlightsOfDay;
    pattern.levelShape = 0.5;
    pattern.flight = {usualFlight, once, once};
    pattern.dispersion = {1.5, 3};
    std::vector<MonthlyUse> flown;
    std::ranges::copy_if(logs, std::back_inserter(flown), [](const MonthlyUse& log) { return log.sums.flights > 0; });
    if (flown.empty())
        return pattern;
    pattern.logs = flown.size();
    pattern.season = commonSeason(flown);
    MonthScatter scatter;
    FlightSums sums;
    std::vector<double> levels;
    for (const auto& log : flown) {
        const auto own = scatterOf(log, pattern.season);
        scatter.week += own.week;
        scatter.month += own.month;
        levels.push_back(lastLevel(log, pattern.season));
        sums.flights += log.sums.flights;
        for (std::size_t clock = 0; clock < useClocks; ++clock) {
            sums.sum[clock] += log.sums.sum[clock];
            sums.squares[clock] += log.sums.squares[clock];
        }
    }
    pattern.dispersion.week = std::max(scatter.week.ratio(), leastDispersion);
    pattern.dispersion.month = std::max(scatter.month.ratio(), pattern.dispersion.week);
    for (std::size_t clock = 0; clock < useClocks; ++clock)
        pattern.flight[clock] =
            meanFlight(sums.flights, sums.sum[clock], sums.squares[clock], clock == 0 ? usualFlight : once);
    const double mean = std::accumulate(levels.begin(), levels.end(), 0.0) / static_cast<double>(levels.size());
    pattern.level = std::max(mean, 1e-4);
    double squares = 0;
    for (const double level : levels)
        squares += (level - mean) * (level - mean);
    // Few logs say little of how far levels lie apart: as if two more lay their own mean apart.
    const double relative = (squares / (pattern.level * pattern.level) + 2) / (static_cast<double>(levels.size()) + 1);
    pattern.levelShape = std::clamp(1 / relative, 0.3, 20.0);
    return pattern;
}

}
