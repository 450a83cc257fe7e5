// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Dates as people and spreadsheets write them.

#include "civil/civil_date.h"

#include <optional>
#include <string_view>

namespace crownring {

/// In what order a date of three numbers stands.
enum class DateOrder { DayMonthYear, MonthDayYear, YearMonthDay };

/// Reads a date. These mean the same under every order:
///   - 2025-12-31, 2025/12/31, 2025.12.31, 20251231 (ISO 8601 and the same order with other marks),
///   - 31.12.2025 and 31.12.25 with points: the day comes first wherever dates are written so (common practice, no
///   source),
///   - 31 Dec 2025, 31-Dec-2025, Dec 31, 2025, with month names in English, German, French or Spanish.
/// 31/12/2025, 31-12-2025 and "31 12 2025" follow `order`. A year of two digits is read as POSIX strptime %y does
/// (from memory): 69 to 99 are 1969 to 1999, 00 to 68 are 2000 to 2068.
/// @return nothing when the text cannot be a date in that order, also for 30 February.
[[nodiscard]] std::optional<CivilDate> readDate(std::string_view text, DateOrder order);

/// A date whose year has only two digits.
[[nodiscard]] bool hasShortYear(std::string_view text);

}
