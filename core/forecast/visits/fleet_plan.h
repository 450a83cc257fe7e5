// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The visits of a fleet that shares its stations' weeks.
///
/// Column generation (Dantzig and Wolfe, Operations Research 8 (1960) 101-111, from memory): each balloon has plans,
/// one of which is chosen (`PlanChoice`); what a place at a station is worth by that choice is put on top of going
/// there, and the exact planner of one balloon is asked for a cheaper plan, until none has one. The plans there are at
/// such prices cost, less what the places are worth, no more than any choice at all: that is the bound that the gap is
/// stated against, so it is of all plans and not of those at hand.

#include "forecast/visits/visit_question.h"

#include <stop_token>
#include <vector>

namespace crownring {

struct FleetQuestion {
    std::vector<VisitQuestion> balloons;  ///< of the same weeks and stations, with the same `lateWeek`
    std::vector<std::vector<int>> atOnce; ///< by station and week how many balloons it takes
};

struct FleetPlan {
    std::vector<VisitPlan> plans; ///< by balloon
    double cost = 0;
    int late = 0;
    double bound = 0; ///< no plan of the fleet is weighed less
    double gap = 0;   ///< how much more it is weighed than the bound, as a part of its cost
};

/// Nothing where pinned visits take more places than there are, or it was stopped.
[[nodiscard]] std::optional<FleetPlan> cheapestPlans(const FleetQuestion& question, const std::stop_token& stop = {});

}
