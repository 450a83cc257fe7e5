// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// One limit of a requirement: what it counts from, when it is due, and how much is left. Values are day numbers for
/// calendar clocks, counts otherwise.
///
/// Nothing overflows: an interval is at most 10^10 (assets/schema/programme.schema.json), a due date counted from a
/// kept one stays within a window of the clock at the act, and dates stop at the ends of the calendar.

#include "rules/standing/counting_acts.h"
#include "rules/standing/standing.h"

#include <cstdint>
#include <optional>
#include <span>

namespace crownring {

/// The interval that runs now.
struct Interval {
    std::int64_t last = 0; ///< the accomplishment, or the origin before any
    std::int64_t from = 0; ///< what it is counted from: `last`, or a due date before it
    std::int64_t due = 0;  ///< the last good day; the count at which nothing is left
};

/// The figure of a usage clock; absent when it is not known, or for a calendar clock.
[[nodiscard]] std::optional<std::int64_t> figureOf(const Figures& figures, ClockName clock);

/// Empty when there is nothing to count from: the limit is then unproven.
[[nodiscard]] std::optional<Interval> runningInterval(const Requirement& requirement, const Limit& limit,
                                                      const ItemFacts& item, std::span<const Act> acts);

[[nodiscard]] LimitState limitState(const Requirement& requirement, const Limit& limit, const ItemFacts& item,
                                    std::span<const Act> acts, CivilDate today);

}
