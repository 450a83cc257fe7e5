// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/visits/visit_plan.h"

#include <algorithm>
#include <bit>

namespace crownring {

VisitSearch::VisitSearch(const VisitQuestion& question) : m_question(question), m_groups(groupsOf(question)) {
    for (const auto& stop : question.stops) {
        std::uint64_t done = 0;
        for (std::size_t group = 0; group < m_groups.size(); ++group)
            if (taskOf(group).isDoneAt(stop))
                done |= bit(group);
        m_doneAt.push_back(done);
    }
    for (std::size_t group = 0; group < m_groups.size(); ++group)
        m_steps.push_back(stepsOf(group));
    const std::vector<double> nothing(question.stops.size(), 0.0);
    for (std::size_t group = 0; group < m_groups.size(); ++group)
        m_work.push_back(aloneOf(group, nothing));
    m_served = m_doneAt;
    for (std::size_t stop = 0; stop < m_served.size(); ++stop)
        for (std::size_t group = 0; group < m_groups.size(); ++group)
            if (has(m_doneAt[stop], group))
                for (const auto other : m_groups[group].implies)
                    m_served[stop] |= bit(other);
    m_shares.assign(m_groups.size(), std::vector<double>(question.stops.size(), 0.0));
    for (std::size_t stop = 0; stop < m_served.size(); ++stop)
        for (std::size_t group = 0; group < m_groups.size(); ++group)
            if (has(m_served[stop], group))
                m_shares[group][stop] = 1.0 / std::popcount(m_served[stop]);
    const auto isSameWeek = [](const PlannedVisit& a, const PlannedVisit& b) { return a.week == b.week; };
    if (auto plan = planWhenDue(question);
        question.pins.empty() && std::ranges::adjacent_find(plan.visits, isSameWeek) == plan.visits.end())
        m_whenDue = std::move(plan);
}

VisitSearch::Steps VisitSearch::stepsOf(std::size_t group) const {
    const auto& task = taskOf(group);
    const auto late = m_question.lateWeek * static_cast<double>(m_groups[group].tasks.size());
    Steps steps;
    for (const auto& due : task.dues)
        if (due.latest < m_question.weeks)
            ++steps.within;
    std::size_t place = 0;
    for (std::size_t due = 0; due < task.dues.size(); ++due) {
        const bool isWithin = task.dues[due].latest < m_question.weeks;
        steps.places.push_back(isWithin ? place++ : steps.within);
        if (isWithin)
            steps.end.push_back(late * task.lateness(due, m_question.weeks));
    }
    steps.doing.resize(static_cast<std::size_t>(m_question.weeks) * steps.within);
    for (std::size_t due = 0; due < task.dues.size(); ++due)
        for (int week = 0; week < m_question.weeks && steps.places[due] < steps.within; ++week)
            steps.doing[static_cast<std::size_t>(week) * steps.within + steps.places[due]] = {
                late * task.lateness(due, week), m_groups[group].cost * task.wasted(due, week),
                steps.places[task.next(due, week)]};
    return steps;
}

VisitSearch::Alone VisitSearch::aloneOf(std::size_t group, std::span<const double> stopCosts) const {
    const auto& its = m_steps[group];
    const auto width = its.within;
    const auto end = static_cast<std::size_t>(m_question.weeks);
    std::uint64_t counting = 0;
    for (const auto by : m_groups[group].impliedBy)
        counting |= bit(by);
    Alone alone{width, std::vector<double>((end + 1) * width)};
    std::ranges::copy(its.end, alone.least.begin() + static_cast<std::ptrdiff_t>(end * width));
    auto stop = m_question.stops.size();
    for (auto week = m_question.weeks - 1; week >= 0; --week) {
        double own = unreached;
        double counted = unreached; // with what counts for it
        for (; stop > 0 && m_question.stops[stop - 1].week == week; --stop) {
            if (has(m_doneAt[stop - 1], group))
                own = std::min(own, stopCosts[stop - 1]);
            if ((m_doneAt[stop - 1] & counting) != 0)
                counted = std::min(counted, stopCosts[stop - 1]);
        }
        const auto row = static_cast<std::size_t>(week) * width;
        for (std::size_t place = 0; place < width; ++place) {
            const auto after = row + width;
            auto least = alone.least[after + place];
            const auto& doing = its.doing[row + place];
            const double rest = doing.late + (doing.next < width ? alone.least[after + doing.next] : 0);
            least = std::min({least, own + doing.work + rest, counted + rest});
            alone.least[row + place] = least;
        }
    }
    return alone;
}

std::vector<std::size_t> VisitSearch::stopsOf(std::size_t group, std::span<const double> stopCosts,
                                              const Alone& alone) const {
    const auto& its = m_steps[group];
    std::uint64_t counting = 0;
    for (const auto by : m_groups[group].impliedBy)
        counting |= bit(by);
    std::vector<std::size_t> stops;
    auto place = its.places.front();
    std::size_t stop = 0;
    for (int week = 0; week < m_question.weeks && place < its.within; ++week) {
        while (stop < m_question.stops.size() && m_question.stops[stop].week < week)
            ++stop;
        const double least = alone.from(week, place);
        if (least == alone.from(week + 1, place))
            continue;
        const auto& doing = its.doing[static_cast<std::size_t>(week) * its.within + place];
        const double rest = doing.late + alone.from(week + 1, doing.next);
        for (auto at = stop; at < m_question.stops.size() && m_question.stops[at].week == week; ++at) {
            const double work = (m_doneAt[at] & counting) != 0 ? 0 : doing.work;
            if (!has(m_served[at], group) || stopCosts[at] + work + rest > least * (1 + 1e-12))
                continue;
            stops.push_back(at);
            place = doing.next;
            break;
        }
    }
    return stops;
}

std::vector<VisitSearch::Alone> VisitSearch::split(std::span<const double> stopCosts, double below) {
    const int mostSteps = m_isSplit ? 12 : 60;
    m_isSplit = true;
    constexpr int patience = 4;
    const auto count = stopCosts.size();
    std::vector<std::vector<double>> parts(m_groups.size(), std::vector<double>(count, 0.0));
    for (std::size_t group = 0; group < m_groups.size(); ++group)
        for (std::size_t stop = 0; stop < count; ++stop)
            parts[group][stop] = stopCosts[stop] < unreached ? m_shares[group][stop] * stopCosts[stop] : unreached;
    std::vector<Alone> best;
    double most = -1;
    double stepsize = 1;
    int sinceBest = 0;
    for (int step = 0; step < mostSteps; ++step) {
        std::vector<Alone> tables;
        double bound = 0;
        std::vector<int> goers(count, 0);
        std::vector<std::vector<std::size_t>> goes;
        for (std::size_t group = 0; group < m_groups.size(); ++group) {
            tables.push_back(aloneOf(group, parts[group]));
            bound += tables.back().from(0, m_steps[group].places.front());
            goes.push_back(stopsOf(group, parts[group], tables.back()));
            for (const auto stop : goes.back())
                ++goers[stop];
        }
        if (bound > most + 1e-9 * std::max(1.0, bound)) {
            most = bound;
            best = std::move(tables);
            sinceBest = 0;
            for (std::size_t group = 0; group < m_groups.size(); ++group)
                for (std::size_t stop = 0; stop < count; ++stop)
                    if (stopCosts[stop] > 0 && stopCosts[stop] < unreached)
                        m_shares[group][stop] = parts[group][stop] / stopCosts[stop];
        } else if (++sinceBest % patience == 0) {
            stepsize /= 2;
        }
        if (most >= below || stepsize < 0.01)
            break;
        // More for who goes there, less for who does not.
        double length = 0;
        for (std::size_t group = 0; group < m_groups.size(); ++group)
            for (const auto stop : goes[group])
                length += 1 - static_cast<double>(goers[stop]) / std::popcount(m_served[stop]);
        if (length < 1e-9)
            break;
        const double target = below < unreached ? std::min(below, 1.3 * most + 1) : 1.3 * most + 1;
        const double by = stepsize * std::max(target - bound, 0.01 * most) / length;
        for (std::size_t group = 0; group < m_groups.size(); ++group)
            for (const auto stop : goes[group])
                parts[group][stop] += by;
        for (std::size_t stop = 0; stop < count; ++stop) {
            if (goers[stop] == 0)
                continue;
            double sum = 0;
            const double less = by * goers[stop] / std::popcount(m_served[stop]);
            for (std::size_t group = 0; group < m_groups.size(); ++group)
                if (has(m_served[stop], group)) {
                    parts[group][stop] = std::max(0.0, parts[group][stop] - less);
                    sum += parts[group][stop];
                }
            for (std::size_t group = 0; sum > 0 && group < m_groups.size(); ++group)
                parts[group][stop] *= stopCosts[stop] / sum;
        }
    }
    return best;
}

}
