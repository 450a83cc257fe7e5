// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What one balloon has to have done in the weeks of a plan, as the planner is asked for it.

#include "answers/forecast/items_ahead.h"
#include "answers/plan/next_dues.h"
#include "answers/plan/stations.h"

#include <vector>

namespace crownring {

/// A row that is done whenever another is: its limit goes with inspections.
struct RidingRow {
    const DueRow* row = nullptr;
    int from = 0;  ///< the first week in which it may be asked for; before it is exempt
    int every = 1; ///< with every so-manieth
    int next = 1;  ///< with so manieth first
};

struct BalloonTask {
    const DueRow* row = nullptr;
    const UseAhead* ahead = nullptr; ///< null where its item is not flown
    std::vector<DueAhead> dues;
    std::vector<RidingRow> rides;
};

/// A row that is not planned for, since nobody can say by when it has to be done.
struct NotPlanned {
    const DueRow* row = nullptr;
    bool isExempt = false; ///< else its item is fitted to nothing
};

struct BalloonWork {
    Registration balloon;
    VisitQuestion question;
    std::vector<BalloonTask> tasks; ///< in the order of the question's
};

struct PlanGround {
    const Stations& stations;
    const PlanWeeks& weeks;
    const std::vector<VisitPin>& pins;
};

/// @param rows of items on the balloon @param level the chance that may be taken, each time
[[nodiscard]] BalloonWork workOf(const Registration& balloon, const std::vector<const DueRow*>& rows, ItemsAhead& items,
                                 const PlanGround& ground, double level);

/// The chance that by this plan something of the balloon is used up before it is done. What hangs on one balloon flies
/// together: of tasks that wait from one visit to one other the likeliest counts, and such times are added up.
[[nodiscard]] double chanceOfLapse(const BalloonWork& work, const VisitPlan& plan, const PlanWeeks& weeks);

/// Is it planned for at all? What is recommended, not required, closed, or limited by nothing is not.
[[nodiscard]] bool isPlannedFor(const DueRow& row);
/// By its standing it is past already: it cannot be kept, only made good.
[[nodiscard]] bool isPastDue(const DueRow& row);
/// It goes with inspections.
[[nodiscard]] bool rides(const DueRow& row);

}
