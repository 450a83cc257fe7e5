// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Questions that are made up: small ones of every kind, and fleets as large as the planner is for.

#include "fabric/numeric/draws.h"
#include "forecast/visits/fleet_plan.h"

#include <functional>

namespace crownring::testing {

/// Counted from when it is done. @param end by the week in which it is done, its next last week; never falls
/// @param life by week (from the end of the time on by the last one), never falling
struct MadeTask {
    int latest = 0;
    std::function<int(int)> end;
    std::function<double(int)> life;
    double cost = 0;
};
[[nodiscard]] VisitTask counted(const MadeTask& made, int weeks);
/// Every so many weeks of the calendar.
[[nodiscard]] VisitTask everyWeeks(int latest, int every, int weeks, double cost);
/// The same, keeping its pattern when done so many weeks or fewer before its last.
[[nodiscard]] VisitTask keptWithin(int window, int latest, int every, int weeks, double cost);

struct SmallSize {
    int weeks = 5;
    int stations = 2;
    int tasks = 3;
};
/// Every kind of task, closed weeks, tasks that a station does not do or that count for others.
[[nodiscard]] VisitQuestion smallQuestion(Draws& draws, const SmallSize& size);
[[nodiscard]] FleetQuestion smallFleet(Draws& draws, int balloons, const SmallSize& size);

/// A fleet of operators as they are: annuals all over the year, most of the use in summer, which is kept free for
/// flying; stations that take four to six balloons.
[[nodiscard]] FleetQuestion largeFleet(Draws& draws, int balloons, int weeks, int stations);

}
