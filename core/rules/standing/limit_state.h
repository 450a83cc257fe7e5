// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// One limit of a requirement: what it counts from, when it is due, and how much is left. The calendar and the clocks
/// of use have the same rules and different values; neither is ever taken for the other.
///
/// Nothing overflows: an interval is at most 10^10 (assets/schema/programme.schema.json), a due date counted from a
/// kept one stays within a window of the clock at the act, and dates stop at the ends of the calendar.

#include "rules/standing/counting_acts.h"
#include "rules/standing/standing.h"

#include <cstdint>
#include <optional>
#include <span>

namespace crownring {

/// The interval that runs now. `At` is a date, or a count of a clock.
template <class At>
struct Interval {
    At last; ///< the accomplishment, or the origin before any
    At from; ///< what it is counted from: `last`, or a due date before it
    At due;  ///< the last good day; the count at which nothing is left
};

/// The figure of a usage clock; absent when it is not known, or for a calendar clock.
[[nodiscard]] std::optional<ClockCount> figureOf(const Figures& figures, ClockName clock);
/// What a flight, or many, put on that clock; 0 for a calendar clock.
[[nodiscard]] ClockCount figureOf(const Usage& use, ClockName clock);

/// When it was made is known: stated, and no day that has not come.
[[nodiscard]] bool isKnownMade(const ItemFacts& item, CivilDate today);

/// How a limit stands in an interval. `spent` where it is of an action that retires.
[[nodiscard]] LimitState stateIn(const Interval<CivilDate>& interval, const Limit& limit, Action action,
                                 CivilDate today);
[[nodiscard]] LimitState stateIn(const Interval<ClockCount>& interval, const Limit& limit, Action action,
                                 ClockCount now);

/// Unproven where there is nothing to count from, or the clock is not known.
[[nodiscard]] LimitState limitState(const Requirement& requirement, const Limit& limit, const ItemFacts& item,
                                    std::span<const Act> acts, CivilDate today);

/// The day itself is good until its end; a count that is reached is used up.
[[nodiscard]] constexpr bool isGood(Days left) { return left >= Days(0); }
[[nodiscard]] constexpr bool isGood(ClockCount left) { return left > ClockCount(0); }

}
