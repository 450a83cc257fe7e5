// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A log in months of the calendar, as utilisation reads it, and the months that lie ahead.

#include "forecast/use_distribution.h"
#include "registry/use_log.h"

#include <array>
#include <vector>

namespace crownring {

inline constexpr int monthsOfYear = 12;
/// By month of the year; [0] is January.
using ByMonth = std::array<double, monthsOfYear>;
/// @param month of the year, from 0
inline double& ofMonth(ByMonth& figures, int month) { return figures[static_cast<std::size_t>(month)]; }
inline double ofMonth(const ByMonth& figures, int month) { return figures[static_cast<std::size_t>(month)]; }

/// The clocks of use, in the order of `Usage`.
enum class UseClock { Minutes, Landings, Inflations };
inline constexpr std::size_t useClocks = 3;
template <class Value>
using ByClock = std::array<Value, useClocks>;

/// One month of a log.
struct FlownMonth {
    int month = 0;   ///< of the year, from 0
    double days = 0; ///< of it that the log covers
    double flights = 0;
    int weeks = 0;          ///< whole ones from its first day on
    double weekFlights = 0; ///< in those
    double weekSquares = 0; ///< sum of the squared numbers of flights of each
};

/// Sums over the flights of a log of what each put on a clock.
struct FlightSums {
    double flights = 0;
    ByClock<double> sum{};
    ByClock<double> squares{};
};

struct MonthlyUse {
    std::vector<FlownMonth> months; ///< without a gap, the oldest first
    FlightSums sums;
};

/// Flights of one day are taken to have been alike.
[[nodiscard]] MonthlyUse inMonths(const UseLog& log);

/// Part of a month ahead.
struct SpanAhead {
    CivilDate first;
    int days = 0;
    int month = 0; ///< of the year, from 0
};
/// From `from` on, cut at the ends of months; both inclusive.
[[nodiscard]] std::vector<SpanAhead> spansBetween(CivilDate from, CivilDate to);

}
