// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/visits/alike_tasks.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace crownring {

namespace {

bool isAlike(const VisitTask& a, const VisitTask& b) {
    const auto dueOf = [](const VisitTask::Due& due) {
        return std::tie(due.latest, due.life, due.keeps, due.keepsFrom);
    };
    const auto afterOf = [](const VisitTask::After& after) { return std::tie(after.due, after.life); };
    return a.stations == b.stations && a.shut == b.shut && std::ranges::equal(a.dues, b.dues, {}, dueOf, dueOf) &&
           std::ranges::equal(a.after, b.after, {}, afterOf, afterOf);
}

/// The group of each task, split until all of a group imply, and are implied by, the same groups.
std::vector<std::size_t> placesOf(const VisitQuestion& question) {
    const auto& tasks = question.tasks;
    std::vector<std::size_t> place(tasks.size());
    // Whether one of that place counts for it, or it for them: then they are not done together.
    const auto isTold = [&](std::size_t at, std::size_t task) {
        const auto counts = [&](std::size_t a, std::size_t b) {
            return std::ranges::find(tasks[a].implies, b) != tasks[a].implies.end();
        };
        for (std::size_t before = 0; before < task; ++before)
            if (place[before] == at && (counts(before, task) || counts(task, before)))
                return true;
        return false;
    };
    for (std::size_t task = 0; task < tasks.size(); ++task) {
        place[task] = task;
        for (std::size_t before = 0; before < task && place[task] == task; ++before)
            if (isAlike(tasks[before], tasks[task]) && !isTold(place[before], task))
                place[task] = place[before];
    }
    for (std::size_t count = 0;;) {
        using Sight = std::tuple<std::size_t, std::vector<std::size_t>, std::vector<std::size_t>>;
        std::vector<Sight> seen(tasks.size());
        for (std::size_t task = 0; task < tasks.size(); ++task) {
            std::get<0>(seen[task]) = place[task];
            for (const auto other : tasks[task].implies) {
                std::get<1>(seen[task]).push_back(place[other]);
                std::get<2>(seen[other]).push_back(place[task]);
            }
        }
        std::map<Sight, std::size_t> groups;
        for (std::size_t task = 0; task < tasks.size(); ++task) {
            std::ranges::sort(std::get<1>(seen[task]));
            std::ranges::sort(std::get<2>(seen[task]));
            place[task] = groups.try_emplace(seen[task], task).first->second;
        }
        if (groups.size() == count)
            return place;
        count = groups.size();
    }
}

bool keepsPattern(const VisitTask& task) {
    return std::ranges::any_of(task.dues, [](const auto& due) { return due.keeps.has_value(); });
}

/// Whether in some week it buys more than a whole interval, or less than nothing: a week later throws no less away
/// then.
bool isUneven(const VisitTask& task) {
    std::vector<std::size_t> from(task.dues.size(), 0); ///< of each due date the first week in which it may run
    for (auto week = task.after.size(); week-- > 0;)
        from[task.after[week].due] = week + 1;
    for (std::size_t due = 0; due < task.dues.size(); ++due)
        for (auto week = due == 0 ? 0 : from[due]; week < task.after.size(); ++week) {
            const double bought = task.after[week].life - task.dues[due].life;
            if (static_cast<int>(week) <= task.dues[due].latest && (bought < -1e-9 || bought > 1 + 1e-9))
                return true;
        }
    return false;
}

}

std::vector<TaskGroup> groupsOf(const VisitQuestion& question) {
    const auto& tasks = question.tasks;
    const auto place = placesOf(question);
    std::vector<TaskGroup> groups;
    std::map<std::size_t, std::size_t> ofPlace;
    for (std::size_t task = 0; task < tasks.size(); ++task) {
        const auto [known, isNew] = ofPlace.try_emplace(place[task], groups.size());
        if (isNew)
            groups.emplace_back();
        groups[known->second].tasks.push_back(task);
        groups[known->second].cost += tasks[task].cost;
    }
    for (std::size_t group = 0; group < groups.size(); ++group) {
        const auto& first = tasks[groups[group].tasks.front()];
        for (const auto task : first.implies) {
            const auto other = ofPlace.at(place[task]);
            if (other == group || std::ranges::find(groups[group].implies, other) != groups[group].implies.end())
                continue;
            groups[group].implies.push_back(other);
            groups[other].impliedBy.push_back(group);
        }
        groups[group].isUneven = keepsPattern(first) || isUneven(first);
    }
    // Last, since whether something counts for a group is told by those behind it, too.
    const auto isLike = [&](std::size_t a, std::size_t b) {
        const auto& one = tasks[groups[a].tasks.front()];
        const auto& other = tasks[groups[b].tasks.front()];
        return one.stations == other.stations && one.shut == other.shut;
    };
    const auto isPlain = [&](std::size_t group) {
        return !groups[group].mayPayEarly() && groups[group].impliedBy.empty();
    };
    for (std::size_t group = 0; group < groups.size(); ++group) {
        groups[group].sort = groups[group].roughSort = group;
        for (auto before = group; before-- > 0;) {
            if (!isLike(before, group))
                continue;
            if (isPlain(before) && isPlain(group))
                groups[group].sort = groups[before].sort;
            if (!groups[before].isUneven && !groups[group].isUneven &&
                groups[before].implies.empty() == groups[group].implies.empty())
                groups[group].roughSort = groups[before].roughSort;
        }
    }
    return groups;
}

}
