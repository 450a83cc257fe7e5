// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/visits/visit_plan.h"

#include <algorithm>

namespace crownring {

VisitSearch::VisitSearch(const VisitQuestion& question) : m_question(question), m_groups(groupsOf(question)) {
    for (const auto& stop : question.stops) {
        std::uint64_t done = 0;
        for (std::size_t group = 0; group < m_groups.size(); ++group)
            if (taskOf(group).isDoneAt(stop))
                done |= bit(group);
        m_doneAt.push_back(done);
    }
    constexpr std::ptrdiff_t tangled = 3;
    m_isTangled =
        std::ranges::count_if(m_groups, [](const TaskGroup& group) { return !group.implies.empty(); }) >= tangled;
    layAlone();
    m_served = m_doneAt;
    for (std::size_t stop = 0; stop < m_served.size(); ++stop)
        for (std::size_t group = 0; group < m_groups.size(); ++group)
            if (has(m_doneAt[stop], group))
                for (const auto other : m_groups[group].implies)
                    m_served[stop] |= bit(other);
    m_shares.assign(m_alone.size(), std::vector<double>(question.stops.size(), 0.0));
    for (std::size_t stop = 0; stop < m_served.size(); ++stop)
        for (std::size_t nth = 0; nth < m_alone.size(); ++nth)
            if (m_alone[nth].isServedAt(stop))
                m_shares[nth][stop] = 1.0 / servedAt(stop);
    const auto isSameWeek = [](const PlannedVisit& a, const PlannedVisit& b) { return a.week == b.week; };
    if (auto plan = planWhenDue(question);
        question.pins.empty() && std::ranges::adjacent_find(plan.visits, isSameWeek) == plan.visits.end())
        m_whenDue = std::move(plan);
}

/// What counts for others goes with the one of them that costs the most.
void VisitSearch::layAlone() {
    std::uint64_t isLaid = 0;
    const auto lay = [&](std::size_t group, std::optional<std::size_t> counted) {
        m_alone.emplace_back(m_question, m_groups, m_doneAt, group, counted);
        isLaid |= bit(group) | (counted ? bit(*counted) : 0);
    };
    for (std::size_t group = 0; group < m_groups.size(); ++group) {
        std::optional<std::size_t> counted;
        for (const auto other : m_groups[group].implies)
            if (m_groups[group].impliedBy.empty() && !has(isLaid, other) &&
                (!counted || m_groups[other].cost > m_groups[*counted].cost))
                counted = other;
        if (counted)
            lay(group, counted);
    }
    for (std::size_t group = 0; group < m_groups.size(); ++group)
        if (!has(isLaid, group))
            lay(group, std::nullopt);
    const std::vector<double> nothing(m_question.stops.size(), 0.0);
    for (const auto& alone : m_alone)
        m_work.push_back(alone.leastAt(nothing));
}

int VisitSearch::servedAt(std::size_t stop) const {
    return static_cast<int>(std::ranges::count_if(m_alone, [&](const Alone& alone) { return alone.isServedAt(stop); }));
}

std::vector<Alone::Least> VisitSearch::split(std::span<const double> stopCosts, double below) {
    const int mostSteps = m_isTangled ? m_isSplit ? 24 : 120 : m_isSplit ? 12 : 60;
    m_isSplit = true;
    const int patience = m_isTangled ? 8 : 4;
    const auto count = stopCosts.size();
    std::vector<std::vector<double>> parts(m_alone.size(), std::vector<double>(count, 0.0));
    for (std::size_t nth = 0; nth < m_alone.size(); ++nth)
        for (std::size_t stop = 0; stop < count; ++stop)
            parts[nth][stop] = stopCosts[stop] < unreached ? m_shares[nth][stop] * stopCosts[stop] : unreached;
    std::vector<int> served;
    for (std::size_t stop = 0; stop < count; ++stop)
        served.push_back(servedAt(stop));
    const Running first(m_groups.size(), 0);
    std::vector<Alone::Least> best;
    double most = -1;
    double stepsize = 1;
    int sinceBest = 0;
    for (int step = 0; step < mostSteps; ++step) {
        std::vector<Alone::Least> tables;
        double bound = 0;
        std::vector<int> goers(count, 0);
        std::vector<std::vector<std::size_t>> goes;
        for (std::size_t nth = 0; nth < m_alone.size(); ++nth) {
            tables.push_back(m_alone[nth].leastAt(parts[nth]));
            bound += m_alone[nth].from(tables.back(), 0, first);
            goes.push_back(m_alone[nth].stopsOf(parts[nth], tables.back()));
            for (const auto stop : goes.back())
                ++goers[stop];
        }
        if (bound > most + 1e-9 * std::max(1.0, bound)) {
            most = bound;
            best = std::move(tables);
            sinceBest = 0;
            for (std::size_t nth = 0; nth < m_alone.size(); ++nth)
                for (std::size_t stop = 0; stop < count; ++stop)
                    if (stopCosts[stop] > 0 && stopCosts[stop] < unreached)
                        m_shares[nth][stop] = parts[nth][stop] / stopCosts[stop];
        } else if (++sinceBest % patience == 0) {
            stepsize /= 2;
        }
        if (most >= below || stepsize < 0.01)
            break;
        // More for who goes there, less for who does not.
        double length = 0;
        for (std::size_t nth = 0; nth < m_alone.size(); ++nth)
            for (const auto stop : goes[nth])
                length += 1 - static_cast<double>(goers[stop]) / served[stop];
        if (length < 1e-9)
            break;
        const double target = below < unreached ? std::min(below, 1.3 * most + 1) : 1.3 * most + 1;
        const double by = stepsize * std::max(target - bound, 0.01 * most) / length;
        for (std::size_t nth = 0; nth < m_alone.size(); ++nth)
            for (const auto stop : goes[nth])
                parts[nth][stop] += by;
        for (std::size_t stop = 0; stop < count; ++stop) {
            if (goers[stop] == 0)
                continue;
            double sum = 0;
            const double less = by * goers[stop] / served[stop];
            for (std::size_t nth = 0; nth < m_alone.size(); ++nth)
                if (m_alone[nth].isServedAt(stop)) {
                    parts[nth][stop] = std::max(0.0, parts[nth][stop] - less);
                    sum += parts[nth][stop];
                }
            for (std::size_t nth = 0; sum > 0 && nth < m_alone.size(); ++nth)
                parts[nth][stop] *= stopCosts[stop] / sum;
        }
    }
    return best;
}

}
