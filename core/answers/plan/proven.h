// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A plan that is far from the least that any could cost is told as none: it would say much of visits and prove little.

#include "answers/plan/planned_visits.h"

namespace crownring {

inline constexpr double mostGapTold = 0.05;
[[nodiscard]] inline bool isProven(const FleetVisits& plan) { return plan.gap <= mostGapTold; }

}
