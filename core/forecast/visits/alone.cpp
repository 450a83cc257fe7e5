// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/visits/alone.h"

#include <algorithm>
#include <numeric>

namespace crownring {

/// Of the stops of a week the cheapest of each way to be served.
struct Alone::Costs {
    double first = unreached;
    double firstCounted = unreached;
    double then = unreached;
    double thenCounted = unreached;
};

Alone::Alone(const VisitQuestion& question, std::span<const TaskGroup> groups, std::span<const std::uint64_t> doneAt,
             std::size_t group, std::optional<std::size_t> counted)
    : m_question(&question), m_first(groupOf(groups[group], group, counted.has_value())) {
    if (counted)
        m_then = groupOf(groups[*counted], *counted, false);
    const auto countingFor = [&](std::size_t its) {
        std::uint64_t others = 0;
        for (const auto by : groups[its].impliedBy)
            if (by != group)
                others |= bit(by);
        return others;
    };
    for (const auto done : doneAt) {
        std::uint8_t serves = has(done, group) ? First : 0;
        serves |= (done & countingFor(group)) != 0 ? FirstCounted : 0;
        if (counted) {
            serves |= has(done, *counted) ? Then : 0;
            serves |= (done & countingFor(*counted)) != 0 ? ThenCounted : 0;
        }
        m_serves.push_back(serves);
    }
    const auto taskOf = [&](std::size_t its) { return &question.tasks[groups[its].tasks.front()]; };
    layPlaces(*taskOf(group), counted ? taskOf(*counted) : nullptr);
}

Alone::Group Alone::groupOf(const TaskGroup& tasks, std::size_t group, bool isEveryDueApart) const {
    const auto& task = m_question->tasks[tasks.tasks.front()];
    const auto late = m_question->lateWeek * static_cast<double>(tasks.tasks.size());
    Group its;
    its.group = group;
    const auto isApart = [&](const VisitTask::Due& due) { return isEveryDueApart || due.latest < m_question->weeks; };
    its.beyond = static_cast<std::size_t>(std::ranges::count_if(task.dues, isApart));
    its.width = its.beyond + 1;
    for (std::size_t place = 0; const auto& due : task.dues)
        its.places.push_back(isApart(due) ? place++ : its.beyond);
    its.end.resize(its.width);
    its.doing.assign(static_cast<std::size_t>(m_question->weeks) * its.width, {0, 0, its.beyond});
    for (std::size_t due = 0; due < task.dues.size(); ++due) {
        const auto place = its.places[due];
        if (place == its.beyond)
            continue;
        its.end[place] = late * task.lateness(due, m_question->weeks);
        for (int week = 0; week < m_question->weeks; ++week)
            its.doing[static_cast<std::size_t>(week) * its.width + place] = {
                late * task.lateness(due, week), tasks.cost * task.wasted(due, week), its.places[task.next(due, week)]};
    }
    return its;
}

/// Only what can be reached by a week is told of it: by due dates as they follow, and by places, where what is not
/// asked within the time stays so.
void Alone::layPlaces(const VisitTask& task, const VisitTask* thenTask) {
    const auto width = m_then ? m_then->width : 1;
    m_places.assign(m_first.width * width, nowhere);
    const auto reach = [&](std::size_t first, std::size_t then) {
        auto& place = m_places[first * width + then];
        if (place == nowhere && (first != m_first.beyond || (m_then && then != m_then->beyond))) {
            place = m_pairs.size();
            m_pairs.push_back({first, then});
        }
    };
    const auto thenDues = thenTask ? thenTask->dues.size() : 1;
    std::vector<Pair> dues;
    std::vector<bool> isKnown(task.dues.size() * thenDues);
    const auto run = [&](std::size_t first, std::size_t then) {
        if (isKnown[first * thenDues + then])
            return;
        isKnown[first * thenDues + then] = true;
        dues.push_back({first, then});
        reach(m_first.places[first], m_then ? m_then->places[then] : 0);
    };
    run(0, 0);
    std::size_t row = 0;
    std::size_t stop = 0;
    for (int week = 0; week < m_question->weeks; ++week) {
        m_rows.push_back(row);
        row += m_pairs.size();
        std::uint8_t serves = 0;
        for (; stop < m_serves.size() && m_question->stops[stop].week == week; ++stop)
            serves |= m_serves[stop];
        const bool isFirst = (serves & (First | FirstCounted)) != 0;
        const bool isThen = (serves & (Then | ThenCounted)) != 0;
        for (std::size_t nth = 0, count = m_pairs.size(); nth < count; ++nth) {
            const auto [first, then] = m_pairs[nth];
            const auto thenNext = m_then ? m_then->at(week, then).next : 0;
            if (isFirst)
                reach(m_first.at(week, first).next, thenNext);
            if (isThen)
                reach(first, thenNext);
        }
        for (std::size_t nth = 0, count = dues.size(); nth < count; ++nth) {
            const auto [first, then] = dues[nth];
            const auto thenNext = thenTask ? thenTask->next(then, week) : 0;
            if (isFirst)
                run(task.next(first, week), thenNext);
            if (isThen)
                run(first, thenNext);
        }
    }
    m_rows.push_back(row);
    m_rows.push_back(row + m_pairs.size());
}

/// @param stop one after those of the week; then the first of them
Alone::Costs Alone::costsIn(int week, std::size_t& stop, std::span<const double> stopCosts) const {
    Costs costs;
    for (; stop > 0 && m_question->stops[stop - 1].week == week; --stop) {
        const auto serves = m_serves[stop - 1];
        const auto cost = stopCosts[stop - 1];
        const auto take = [&](Serving how, double& least) {
            if ((serves & how) != 0)
                least = std::min(least, cost);
        };
        take(First, costs.first);
        take(FirstCounted, costs.firstCounted);
        take(Then, costs.then);
        take(ThenCounted, costs.thenCounted);
    }
    return costs;
}

Alone::Least Alone::leastAt(std::span<const double> stopCosts) const {
    Least least(m_rows.back());
    for (std::size_t place = 0; place < m_pairs.size(); ++place)
        least[m_rows[static_cast<std::size_t>(m_question->weeks)] + place] =
            m_first.end[m_pairs[place].first] + (m_then ? m_then->end[m_pairs[place].then] : 0);
    auto stop = m_question->stops.size();
    for (auto week = m_question->weeks - 1; week >= 0; --week) {
        const auto costs = costsIn(week, stop, stopCosts);
        const auto row = m_rows[static_cast<std::size_t>(week)];
        const auto after = m_rows[static_cast<std::size_t>(week) + 1];
        for (std::size_t place = 0; row + place < after; ++place) {
            const auto [first, then] = m_pairs[place];
            const auto& its = m_first.at(week, first);
            auto lowest = least[after + place];
            if (!m_then) {
                const double rest = its.late + valueAt(least, week + 1, its.next, 0);
                lowest = std::min({lowest, costs.first + its.work + rest, costs.firstCounted + rest});
            } else {
                const auto& next = m_then->at(week, then);
                const double both = its.late + next.late + valueAt(least, week + 1, its.next, next.next);
                const double one = next.late + valueAt(least, week + 1, first, next.next);
                lowest = std::min({lowest, costs.first + its.work + both, costs.firstCounted + both,
                                   costs.then + next.work + one, costs.thenCounted + one});
            }
            least[row + place] = lowest;
        }
    }
    return least;
}

std::vector<std::size_t> Alone::stopsOf(std::span<const double> stopCosts, const Least& least) const {
    std::vector<std::size_t> stops;
    auto first = m_first.places.front();
    auto then = m_then ? m_then->places.front() : 0;
    std::size_t stop = 0;
    for (int week = 0; week < m_question->weeks && placeOf(first, then) != nowhere; ++week) {
        while (stop < m_question->stops.size() && m_question->stops[stop].week < week)
            ++stop;
        const double value = valueAt(least, week, first, then);
        if (value == valueAt(least, week + 1, first, then))
            continue;
        const auto& its = m_first.at(week, first);
        const Doing next = m_then ? m_then->at(week, then) : Doing{};
        const double both = its.late + next.late + valueAt(least, week + 1, its.next, next.next);
        const double one = m_then ? next.late + valueAt(least, week + 1, first, next.next) : unreached;
        for (auto at = stop; at < m_question->stops.size() && m_question->stops[at].week == week; ++at) {
            const auto costs = [&](Serving how, double rest) {
                return (m_serves[at] & how) != 0 && stopCosts[at] + rest <= value * (1 + 1e-12);
            };
            const bool isFirst = costs(First, its.work + both) || costs(FirstCounted, both);
            if (!isFirst && !costs(Then, next.work + one) && !costs(ThenCounted, one))
                continue;
            stops.push_back(at);
            first = isFirst ? its.next : first;
            then = m_then ? next.next : 0;
            break;
        }
    }
    return stops;
}

}
