// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/visits/made_questions.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace crownring::testing {

namespace {

int below(Draws& draws, int end) { return static_cast<int>(draws.uniform() * end); }
constexpr double late = 1000;
constexpr double lateOfLarge = 100'000;

VisitTask smallTask(Draws& draws, int weeks) {
    const int latest = below(draws, weeks + 2) - 1;
    const double cost = below(draws, 10);
    if (below(draws, 3) == 0)
        return keptWithin(1 + below(draws, 2), latest, 1 + below(draws, weeks), weeks, cost);
    // Ends that never fall, and life that goes by unevenly.
    std::vector<int> ends;
    std::vector<double> life{0};
    for (int week = 0, end = 0; week < weeks; ++week) {
        end = std::max(end, week + 1 + below(draws, weeks));
        ends.push_back(end);
    }
    for (int week = 0; week < 3 * weeks; ++week)
        life.push_back(life.back() + below(draws, 4));
    const auto lifeAt = [life](int week) {
        return life[static_cast<std::size_t>(std::clamp(week, 0, static_cast<int>(life.size()) - 1))];
    };
    double longest = 1;
    for (int week = 0; week < weeks; ++week)
        longest = std::max(longest, lifeAt(ends[static_cast<std::size_t>(week)]) - lifeAt(week));
    return counted({latest, [ends](int week) { return ends[static_cast<std::size_t>(week)]; },
                    [lifeAt, longest](int week) { return lifeAt(week) / longest; }, cost},
                   weeks);
}

}

VisitTask counted(const MadeTask& made, int weeks) {
    VisitTask task;
    task.cost = made.cost;
    task.dues.push_back({made.latest, made.life(made.latest)});
    std::map<int, std::size_t> known;
    for (int week = 0; week < weeks; ++week) {
        const int end = made.end(week);
        const auto [due, isNew] = known.try_emplace(end, task.dues.size());
        if (isNew)
            task.dues.push_back({end, made.life(end)});
        task.after.push_back({due->second, made.life(end)});
    }
    return task;
}

VisitTask everyWeeks(int latest, int every, int weeks, double cost) {
    return counted({latest, [every](int week) { return week + every; },
                    [every](int week) { return static_cast<double>(week) / every; }, cost},
                   weeks);
}

VisitTask keptWithin(int window, int latest, int every, int weeks, double cost) {
    auto task = everyWeeks(latest, every, weeks, cost);
    for (std::size_t due = 0; due < task.dues.size(); ++due) {
        const auto its = task.dues[due];
        if (its.latest >= weeks)
            continue;
        const auto next = std::ranges::find(task.dues, its.latest + every, &VisitTask::Due::latest);
        task.dues[due].keeps = static_cast<std::size_t>(next - task.dues.begin());
        task.dues[due].keepsFrom = its.latest - window;
        if (next == task.dues.end())
            task.dues.push_back({its.latest + every, its.life + 1});
    }
    return task;
}

VisitQuestion smallQuestion(Draws& draws, const SmallSize& size) {
    VisitQuestion question{size.weeks, {}, {}, late, {}};
    for (int week = 0; week < size.weeks; ++week)
        for (int station = 0; station < size.stations; ++station)
            if (below(draws, 4) != 0)
                question.stops.push_back({week, static_cast<std::size_t>(station), 1.0 + below(draws, 12)});
    for (int each = 0; each < size.tasks; ++each) {
        auto task = smallTask(draws, size.weeks);
        if (each > 0 && below(draws, 4) == 0) { // as on another item, with work of another price
            task = question.tasks.front();
            task.cost = 1 + below(draws, 5);
            task.implies.clear();
        }
        if (below(draws, 4) == 0)
            task.stations = 1U << below(draws, size.stations);
        if (below(draws, 4) == 0)
            for (int week = 0; week < size.weeks; ++week)
                task.shut.push_back(below(draws, 3) == 0);
        question.tasks.push_back(std::move(task));
    }
    for (std::size_t each = 1; each < question.tasks.size(); ++each) // one way, or both
        for (int way = below(draws, 8); way < 3; way += 2)
            question.tasks[way == 1 ? each : 0].implies.push_back(way == 1 ? 0 : each);
    return question;
}

FleetQuestion smallFleet(Draws& draws, int balloons, const SmallSize& size) {
    FleetQuestion fleet;
    for (int balloon = 0; balloon < balloons; ++balloon)
        fleet.balloons.push_back(smallQuestion(draws, size));
    for (int station = 0; station < size.stations; ++station) {
        fleet.atOnce.emplace_back();
        for (int week = 0; week < size.weeks; ++week)
            fleet.atOnce.back().push_back(1 + below(draws, 2));
    }
    return fleet;
}

FleetQuestion largeFleet(Draws& draws, int balloons, int weeks, int stations) {
    constexpr int year = 52;
    constexpr int summer = 20; // counted from the first week; the time begins in December
    constexpr int summerEnds = 38;
    FleetQuestion fleet;
    for (int station = 0; station < stations; ++station) {
        fleet.atOnce.emplace_back();
        for (int week = 0; week < weeks; ++week) {
            const bool isOpen = week % year < summer || week % year >= summerEnds;
            fleet.atOnce.back().push_back(isOpen ? 4 + station % 3 : station == 0 ? 2 : 0);
        }
    }
    for (int balloon = 0; balloon < balloons; ++balloon) {
        VisitQuestion question{weeks, {}, {}, lateOfLarge, {}};
        const bool fliesInSummer = below(draws, 3) != 0;
        std::vector<double> goingThere;
        for (int station = 0; station < stations; ++station)
            goingThere.push_back(150 + 40 * station + below(draws, 300));
        for (int week = 0; week < weeks; ++week) {
            if (fliesInSummer && week % year >= summer + 2 && week % year < summerEnds - 2)
                continue;
            for (std::size_t station = 0; station < goingThere.size(); ++station)
                if (fleet.atOnce[station][static_cast<std::size_t>(week)] > 0)
                    question.stops.push_back({week, station, goingThere[station]});
        }
        const int annual = below(draws, year);
        const int burner = below(draws, 2) == 0 ? annual : below(draws, year);
        question.tasks.push_back(everyWeeks(annual, year, weeks, 350));
        question.tasks.push_back(everyWeeks(annual, year, weeks, 120));
        question.tasks.push_back(everyWeeks(burner, year, weeks, 160));
        question.tasks.push_back(keptWithin(12, below(draws, year), year, weeks, 220));
        for (int cylinder = 0; cylinder < 4; ++cylinder)
            question.tasks.push_back(everyWeeks(below(draws, 520), 520, weeks, 90));
        if (below(draws, 3) == 0) { // 100 hours: sooner used up in summer than in winter
            const int pace = 18 + below(draws, 30);
            question.tasks.push_back(
                counted({below(draws, pace), [pace](int week) { return week + pace + (week % year < summer ? 2 : 0); },
                         [pace](int week) { return week / (pace + 3.0); }, 180},
                        weeks));
            question.tasks.front().implies.push_back(question.tasks.size() - 1);
        }
        fleet.balloons.push_back(std::move(question));
    }
    return fleet;
}

}
