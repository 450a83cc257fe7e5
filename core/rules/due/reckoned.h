// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// As what a row is counted and shown, everywhere alike: by its standing, except for two that no standing tells. A
/// defect that was put off is not clear, however far its limit is; what the operation does not call for is not
/// anything.

#include "rules/standing/standing.h"

#include <string_view>

namespace crownring {

/// Those of a standing first, in its order and with its numbers.
enum class Reckoned { Spent, Lapsed, Unproven, Tolerance, Nearing, Clear, Closed, Deferred, NotRequired };
inline constexpr int reckonedCount = standingCount + 2;

constexpr Reckoned reckonedAs(Standing standing) { return static_cast<Reckoned>(standing); }
[[nodiscard]] Reckoned reckonedAs(const Assessment& state);
/// "clear" … as `standingText`, "deferred", "not required".
[[nodiscard]] std::string_view reckonedText(Reckoned reckoned);

}
