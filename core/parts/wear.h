// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How something wears: readings over the hours flown, the line through them by ordinary least squares, and when that
/// line meets a limit. Plain arithmetic; what was read where and what the limit is, others say.
///
///     20.0, 18.9, 18.1, 16.8 mm at 0, 100, 200, 300 h       -1.04 mm each 100 h, at 95 % from -1.32 to -0.76
///     at least 12 mm                                         met at about 770 h, at 95 % between 636 and 1,000 h
///
/// The interval of the slope is Student's, with two degrees of freedom less than readings. That of the time is
/// Fieller's: all hours at which the limit lies within the 95 % band of the line itself (inverse prediction of the
/// mean; Draper and Smith, Applied Regression Analysis, 3rd edition, section 3.2, from memory). It has two ends exactly
/// when the slope's interval leaves out zero: else the line may never meet the limit, and no time is told. It is the
/// line that meets the limit: a single reading scatters about it, and one beyond the limit counts whatever the line
/// says.
///
/// What it takes for granted: wear is even over hours, readings scatter alike and apart from each other. Readings that
/// agree better than the instrument reads make the interval too narrow.

#include "measure/amount.h"

#include <tl/expected.hpp>

#include <span>

namespace crownring {

struct WearReading {
    Hours at; ///< on the item's clock
    double value = 0;
};

template <class Value>
struct Between {
    Value low;
    Value middle;
    Value high;
};

enum class NoForecast {
    TooFewReadings, ///< fewer than three
    SameHours,      ///< all of them at one figure of the clock
    MayNever,       ///< the slope's interval includes zero
    WearsAway,      ///< from the limit: it gets better
    NoLimit,        ///< the manual states none for it
    Beyond,         ///< the latest reading is beyond the limit already
    ClockUnknown,   ///< on the day asked: the line is known, and not how far along it is
};

inline constexpr std::size_t leastReadings = 3;
inline constexpr double wearConfidence = 0.95;

struct WearTrend {
    std::size_t readings = 0;
    double intercept = 0;    ///< at zero hours
    Between<double> slope{}; ///< an hour; middle is the estimate
    double scatter = 0;      ///< residual standard deviation
    double meanHours = 0;    ///< of the readings
    double meanValue = 0;    ///< of the readings
    double spread = 0;       ///< sum of squared differences of hours from their mean
    double student = 0;      ///< the quantile that the intervals rest on

    [[nodiscard]] double at(Hours hours) const { return intercept + slope.middle * hours.value(); }
};

/// @param readings in any order
[[nodiscard]] tl::expected<WearTrend, NoForecast> wearTrend(std::span<const WearReading> readings);

/// Which way wear goes.
enum class Wears { Down, Up };

/// On the item's clock; may lie in the past, where the line met it already.
[[nodiscard]] tl::expected<Between<Hours>, NoForecast> limitMet(const WearTrend& trend, double limit, Wears way);

/// How sure it is that the line has met the limit by then, from 0 to 1: Student's law of what `limitMet` inverts, so
/// that its ends lie at 2.5 and 97.5 %. @pre `limitMet` has an answer
[[nodiscard]] double chanceMet(const WearTrend& trend, double limit, Wears way, Hours by);

}
