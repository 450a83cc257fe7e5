// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/visits/visit_plan.h"

#include <algorithm>

namespace crownring {

namespace {

/// The cheapest stop of the last week in which it may still be done, else of the first one after; none where it is
/// never done.
const Stop* stopFor(const VisitQuestion& question, const VisitTask& task, int latest, int from) {
    const Stop* found = nullptr;
    for (const auto& stop : question.stops) {
        if (stop.week < from || !task.isDoneAt(stop))
            continue;
        const bool isSameWeek = found && found->week == stop.week;
        if (isSameWeek ? stop.cost < found->cost : !found || stop.week <= latest)
            found = &stop;
    }
    return found;
}

}

VisitPlan planWhenDue(const VisitQuestion& question) {
    const auto& tasks = question.tasks;
    std::vector<std::size_t> due(tasks.size(), 0);
    std::vector<int> from(tasks.size(), 0);
    VisitPlan plan;
    for (;;) {
        std::vector<const Stop*> stops(tasks.size(), nullptr);
        const Stop* next = nullptr;
        for (std::size_t task = 0; task < tasks.size(); ++task) {
            const int latest = tasks[task].dues[due[task]].latest;
            if (latest < question.weeks)
                stops[task] = stopFor(question, tasks[task], latest, from[task]);
            if (stops[task] && (!next || stops[task]->week < next->week))
                next = stops[task];
        }
        if (!next)
            break;
        PlannedVisit visit{next->week, next->station, {}, next->cost};
        std::vector<bool> counted(tasks.size(), false);
        for (std::size_t task = 0; task < tasks.size(); ++task)
            if (stops[task] && stops[task]->week == next->week && tasks[task].isDoneAt(*next) && !counted[task]) {
                visit.covers.push_back(task);
                visit.cost += tasks[task].charge(due[task], next->week);
                for (const auto other : tasks[task].implies)
                    counted[other] = true;
            }
        for (std::size_t task = 0; task < tasks.size(); ++task)
            if (counted[task] || std::ranges::find(visit.covers, task) != visit.covers.end()) {
                plan.late += tasks[task].lateness(due[task], next->week);
                due[task] = tasks[task].next(due[task], next->week);
                from[task] = next->week + 1;
            }
        plan.cost += visit.cost;
        plan.visits.push_back(std::move(visit));
    }
    for (std::size_t task = 0; task < tasks.size(); ++task)
        plan.late += tasks[task].lateness(due[task], question.weeks);
    return plan;
}

}
