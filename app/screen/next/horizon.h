// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The horizon's arithmetic: into which bins of the two lanes a due row falls.
///
/// A row with a calendar limit stands at its calendar due date; one that use limits stands in the lane "by hours left",
/// by what is left; one that both limit stands in both. What is open and has no date (only hours limit it, only an
/// event makes it due, a minor defect) stands in the calendar's last bin, so that the strip leaves out nothing but what
/// is done with or not required. Overdue is what is spent, lapsed or in its tolerance, by whichever limit. When rows
/// carry a projection (p10, p50, p90), `calendarBin` is where its p50 enters.

#include "rules/due/due_list.h"
#include "rules/due/reckoned.h"

#include <array>
#include <cstdint>
#include <optional>

namespace crownring::screen {

inline constexpr int weeksShown = 52;

/// Calendar bins in their order: no proof, overdue, the weeks from the day asked, later, no date.
enum CalendarBin : int {
    UnprovenBin = 0,
    OverdueBin = 1,
    FirstWeekBin = 2,
    LaterBin = FirstWeekBin + weeksShown,
    NoDateBin = LaterBin + 1
};
inline constexpr int calendarBins = NoDateBin + 1;

/// Upper ends of the bins of hours left, in minutes. The first bin is "nothing left", the last but one "more".
inline constexpr std::array<std::int64_t, 6> useSteps{5 * 60, 10 * 60, 25 * 60, 50 * 60, 100 * 60, 200 * 60};
inline constexpr int useBins =
    static_cast<int>(useSteps.size()) + 3; ///< used up, the steps, more, landings and inflations

/// One bin of one lane.
struct Place {
    bool byUse = false;
    int bin = 0;
};

struct Places {
    std::optional<int> calendar; ///< nothing for what is done with (closed, not required)
    std::optional<int> use;      ///< nothing, too, for what no use limits, and where nothing is proven
    bool operator==(const Places&) const = default;
};

[[nodiscard]] Places horizonPlaces(const DueRow& row, CivilDate on);

/// Whoever asks what comes from today up to a day is to see it: what is past, unproven or near by use, whatever its
/// date, and what is due up to and including that day. How fast hours are flown nobody knows ahead.
[[nodiscard]] bool comesUpTo(const DueRow& row, CivilDate on, CivilDate last);

/// Rows of each sort in one bin, by `Reckoned`.
using Tally = std::array<int, reckonedCount>;

}
