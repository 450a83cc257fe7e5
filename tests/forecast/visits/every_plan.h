// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Every plan there is, one after the other: what planners are held against.

#include "forecast/visits/fleet_plan.h"

#include <map>
#include <optional>
#include <vector>

namespace crownring::testing {

/// By where the balloon is in each week (a place among the question's stops, or -1): the least that it is weighed.
using WeighedByStops = std::map<std::vector<int>, double>;
[[nodiscard]] WeighedByStops everyPlan(const VisitQuestion& question);
/// Nothing where a pin cannot be held.
[[nodiscard]] std::optional<double> leastOf(const VisitQuestion& question);
[[nodiscard]] std::optional<double> leastOf(const FleetQuestion& question);

/// What a plan is weighed by going through it; nothing where it is none: a stop that is not there, a task that is not
/// done there, a pin that is not held, or figures that are not its own.
[[nodiscard]] std::optional<double> walked(const VisitPlan& plan, const VisitQuestion& question);

}
