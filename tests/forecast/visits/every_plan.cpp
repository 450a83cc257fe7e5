// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/visits/every_plan.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

namespace crownring::testing {

namespace {

using Dues = std::vector<std::size_t>;

/// What doing these tasks in that week costs, with what counts for them; moves the dues on.
double doThem(const VisitQuestion& question, const std::vector<std::size_t>& done, int week, Dues& dues) {
    double cost = 0;
    std::vector<bool> isMoved(dues.size(), false);
    for (const auto task : done) {
        const auto& its = question.tasks[task];
        const auto& due = its.dues[dues[task]];
        isMoved[task] = true;
        for (const auto other : its.implies)
            isMoved[other] = true;
        if (due.keeps && due.keepsFrom <= week && week <= due.latest)
            continue;
        const double gone = 1 - (its.after[static_cast<std::size_t>(week)].life - due.life);
        cost += its.cost * std::min(std::max(gone, 0.0), 1.0);
    }
    for (std::size_t task = 0; task < dues.size(); ++task) {
        if (!isMoved[task])
            continue;
        const auto& its = question.tasks[task];
        const auto& due = its.dues[dues[task]];
        cost += question.lateWeek * std::max(0, week - due.latest);
        dues[task] = due.keeps && due.keepsFrom <= week && week <= due.latest
                         ? *due.keeps
                         : its.after[static_cast<std::size_t>(week)].due;
    }
    return cost;
}

double atTheEnd(const VisitQuestion& question, const Dues& dues) {
    double cost = 0;
    for (std::size_t task = 0; task < dues.size(); ++task)
        cost += question.lateWeek * std::max(0, question.weeks - question.tasks[task].dues[dues[task]].latest);
    return cost;
}

bool isPinned(const VisitQuestion& question, int week) {
    return std::ranges::find(question.pins, week) != question.pins.end();
}

void goThrough(const VisitQuestion& question, int week, const Dues& dues, double cost, std::vector<int>& stops,
               WeighedByStops& weighed) {
    if (week == question.weeks) {
        const auto [known, isNew] = weighed.try_emplace(stops, std::numeric_limits<double>::infinity());
        known->second = std::min(known->second, cost + atTheEnd(question, dues));
        return;
    }
    stops.push_back(-1);
    if (!isPinned(question, week))
        goThrough(question, week + 1, dues, cost, stops, weighed);
    for (std::size_t stop = 0; stop < question.stops.size(); ++stop) {
        if (question.stops[stop].week != week)
            continue;
        stops.back() = static_cast<int>(stop);
        for (unsigned chosen = 0; chosen < 1U << dues.size(); ++chosen) {
            std::vector<std::size_t> done;
            bool can = true;
            for (std::size_t task = 0; task < dues.size(); ++task)
                if ((chosen >> task & 1U) != 0) {
                    done.push_back(task);
                    can = can && question.tasks[task].isDoneAt(question.stops[stop]);
                }
            if (!can)
                continue;
            auto after = dues;
            const double now = doThem(question, done, week, after);
            goThrough(question, week + 1, after, cost + question.stops[stop].cost + now, stops, weighed);
        }
    }
    stops.pop_back();
}

}

WeighedByStops everyPlan(const VisitQuestion& question) {
    WeighedByStops weighed;
    std::vector<int> stops;
    goThrough(question, 0, Dues(question.tasks.size(), 0), 0, stops, weighed);
    return weighed;
}

std::optional<double> leastOf(const VisitQuestion& question) {
    std::optional<double> least;
    for (const auto& [stops, cost] : everyPlan(question))
        least = std::min(least.value_or(cost), cost);
    return least;
}

std::optional<double> leastOf(const FleetQuestion& question) {
    std::vector<WeighedByStops> plans;
    for (const auto& balloon : question.balloons)
        plans.push_back(everyPlan(balloon));
    auto atOnce = question.atOnce;
    std::optional<double> least;
    const std::function<void(std::size_t, double)> choose = [&](std::size_t balloon, double cost) {
        if (least && cost >= *least)
            return;
        if (balloon == plans.size()) {
            least = cost;
            return;
        }
        for (const auto& each : plans[balloon]) {
            const auto& stops = each.first;
            const double own = each.second;
            bool fits = true;
            const auto take = [&](int by) {
                for (const auto stop : stops)
                    if (stop >= 0) {
                        const auto& its = question.balloons[balloon].stops[static_cast<std::size_t>(stop)];
                        auto& places = atOnce[its.station][static_cast<std::size_t>(its.week)];
                        places -= by;
                        fits = fits && places >= 0;
                    }
            };
            take(1);
            if (fits)
                choose(balloon + 1, cost + own);
            take(-1);
        }
    };
    choose(0, 0);
    return least;
}

std::optional<double> walked(const VisitPlan& plan, const VisitQuestion& question) {
    Dues dues(question.tasks.size(), 0);
    double cost = 0;
    double weighed = 0;
    int week = -1;
    for (const auto& visit : plan.visits) {
        const auto stop = std::ranges::find_if(
            question.stops, [&](const Stop& each) { return each.week == visit.week && each.station == visit.station; });
        if (stop == question.stops.end() || visit.week <= week)
            return std::nullopt;
        week = visit.week;
        for (const auto task : visit.covers)
            if (!question.tasks[task].isDoneAt(*stop))
                return std::nullopt;
        weighed += stop->cost + doThem(question, visit.covers, week, dues);
        cost += visit.cost;
    }
    weighed += atTheEnd(question, dues);
    for (const auto pin : question.pins)
        if (std::ranges::find(plan.visits, pin, &PlannedVisit::week) == plan.visits.end())
            return std::nullopt;
    const auto isNear = [](double a, double b) { return std::abs(a - b) < 1e-6 * std::max(1.0, std::abs(b)); };
    return isNear(cost, plan.cost) && isNear(plan.weighed(question), weighed) ? std::optional(weighed) : std::nullopt;
}

}
