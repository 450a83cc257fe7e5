// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/visits/next_visits.h"

#include <algorithm>
#include <utility>

namespace crownring {

std::uint64_t Forbidden::groupsIn(int week) const {
    std::uint64_t groups = 0;
    for (std::size_t group = 0; group < waits.size(); ++group)
        if (week <= waits[group])
            groups |= bit(group);
    return groups;
}

bool Forbidden::isNoMoreThan(const Forbidden& other) const {
    return movesTo >= other.movesTo && std::ranges::equal(waits, other.waits, std::less_equal<>());
}

NextVisits::NextVisits(const VisitSearch& asked, std::span<const double> stopCosts, VisitSearch::Effort effort)
    : m_asked(asked), m_stopCosts(stopCosts), m_isRough(effort == VisitSearch::Effort::Rough) {
    chooseStops();
    chooseSorts();
    layNextWeeks();
}

std::span<const std::size_t> NextVisits::stopsOf(int week) const {
    const auto place = static_cast<std::size_t>(week);
    return std::span(m_stops).subspan(m_firstStop[place], m_firstStop[place + 1] - m_firstStop[place]);
}

/// Of the stops of a week that serve the same the cheapest.
void NextVisits::chooseStops() {
    const auto& stops = m_asked.m_question.stops;
    const auto isBetter = [&](std::size_t other, std::size_t stop) {
        const auto serves = m_asked.m_doneAt[stop];
        const auto others = m_asked.m_doneAt[other];
        return (others & serves) == serves &&
               (m_stopCosts[other] < m_stopCosts[stop] ||
                (m_stopCosts[other] == m_stopCosts[stop] && (others != serves || other < stop)));
    };
    m_firstStop.push_back(0);
    for (std::size_t first = 0; m_firstStop.size() <= static_cast<std::size_t>(m_asked.m_question.weeks);) {
        const int week = static_cast<int>(m_firstStop.size()) - 1;
        auto end = first;
        while (end < stops.size() && stops[end].week == week)
            ++end;
        for (auto stop = first; stop < end; ++stop) {
            bool isBest = m_stopCosts[stop] < unreached;
            for (auto other = first; isBest && other < end; ++other)
                isBest = other == stop || !isBetter(other, stop);
            if (isBest)
                m_stops.push_back(stop);
        }
        m_firstStop.push_back(m_stops.size());
        first = end;
    }
}

void NextVisits::chooseSorts() {
    const auto& groups = m_asked.m_groups;
    for (std::size_t sort = 0; sort < groups.size(); ++sort) {
        std::vector<std::size_t> of;
        for (std::size_t group = sort; group < groups.size(); ++group)
            if ((m_isRough ? groups[group].roughSort : groups[group].sort) == sort)
                of.push_back(group);
        if (!of.empty())
            m_sorts.push_back(std::move(of));
    }
}

void NextVisits::layNextWeeks() {
    const int weeks = m_asked.m_question.weeks;
    m_nextWeek.assign(m_asked.m_groups.size(), std::vector<int>(static_cast<std::size_t>(weeks), weeks));
    for (std::size_t group = 0; group < m_nextWeek.size(); ++group)
        for (int week = weeks - 1, next = weeks; week >= 0; --week) {
            m_nextWeek[group][static_cast<std::size_t>(week)] = next;
            if (std::ranges::any_of(stopsOf(week),
                                    [&](std::size_t stop) { return has(m_asked.m_served[stop], group); }))
                next = week;
        }
}

/// The next visits to one stop.
class NextVisitsTelling {
public:
    NextVisitsTelling(const NextVisits& visits, int week, std::size_t stop, const Running& due,
                      const std::function<void(NextVisit&&)>& to, bool isPinned)
        : m_visits(visits), m_asked(visits.m_asked), m_groups(m_asked.m_groups), m_week(week), m_stop(stop), m_due(due),
          m_to(to), m_isPinned(isPinned) {
        for (std::size_t group = 0; group < m_groups.size(); ++group)
            if (isLateElse(group))
                m_must |= bit(group);
    }

    std::size_t tell(std::size_t most) {
        m_most = most;
        choose(0, 0);
        return m_looked;
    }

private:
    /// Of each sort the groups whose last weeks come first: from those that may wait no longer up to all.
    void choose(std::size_t sort, std::uint64_t covers) {
        if (m_looked >= m_most)
            return;
        if (sort == m_visits.m_sorts.size()) {
            ++m_looked;
            if (covers != 0 || m_isPinned)
                go(covers);
            return;
        }
        boost::container::small_vector<std::size_t, 12> may;
        for (const auto group : m_visits.m_sorts[sort])
            if (has(m_asked.m_doneAt[m_stop], group) && isWorthDoing(group))
                may.push_back(group);
        std::ranges::sort(may, {}, [this](std::size_t group) { return std::pair(dueOf(group).latest, group); });
        choose(sort + 1, covers);
        for (const auto group : may) {
            covers |= bit(group);
            choose(sort + 1, covers);
        }
    }

    [[nodiscard]] const VisitTask& taskOf(std::size_t group) const { return m_asked.taskOf(group); }
    [[nodiscard]] const VisitTask::Due& dueOf(std::size_t group) const { return taskOf(group).dues[m_due[group]]; }
    [[nodiscard]] const VisitTask::Due& nextOf(std::size_t group, int week) const {
        return taskOf(group).dues[taskOf(group).next(m_due[group], week)];
    }
    [[nodiscard]] int weeks() const { return m_asked.m_question.weeks; }
    [[nodiscard]] bool mayPayEarly(std::size_t group) const {
        return m_visits.m_isRough ? m_groups[group].isUneven : m_groups[group].mayPayEarly();
    }

    [[nodiscard]] bool isLateElse(std::size_t group) const {
        const int latest = dueOf(group).latest;
        return has(m_asked.m_doneAt[m_stop], group) && latest < weeks() &&
               latest < m_visits.m_nextWeek[group][static_cast<std::size_t>(m_week)] &&
               latest < nextOf(group, m_week).latest &&
               std::ranges::none_of(m_groups[group].implies, [this](std::size_t other) {
                   return nextOf(other, m_week).latest < dueOf(other).latest;
               });
    }
    /// What may pay early does so for what comes of it; all else where it is due later for it.
    [[nodiscard]] bool isWorthDoing(std::size_t group) const {
        const int latest = dueOf(group).latest;
        const int next = nextOf(group, m_week).latest;
        if (!mayPayEarly(group))
            return latest < weeks() && next > latest;
        return latest < weeks() || !m_groups[group].implies.empty() || next < latest;
    }

    void go(std::uint64_t covers) const {
        std::uint64_t counted = 0;
        for (std::size_t group = 0; group < m_groups.size(); ++group)
            if (has(covers, group))
                for (const auto other : m_groups[group].implies)
                    counted |= bit(other);
        const auto served = covers | counted;
        if (m_visits.m_isRough)
            covers &= ~counted | doubly(covers);
        if ((m_must & ~served) != 0)
            return;
        NextVisit visit{m_week, m_stop, covers, costIn(m_stop, m_week, covers), m_due, {}};
        visit.forbidden.waits.assign(m_groups.size(), -1);
        int last = weeks() - 1;
        for (std::size_t group = 0; group < m_groups.size(); ++group) {
            if (!has(served, group))
                continue;
            if (has(covers, group))
                visit.forbidden.waits[group] = static_cast<std::int16_t>(waitOf(group));
            visit.cost += m_asked.m_question.lateWeek * static_cast<double>(m_groups[group].tasks.size()) *
                          taskOf(group).lateness(m_due[group], m_week);
            visit.due[group] = static_cast<std::uint16_t>(taskOf(group).next(m_due[group], m_week));
            last = std::min(last, dueOf(group).latest);
        }
        if (!m_isPinned)
            visit.forbidden.movesTo = movedTo(covers, served, last);
        if (!isInVain(visit))
            m_to(std::move(visit));
    }

    /// Those that count for each other: not both are left out.
    [[nodiscard]] std::uint64_t doubly(std::uint64_t covers) const {
        std::uint64_t groups = 0;
        for (std::size_t group = 0; group < m_groups.size(); ++group)
            if (has(covers, group) && !m_groups[group].implies.empty())
                groups |= bit(group);
        return groups;
    }
    [[nodiscard]] double costIn(std::size_t stop, int week, std::uint64_t covers) const {
        double sum = m_visits.m_stopCosts[stop];
        for (std::size_t group = 0; group < m_groups.size(); ++group)
            if (has(covers, group))
                sum += m_groups[group].cost * taskOf(group).wasted(m_due[group], week);
        return sum;
    }
    /// What more may be thrown away next time, done in that week instead: what is bought later lasts longer.
    [[nodiscard]] double laterThrownAway(std::uint64_t served, int week) const {
        double sum = 0;
        for (std::size_t group = 0; group < m_groups.size(); ++group) {
            if (!has(served, group))
                continue;
            const auto& its = nextOf(group, week);
            if (its.latest < weeks() || !m_groups[group].implies.empty())
                sum += m_groups[group].cost * std::max(0.0, its.life - nextOf(group, m_week).life);
        }
        return sum;
    }
    [[nodiscard]] int waitOf(std::size_t group) const {
        const auto& its = dueOf(group);
        const int latest = std::min(its.latest, weeks());
        if (!mayPayEarly(group))
            return latest;
        // Within its window one week is as good as another, until the pattern could be moved on once more.
        const bool keeps = its.keeps && its.keepsFrom <= m_week && m_groups[group].implies.empty();
        if (!keeps)
            return -1;
        const auto& next = taskOf(group).dues[*its.keeps];
        return next.keeps ? std::min(latest, next.keepsFrom - 1) : latest;
    }
    /// The first week until `last` in which the same visit costs no more, whatever comes after it.
    [[nodiscard]] int movedTo(std::uint64_t covers, std::uint64_t served, int last) const {
        const double here = costIn(m_stop, m_week, covers) + 1e-9;
        for (int week = m_week + 1; week <= last; ++week)
            for (const auto stop : m_visits.stopsOf(week))
                if ((covers & ~m_asked.m_doneAt[stop]) == 0 &&
                    costIn(stop, week, covers) + laterThrownAway(served, week) <= here)
                    return week;
        return Forbidden::never;
    }
    /// Whether what is done could wait for whatever visit could keep this one from being moved.
    [[nodiscard]] bool isInVain(const NextVisit& visit) const {
        if (visit.forbidden.movesTo == Forbidden::never)
            return false;
        for (int week = m_week + 1; week <= visit.forbidden.movesTo; ++week)
            for (const auto stop : m_visits.stopsOf(week))
                if ((visit.forbidden.groupsIn(week) & m_asked.m_doneAt[stop]) == 0)
                    return false;
        return true;
    }

    const NextVisits& m_visits;
    const VisitSearch& m_asked;
    const std::vector<TaskGroup>& m_groups;
    int m_week;
    std::size_t m_stop;
    const Running& m_due;
    const std::function<void(NextVisit&&)>& m_to;
    bool m_isPinned;
    std::size_t m_most = 0;
    std::size_t m_looked = 0;
    std::uint64_t m_must = 0; ///< groups that can only be late else
};

std::size_t NextVisits::tell(int week, bool isPinned, const Running& due, const Forbidden& before, std::size_t most,
                             const std::function<void(NextVisit&&)>& to) const {
    std::size_t looked = 0;
    if (week > before.movesTo)
        return looked;
    const auto couldWait = before.groupsIn(week);
    for (const auto stop : stopsOf(week))
        if ((m_asked.m_doneAt[stop] & couldWait) == 0 && looked < most)
            looked += NextVisitsTelling(*this, week, stop, due, to, isPinned).tell(most - looked);
    return looked;
}

}
