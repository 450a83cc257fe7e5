// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// When a number of hours will have been flown, going by what was flown in each month of the last years. Months are
/// plain numbers; whoever asks turns them into dates.

#include <array>
#include <optional>
#include <span>

namespace crownring {

/// Hours flown in each month of the year; [0] is January.
using YearlyPace = std::array<double, 12>;

/// The mean of each month over the months given, from the oldest on, usually 24; `firstMonth` (1..12) is that of the
/// first. A month that is not among them gets the mean of all.
[[nodiscard]] YearlyPace paceOf(std::span<const double> hoursOfMonths, int firstMonth);

struct PointOfMonth {
    int year = 0;
    int month = 1;   ///< 1..12
    double gone = 0; ///< share of the month gone, 0..1

    bool operator==(const PointOfMonth&) const = default;
};

/// Hours flown from one point to a later one; 0 where it is not later.
[[nodiscard]] double flownBetween(const PointOfMonth& now, const PointOfMonth& then, const YearlyPace& pace);

/// When `hours` > 0 more are flown; `now` for 0 or less, nothing where that takes more than a hundred years.
[[nodiscard]] std::optional<PointOfMonth> reachedAt(const PointOfMonth& now, double hours, const YearlyPace& pace);

}
