// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// When a row of the due list is due next, done in any week of a plan: calendar and use, held against the chance that
/// the user takes.
///
/// By the calendar it is signed by the due date. Of use it is done before the Monday by which the forecast has it used
/// up with more than that chance; after a visit use is counted from the Saturday on. Where it stands on both, the
/// limits of the row say which holds. A tolerance is no time.

#include "answers/plan/plan_weeks.h"
#include "forecast/use_ahead.h"
#include "forecast/visits/visit_question.h"
#include "rules/due/due_list.h"

namespace crownring {

struct DueAhead {
    std::optional<CivilDate> last{}; ///< the last good day by the calendar, where that limits it
    bool byUse = false;              ///< use comes first
};

struct TaskAhead {
    VisitTask task;
    std::vector<DueAhead> dues; ///< of each due date of the task
};

/// @param ahead from the day after the list's on; null where nothing is flown
/// @param level the chance that may be taken of use running out, each time
[[nodiscard]] TaskAhead taskAhead(const DueRow& row, const UseAhead* ahead, const PlanWeeks& weeks, double level);

/// The chance that as much as `count` is put on between two visits, or from the list's day on before the first.
/// @param doneIn the week of the first visit; below 0: none @param until the week of the second, or the count of weeks
[[nodiscard]] double chanceBetween(const UseAhead& ahead, const PlanWeeks& weeks, UseClock clock, double count,
                                   int doneIn, int until);

/// Limits of use of a row, with what is left of them now and of a whole interval.
struct UseLimit {
    UseClock clock;
    double left = 0;
    double every = 0;
};
[[nodiscard]] std::vector<UseLimit> useLimitsOf(const DueRow& row);

}
