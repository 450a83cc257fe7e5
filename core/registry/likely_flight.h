// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Beyond which figures a flight is rather an error of writing than a flight. A person is asked back and may say that
/// it is so; a row of a file is refused, and may be written by hand.

#include "civil/civil_date.h"
#include "measure/count.h"

namespace crownring {

/// Twelve hours aloft (common practice, no source): "90" in a column of hours is 90 minutes.
inline constexpr Minutes longestLikelyFlight{12 * 60};

/// The most landings, and the most inflations, of one flight that are taken without a question (common practice, no
/// source).
inline constexpr std::int64_t mostLikelyOfOneFlight = 20;

/// 1960-01-01: modern hot-air balloons have flown since that year (from memory). Nothing that is kept is older.
[[nodiscard]] inline CivilDate firstLikelyDay() { return *CivilDate::fromYearMonthDay(1960, 1, 1); }

}
