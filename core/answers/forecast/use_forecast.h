// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What will be flown, day by day or month by month: of an item, of a balloon, or of all balloons together.

#include "forecast/use_ahead.h"
#include "registry/books.h"

#include <optional>
#include <vector>

namespace crownring {

struct UseAsked {
    CivilDate from;
    CivilDate to;                        ///< inclusive
    CivilDate known;                     ///< the last day of which the record is taken to hold what was flown
    std::optional<Registration> balloon; ///< one of these two, or the whole fleet
    std::optional<ItemId> item;
    std::vector<StatedPlan> plans;
};

struct UseOfDays {
    CivilDate on; ///< its first day
    CivilDate last;
    ByClock<UseBand> use;
};

struct UseForecast {
    bool inMonths = false; ///< else in days
    std::vector<UseOfDays> periods;
    std::optional<OutOfService> out; ///< nothing is flown: it is out of service on the last day known
    double flights = 0;              ///< in its own log, of the last years
};

/// Longer times are told in months.
inline constexpr int mostDaysTold = 62;

/// BadUse where it is not known < from <= to within `UseAhead::horizonYears`; UnknownReference where the record holds
/// no such balloon or item on the last day known.
[[nodiscard]] Result<UseForecast> useForecast(Books& books, const UseAsked& asked);

}
