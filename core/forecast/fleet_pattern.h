// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the logs of a fleet have in common, which stands in where one's own is short.
///
/// Flights of a month are counts that scatter more than Poisson's: variance = dispersion x mean (quasi-Poisson;
/// McCullagh and Nelder, Generalized Linear Models, ch. 6, from memory). Counts are divided by their dispersion before
/// anything is learnt from them, which deflates what they are worth (`utilisation.h` says how).

#include "forecast/months.h"

#include <span>

namespace crownring {

/// How much more the number of flights scatters than Poisson's would: variance over mean.
struct Dispersion {
    double week = 1;  ///< of a week within its month: bursts and weeks without a flight
    double month = 1; ///< of a month about what season and level of its year say
};

struct FleetPattern {
    ByMonth season;        ///< share of the mean pace in each month; their mean is 1
    double level = 0;      ///< flights a day, the mean over the logs
    double levelShape = 1; ///< of the gamma law of levels about it: 1 over their squared relative spread
    Dispersion dispersion; ///< of all together
    ByClock<PerFlight> flight{};
    std::size_t logs = 0; ///< that it was learnt from
    FleetPattern() { season.fill(1); }
};

/// Of logs that were flown at all. With none: every month alike, a flight a fortnight within wide bounds, an hour each.
[[nodiscard]] FleetPattern fleetPattern(std::span<const MonthlyUse> logs);

/// Sums of squares that dispersion is learnt from.
struct CountScatter {
    double squares = 0; ///< of differences from what was expected
    double expected = 0;
    double freedom = 0;

    CountScatter& operator+=(const CountScatter& other) {
        squares += other.squares;
        expected += other.expected;
        freedom += other.freedom;
        return *this;
    }
    [[nodiscard]] double ratio() const { return expected > 0 ? squares / expected : 1; }
};
struct MonthScatter {
    CountScatter week;
    CountScatter month;
};
/// Of one log about its own levels of each year (counted back from its end) and a season.
[[nodiscard]] MonthScatter scatterOf(const MonthlyUse& log, const ByMonth& season);

/// Flights a day at a season of 1, for each month of the log: the level of its year, counted back from the end.
[[nodiscard]] std::vector<double> yearlyLevels(const MonthlyUse& log, const ByMonth& season);

}
