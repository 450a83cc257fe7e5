// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/plan/told_visits.h"

#include <algorithm>

namespace crownring {

namespace {

class Telling {
public:
    Telling(const BalloonWork& work, const PlanGround& ground, FleetVisits& told)
        : m_work(work), m_ground(ground), m_told(told), m_due(work.tasks.size(), 0), m_from(work.tasks.size(), 0),
          m_inspections(work.tasks.size(), 0) {}

    void tell(const VisitPlan& plan) {
        for (const auto& visit : plan.visits)
            tell(visit);
        for (std::size_t task = 0; task < m_work.tasks.size(); ++task)
            if (taskOf(task).lateness(m_due[task], m_work.question.weeks) > 0)
                notKept(task, std::nullopt);
    }

private:
    [[nodiscard]] const VisitTask& taskOf(std::size_t task) const { return m_work.question.tasks[task]; }
    [[nodiscard]] int latestOf(std::size_t task) const { return taskOf(task).dues[m_due[task]].latest; }

    /// Is there a week for it from the one to the other, both inclusive?
    [[nodiscard]] bool hasStop(std::size_t task, int first, int last) const {
        return std::ranges::any_of(m_work.question.stops, [&](const Stop& stop) {
            return first <= stop.week && stop.week <= last && taskOf(task).isDoneAt(stop);
        });
    }

    void tell(const PlannedVisit& visit) {
        PlannedStay stay{m_ground.stations.stations[visit.station].name,
                         m_ground.weeks.monday(visit.week),
                         m_work.balloon,
                         {},
                         visit.cost,
                         std::ranges::find(m_work.question.pins, visit.week) != m_work.question.pins.end()};
        const auto first = std::ranges::min_element(visit.covers, {}, [&](auto task) { return latestOf(task); });
        for (const auto task : visit.covers) {
            stay.covers.push_back({plannedRowOf(*m_work.tasks[task].row), whyOf(task, visit, *first, stay.isPinned)});
            for (const auto& riding : m_work.tasks[task].rides) {
                const int nth = m_inspections[task] + 1;
                if (visit.week < riding.from || nth < riding.next || (nth - riding.next) % riding.every != 0)
                    continue;
                WorkWhy why{WorkWhy::Kind::Rides};
                why.with = plannedRowOf(*m_work.tasks[task].row);
                stay.covers.push_back({plannedRowOf(*riding.row), why});
            }
            ++m_inspections[task];
        }
        std::vector<bool> isDone(m_due.size(), false);
        for (const auto task : visit.covers) {
            isDone[task] = true;
            for (const auto other : taskOf(task).implies)
                isDone[other] = true;
        }
        for (std::size_t task = 0; task < m_due.size(); ++task) {
            if (!isDone[task])
                continue;
            if (taskOf(task).lateness(m_due[task], visit.week) > 0)
                notKept(task, m_ground.weeks.signedOn(visit.week));
            m_due[task] = taskOf(task).next(m_due[task], visit.week);
            m_from[task] = visit.week + 1;
        }
        m_told.visits.push_back(std::move(stay));
    }

    [[nodiscard]] WorkWhy whyOf(std::size_t task, const PlannedVisit& visit, std::size_t first, bool isPinned) const {
        const auto& its = m_work.tasks[task];
        const auto& due = taskOf(task).dues[m_due[task]];
        WorkWhy why;
        why.due = its.dues[m_due[task]].last;
        why.byUse = its.dues[m_due[task]].byUse;
        if (why.byUse)
            why.before = m_ground.weeks.monday(due.latest + 1);
        why.keeps = due.keeps && due.keepsFrom <= visit.week && visit.week <= due.latest;
        if (due.keeps)
            why.window = m_ground.weeks.signedOn(due.keepsFrom);
        why.weeksEarly = std::max(0, due.latest - visit.week);
        why.thrownAway = taskOf(task).charge(m_due[task], visit.week);
        if (m_from[task] == 0 && isPastDue(*its.row))
            why.kind = WorkWhy::Kind::AtOnce;
        else if (due.latest < visit.week)
            why.kind = WorkWhy::Kind::Late;
        else if (!hasStop(task, visit.week + 1, due.latest))
            why.kind = WorkWhy::Kind::CannotWait;
        else if (task != first)
            why.kind = WorkWhy::Kind::Bundled;
        else
            why.kind = isPinned ? WorkWhy::Kind::Pinned : WorkWhy::Kind::CannotWait;
        if (why.kind == WorkWhy::Kind::Bundled)
            why.with = plannedRowOf(*m_work.tasks[first].row);
        return why;
    }

    void notKept(std::size_t task, const std::optional<CivilDate>& until) {
        const auto& its = m_work.tasks[task];
        NotKept kept{m_work.balloon, plannedRowOf(*its.row)};
        kept.standing = its.row->state.standing;
        kept.due = its.dues[m_due[task]].last;
        if (its.dues[m_due[task]].byUse && latestOf(task) >= 0)
            kept.before = m_ground.weeks.monday(latestOf(task) + 1);
        kept.until = until;
        if (m_from[task] == 0 && isPastDue(*its.row))
            kept.why = NotKept::Why::Lapsed;
        else if (taskOf(task).stations == 0)
            kept.why = NotKept::Why::NoStation;
        else if (m_from[task] > 0 && latestOf(task) < m_from[task])
            kept.why = NotKept::Why::Outrun;
        else
            kept.why = hasStop(task, m_from[task], latestOf(task)) ? NotKept::Why::Full : NotKept::Why::NoWeek;
        m_told.notKept.push_back(std::move(kept));
    }

    const BalloonWork& m_work;
    const PlanGround& m_ground;
    FleetVisits& m_told;
    std::vector<std::size_t> m_due; ///< by task: its due date that runs
    std::vector<int> m_from;        ///< by task: the week after it was done last
    std::vector<int> m_inspections; ///< by task: how often it was done
};

}

PlannedRow plannedRowOf(const DueRow& row) {
    return {row.item->id, row.item->kind, row.requirement->id, row.requirement->title};
}

void tell(const BalloonWork& work, const VisitPlan& plan, const PlanGround& ground, FleetVisits& told) {
    Telling(work, ground, told).tell(plan);
}

}
