// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The horizon's arithmetic: into which bin of the strip a due row falls.
///
/// Rows with a calendar limit stand at their calendar due date. A row that use governs has no honest date without a
/// forecast of use, so it stands in the lane "by use", ordered by what is left. When rows carry a projection (p10, p50,
/// p90), `calendarBin` is where its p50 enters.

#include "rules/due/due_list.h"

#include <array>
#include <cstdint>
#include <optional>

namespace crownring::screen {

inline constexpr int weeksShown = 52;

/// Calendar bins in their order: no proof, overdue, the weeks from the day asked, later.
enum CalendarBin : int { UnprovenBin = 0, OverdueBin = 1, FirstWeekBin = 2, LaterBin = FirstWeekBin + weeksShown };
inline constexpr int calendarBins = LaterBin + 1;

/// Upper ends of the bins of hours left, in minutes. The first bin is "nothing left", the last but one "more".
inline constexpr std::array<std::int64_t, 6> useSteps{5 * 60, 10 * 60, 25 * 60, 50 * 60, 100 * 60, 200 * 60};
inline constexpr int useBins =
    static_cast<int>(useSteps.size()) + 3; ///< used up, the steps, more, landings and inflations

struct Place {
    bool byUse = false;
    int bin = 0;
};

/// Nothing for rows that are done with (closed, not required) or that only an event would make due.
[[nodiscard]] std::optional<Place> horizonPlace(const DueRow& row, CivilDate on);

/// Rows of each standing in one bin.
using Tally = std::array<int, standingCount>;

}
