// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Serial numbers held against the ranges of a directive, which other people wrote. They are compared in natural order
/// (`compareSerials`: 0099 is 99), whatever their case, spaces and dashes; a serial that is written otherwise than the
/// ends of a range may be one of it all the same, and nobody knows.
///
///     "A-0150", A100 to A200    inside        "A201"    outside        "150"    unknown
///     "150",    100 and up      inside        "99"      outside        "B150"   unknown

#include "rules/programme/requirement.h"

#include <span>
#include <string>
#include <string_view>

namespace crownring {

/// What is asked of a thing of which something may not be known.
enum class Truth { No, Unknown, Yes };
/// No where any is, else unknown where any is.
[[nodiscard]] constexpr Truth both(Truth a, Truth b) { return a < b ? a : b; }
/// Yes where any is, else unknown where any is.
[[nodiscard]] constexpr Truth either(Truth a, Truth b) { return a < b ? b : a; }

/// In capitals, without blanks and the dashes and slashes between letters and digits; what parts two numbers stays.
[[nodiscard]] std::string plainSerial(std::string_view written);

/// Letters for letters, whatever numbers stand between: "A-0100" and "a7".
[[nodiscard]] bool isOneShape(std::string_view a, std::string_view b);

/// Whether it lies in any of the ranges. No only where it is written as their ends are, letters for letters.
[[nodiscard]] Truth isAmong(std::string_view serial, std::span<const SerialRange> ranges);

}
