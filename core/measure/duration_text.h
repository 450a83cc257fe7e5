// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Minutes aloft as people write them: "1:35", "1 h 35 min", "1.5 h", "95 min".

#include "measure/count.h"
#include "problem/problem.h"

#include <string>
#include <string_view>

namespace crownring {

/// What a bare number means where no unit is written.
enum class BareNumber { Minutes, Hours };

/// Reads a duration. A decimal comma or point is accepted; decimal hours are rounded to the nearest whole minute,
/// halves up. Minutes must be whole. Where a separator may stand for thousands ("1,500") the text is refused.
/// @return BadQuantity for anything else, for a negative value and for more than `largestCount`.
[[nodiscard]] Result<Minutes> parseDuration(std::string_view text, BareNumber bare = BareNumber::Minutes);

/// "9:24"; negative values with a minus sign in front: "-0:30".
[[nodiscard]] std::string hoursAndMinutes(Minutes minutes);

/// "9.4": hours with one decimal, rounded half away from zero.
[[nodiscard]] std::string decimalHours(Minutes minutes);

}
