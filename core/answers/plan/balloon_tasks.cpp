// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/plan/balloon_tasks.h"

#include <algorithm>
#include <map>

namespace crownring {

namespace {

bool isFabricTest(const DueRow& row) {
    return row.item->kind == ItemKind::Envelope && row.requirement->action == Action::Test;
}

/// The first week in which it may no longer be exempt; with what use is foretold nobody is exempt for certain.
int endOfExemption(const DueRow& row, const UseAhead* ahead, const PlanWeeks& weeks, double level) {
    if (row.state.because != Because::Exempt)
        return 0;
    int week = weeks.count;
    for (const auto& [clock, bound] : row.requirement->exemptUntil) {
        if (isCalendar(clock)) {
            if (!row.item->made)
                return 0;
            const auto made = row.item->made->lastDay();
            const auto ends = clock == ClockName::Days ? addDays(made, bound) : addMonths(made, bound, DayRule::Same);
            week = std::min(week, weeks.lastWeekBy(addDays(ends, -1)) + 1);
            continue;
        }
        if (clock != ClockName::Minutes || !row.item->clock.minutes)
            return 0;
        const auto left = static_cast<double>(bound - row.item->clock.minutes->value());
        int reached = 0;
        while (ahead && reached < week && chanceBetween(*ahead, weeks, UseClock::Minutes, left, -1, reached) <= level)
            ++reached;
        week = ahead ? std::min(week, reached) : week;
    }
    return std::max(week, 0);
}

RidingRow ridingOf(const DueRow& row, const UseAhead* ahead, const PlanWeeks& weeks, double level) {
    RidingRow riding{&row, endOfExemption(row, ahead, weeks, level)};
    for (std::size_t nth = 0; nth < row.requirement->limits.size(); ++nth) {
        const auto& limit = row.requirement->limits[nth];
        if (limit.clock != ClockName::Inspections)
            continue;
        riding.every = static_cast<int>(limit.every);
        if (nth < row.state.limits.size())
            if (const auto* reach = row.state.limits[nth].usage())
                riding.next = static_cast<int>(reach->left.value());
    }
    return riding;
}

bool goesWith(const DueRow& riding, const DueRow& row) {
    return riding.item == row.item && std::ranges::any_of(riding.requirement->limits, [&](const Limit& limit) {
               return std::ranges::find(limit.with, row.requirement->id) != limit.with.end();
           });
}

/// Does the one, done, count for the other on the same item?
bool meets(const DueRow& row, const DueRow& other) {
    const auto& by = other.requirement->satisfiedBy;
    return std::ranges::find(by, row.requirement->id) != by.end();
}

/// Weeks in which an envelope could not have dried: days before them are kept free for flying.
std::vector<bool> weeksNotDry(const Registration& balloon, const PlanGround& ground, int from) {
    std::vector<bool> shut(static_cast<std::size_t>(ground.weeks.count), false);
    if (ground.stations.dryingDays > 0)
        for (int week = from; week < ground.weeks.count; ++week) {
            const auto monday = ground.weeks.monday(week);
            shut[static_cast<std::size_t>(week)] =
                ground.stations.isFlying(balloon, addDays(monday, -ground.stations.dryingDays), addDays(monday, -1));
        }
    return shut;
}

void shutIn(VisitTask& task, const std::vector<bool>& shut) {
    if (std::ranges::find(shut, true) == shut.end())
        return;
    if (task.shut.empty())
        task.shut.assign(shut.size(), false);
    for (std::size_t week = 0; week < shut.size(); ++week)
        if (shut[week])
            task.shut[week] = true;
}

std::uint32_t stationsFor(const Stations& stations, const RequirementId& requirement) {
    std::uint32_t doing = 0;
    for (std::size_t station = 0; station < stations.stations.size(); ++station)
        if (stations.stations[station].carriesOut(requirement))
            doing |= std::uint32_t{1} << station;
    return doing;
}

void layStops(VisitQuestion& question, const Registration& balloon, const PlanGround& ground) {
    for (int week = 0; week < ground.weeks.count; ++week) {
        const auto monday = ground.weeks.monday(week);
        const auto friday = ground.weeks.signedOn(week);
        if (ground.stations.isFlying(balloon, monday, friday))
            continue;
        const auto isOfWeek = [&](const VisitPin& pin) {
            return pin.balloon == balloon && ground.weeks.weekOf(pin.day) == week;
        };
        bool isPinned = false;
        for (std::size_t station = 0; station < ground.stations.stations.size(); ++station) {
            const auto& its = ground.stations.stations[station];
            bool goes = its.isOpen(monday, friday);
            for (const auto& pin : ground.pins)
                if (isOfWeek(pin)) {
                    const bool isHere = !pin.station || *pin.station == its.name;
                    goes = goes && isHere != pin.forbids;
                    isPinned = isPinned || !pin.forbids;
                }
            if (goes)
                question.stops.push_back({week, station, its.visit + its.transport});
        }
        if (isPinned)
            question.pins.push_back(week);
    }
}

}

bool rides(const DueRow& row) {
    return std::ranges::any_of(row.requirement->limits,
                               [](const Limit& limit) { return limit.clock == ClockName::Inspections; });
}

bool isPastDue(const DueRow& row) {
    switch (row.state.standing) {
    case Standing::Spent:
    case Standing::Lapsed:
    case Standing::Unproven:
    case Standing::Tolerance:
        return true;
    default:
        return false;
    }
}

bool isPlannedFor(const DueRow& row) {
    return row.requirement->force == Force::Mandatory && isRequired(row.state) &&
           row.state.standing != Standing::Closed && (isPastDue(row) || !row.state.limits.empty());
}

BalloonWork workOf(const Registration& balloon, const std::vector<const DueRow*>& rows, ItemsAhead& items,
                   const PlanGround& ground, double level) {
    BalloonWork work{balloon, {ground.weeks.count, {}, {}, 0, {}}, {}};
    double dearest = 1;
    for (const auto& station : ground.stations.stations)
        dearest = std::max(dearest, station.visit + station.transport);
    for (const auto* row : rows) {
        if (!isPlannedFor(*row) || row->state.because == Because::Exempt || (rides(*row) && !isPastDue(*row)))
            continue;
        const auto* ahead = items.of(*row->item);
        auto made = taskAhead(*row, ahead, ground.weeks, level);
        // What is not due within the time is never done in it, unless it counts for something else.
        const auto isMet = [&](const DueRow* other) { return other->item == row->item && meets(*row, *other); };
        if (made.task.dues.front().latest >= ground.weeks.count && std::ranges::none_of(rows, isMet))
            continue;
        BalloonTask task{row, ahead, std::move(made.dues), {}};
        const auto& id = row->requirement->id;
        made.task.cost = ground.stations.costOf(id, row->item->kind);
        dearest = std::max(dearest, made.task.cost);
        made.task.stations = stationsFor(ground.stations, id);
        if (isFabricTest(*row))
            shutIn(made.task, weeksNotDry(balloon, ground, 0));
        for (const auto* other : rows)
            if (isPlannedFor(*other) && rides(*other) && goesWith(*other, *row)) {
                auto riding = ridingOf(*other, ahead, ground.weeks, level);
                made.task.cost += ground.stations.costOf(other->requirement->id, other->item->kind);
                made.task.stations &= stationsFor(ground.stations, other->requirement->id);
                if (isFabricTest(*other))
                    shutIn(made.task, weeksNotDry(balloon, ground, riding.from));
                task.rides.push_back(riding);
            }
        work.question.tasks.push_back(std::move(made.task));
        work.tasks.push_back(std::move(task));
    }
    for (std::size_t a = 0; a < work.tasks.size(); ++a)
        for (std::size_t b = 0; b < work.tasks.size(); ++b)
            if (a != b && work.tasks[a].row->item == work.tasks[b].row->item &&
                meets(*work.tasks[a].row, *work.tasks[b].row))
                work.question.tasks[a].implies.push_back(b);
    // Dearer than all that could be done instead, so that nothing is late where it can be helped.
    work.question.lateWeek = 100 * dearest;
    layStops(work.question, balloon, ground);
    return work;
}

double chanceOfLapse(const BalloonWork& work, const VisitPlan& plan, const PlanWeeks& weeks) {
    std::map<std::pair<int, int>, double> spans;
    for (std::size_t task = 0; task < work.tasks.size(); ++task) {
        const auto& its = work.tasks[task];
        if (!its.ahead || isPastDue(*its.row))
            continue;
        const auto uses = useLimitsOf(*its.row);
        if (uses.empty() || its.row->requirement->whichever == Whichever::Last)
            continue;
        int doneIn = -1;
        const auto add = [&](int until) {
            auto& span = spans[{doneIn, until}];
            for (const auto& use : uses)
                span = std::max(span, chanceBetween(*its.ahead, weeks, use.clock, doneIn < 0 ? use.left : use.every,
                                                    doneIn, until));
            doneIn = until;
        };
        for (const auto& visit : plan.visits) {
            const bool isDone = std::ranges::any_of(visit.covers, [&](std::size_t covered) {
                const auto& implied = work.question.tasks[covered].implies;
                return covered == task || std::ranges::find(implied, task) != implied.end();
            });
            if (isDone)
                add(visit.week);
        }
        add(weeks.count);
    }
    double chance = 0;
    for (const auto& [span, its] : spans)
        chance += its;
    return chance;
}

}
