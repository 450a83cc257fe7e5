// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/visits/visit_plan.h"

#include "forecast/visits/next_visits.h"

#include <boost/container_hash/hash.hpp>
#include <queue>

#include <algorithm>
#include <tuple>
#include <unordered_map>

namespace crownring {

namespace {

/// Everything before `week` is decided.
struct State {
    int week = 0;
    Running due;
    bool operator==(const State&) const = default;
};
struct StateHash {
    std::size_t operator()(const State& state) const {
        auto seed = static_cast<std::size_t>(state.week);
        boost::hash_range(seed, state.due.begin(), state.due.end());
        return seed;
    }
};

struct Reached {
    State state;
    double cost = 0;
    std::size_t before = 0;
    std::size_t stop = 0; ///< of the visit that led here
    std::uint64_t covers = 0;
    Forbidden forbidden{};
    std::size_t alike = none; ///< another one of the same state that costs the same
    static constexpr std::size_t none = std::numeric_limits<std::size_t>::max();
};

}

/// One search.
class VisitSearching {
public:
    VisitSearching(VisitSearch& asked, std::span<const double> stopCosts, double below, VisitSearch::Effort effort)
        : m_asked(asked), m_question(asked.m_question), m_groups(asked.m_groups), m_below(below),
          m_stopCosts(stopCosts), m_isRough(effort == VisitSearch::Effort::Rough), m_next(asked, stopCosts, effort),
          m_visits(asked.split(stopCosts, below)) {
        for (const auto& alone : asked.m_alone)
            m_whole.push_back(alone.leastAt(stopCosts));
        if (!m_isRough && asked.m_isTangled)
            m_most = mostOfTangled;
    }

    VisitSearch::Found search() {
        const double below = m_below;
        State first;
        first.due.assign(m_groups.size(), 0);
        m_least = std::min(atLeast(0, first.due), below);
        reach({first});
        while (!m_open.empty()) {
            const auto [bound, week, cost, node] = m_open.top();
            m_open.pop();
            if (bound >= m_below)
                break;
            if (week == finished)
                return {planTo(node), m_isRough ? m_least : bound};
            if (cost > m_reached[m_known.at(m_reached[node].state)].cost)
                continue;
            goOn(node);
            if (isEnded())
                return {m_best ? std::optional(planTo(*m_best)) : std::nullopt, m_isRough ? m_least : bound};
        }
        return {std::nullopt, m_isRough ? m_least : below};
    }

private:
    static constexpr int finished = -1;

    /// Then what stands open is no longer looked at.
    [[nodiscard]] bool isEnded() const { return m_tried >= m_most; }

    [[nodiscard]] int nextPin(int week) const {
        int next = m_question.weeks;
        for (const auto pin : m_question.pins)
            if (pin >= week)
                next = std::min(next, pin);
        return next;
    }

    /// What is still to come costs no less.
    [[nodiscard]] double atLeast(int week, const Running& due) const {
        double sum = 0;
        double work = 0;
        double most = 0;
        for (std::size_t nth = 0; nth < m_asked.m_alone.size(); ++nth) {
            const auto& alone = m_asked.m_alone[nth];
            sum += alone.from(m_visits[nth], week, due);
            const double own = alone.from(m_asked.m_work[nth], week, due);
            work += own;
            most = std::max(most, alone.from(m_whole[nth], week, due) - own);
        }
        sum = std::max(sum, work + most);
        // What rounding adds is not to be more than what there is.
        return sum * (1 - 1e-12);
    }

    void reach(Reached reached) {
        const double bound = reached.cost + atLeast(reached.state.week, reached.state.due);
        if (bound >= m_below)
            return;
        const auto [known, isNew] = m_known.try_emplace(reached.state, m_reached.size());
        if (!isNew) {
            const double least = m_reached[known->second].cost;
            if (reached.cost > least)
                return;
            // What is forbidden after one way here need not be after another that costs the same.
            if (reached.cost == least) {
                for (auto other = known->second; other != Reached::none; other = m_reached[other].alike)
                    if (m_reached[other].forbidden.isNoMoreThan(reached.forbidden))
                        return;
                reached.alike = known->second;
            }
            known->second = m_reached.size();
        }
        m_open.push({bound, reached.state.week, reached.cost, m_reached.size()});
        m_reached.push_back(std::move(reached));
    }

    /// To every visit that can be the next one, and to none at all.
    void goOn(std::size_t node) {
        const auto from = m_reached[node];
        const int pin = nextPin(from.state.week);
        if (pin == m_question.weeks && from.forbidden.movesTo == Forbidden::never) {
            double end = from.cost;
            for (std::size_t nth = 0; nth < m_visits.size(); ++nth)
                end += m_asked.m_alone[nth].from(m_visits[nth], m_question.weeks, from.state.due);
            if (end < m_below) {
                m_below = std::nextafter(end, unreached);
                m_best = node;
                m_open.push({end, finished, end, node});
            }
        }
        for (int week = from.state.week; week < m_question.weeks && week <= std::min(pin, from.forbidden.movesTo);
             ++week) {
            if (from.cost + atLeast(week, from.state.due) >= m_below || isEnded())
                return;
            m_tried += m_next.tell(week, week == pin, from.state.due, from.forbidden, m_most - m_tried,
                                   [&](NextVisit&& visit) {
                                       reach({{week + 1, std::move(visit.due)},
                                              from.cost + visit.cost,
                                              node,
                                              visit.stop,
                                              visit.covers,
                                              std::move(visit.forbidden)});
                                   });
        }
    }

    [[nodiscard]] double chargeOf(std::size_t group, std::size_t due, int week) const {
        return m_groups[group].cost * m_asked.taskOf(group).wasted(due, week);
    }

    [[nodiscard]] VisitPlan planTo(std::size_t node) const {
        VisitPlan plan;
        for (std::size_t group = 0; group < m_groups.size(); ++group)
            plan.late += static_cast<int>(m_groups[group].tasks.size()) *
                         m_asked.taskOf(group).lateness(m_reached[node].state.due[group], m_question.weeks);
        for (; m_reached[node].state.week > 0; node = m_reached[node].before) {
            const auto& reached = m_reached[node];
            const auto& stop = m_question.stops[reached.stop];
            PlannedVisit visit{stop.week, stop.station, {}, stop.cost};
            const auto& due = m_reached[reached.before].state.due;
            std::uint64_t counted = 0;
            for (std::size_t group = 0; group < m_groups.size(); ++group) {
                if (!has(reached.covers, group))
                    continue;
                for (const auto other : m_groups[group].implies)
                    counted |= bit(other);
                const auto& tasks = m_groups[group].tasks;
                visit.covers.insert(visit.covers.end(), tasks.begin(), tasks.end());
                visit.cost += chargeOf(group, due[group], stop.week);
            }
            for (std::size_t group = 0; group < m_groups.size(); ++group)
                if (has(reached.covers | counted, group))
                    plan.late += static_cast<int>(m_groups[group].tasks.size()) *
                                 m_asked.taskOf(group).lateness(due[group], stop.week);
            std::ranges::sort(visit.covers);
            plan.cost += visit.cost;
            plan.visits.push_back(std::move(visit));
        }
        std::ranges::reverse(plan.visits);
        return plan;
    }

    struct Waiting {
        double bound;
        int week; ///< `finished`: nothing more is done
        double cost;
        std::size_t node;
        /// What is finished before what is not, the later week before the earlier.
        bool operator>(const Waiting& other) const {
            const auto isOpen = [](const Waiting& each) { return each.week != finished; };
            return std::tuple(bound, isOpen(*this), -week, node) >
                   std::tuple(other.bound, isOpen(other), -other.week, other.node);
        }
    };
    /// Visits that are looked at. Where many things count for many others, ten times as many would not do.
    static constexpr std::size_t mostLooked = 300'000;
    static constexpr std::size_t mostOfTangled = 30'000;

    const VisitSearch& m_asked;
    const VisitQuestion& m_question;
    const std::vector<TaskGroup>& m_groups;
    std::size_t m_tried = 0;
    std::size_t m_most = mostLooked;
    double m_least = 0;                ///< of all plans
    std::optional<std::size_t> m_best; ///< after it nothing more is done
    double m_below;
    std::span<const double> m_stopCosts;
    bool m_isRough;
    NextVisits m_next;
    std::vector<Alone::Least> m_visits; ///< at split costs
    std::vector<Alone::Least> m_whole;  ///< at whole ones
    std::vector<Reached> m_reached;
    std::unordered_map<State, std::size_t, StateHash> m_known;
    std::priority_queue<Waiting, std::vector<Waiting>, std::greater<>> m_open;
};

double VisitSearch::weighedAt(const VisitPlan& plan, std::span<const double> stopCosts) const {
    double weighed = plan.weighed(m_question);
    for (std::size_t stop = 0; stop < stopCosts.size(); ++stop)
        for (const auto& visit : plan.visits)
            if (visit.week == m_question.stops[stop].week && visit.station == m_question.stops[stop].station)
                weighed += stopCosts[stop] - m_question.stops[stop].cost;
    return weighed;
}

VisitSearch::Found VisitSearch::cheapest(std::span<const double> stopCosts, double below, Effort effort) {
    std::vector<double> own;
    if (stopCosts.empty()) {
        for (const auto& stop : m_question.stops)
            own.push_back(stop.cost);
        stopCosts = own;
    }
    std::optional<VisitPlan> known; ///< cheap enough as well
    const auto take = [&](const std::optional<VisitPlan>& plan) {
        const double weighed = plan ? weighedAt(*plan, stopCosts) : unreached;
        if (weighed >= below)
            return;
        below = weighed + 1e-9 * std::max(1.0, weighed);
        known = plan;
    };
    take(m_whenDue);
    const bool isEasy = std::ranges::none_of(m_groups, [](const TaskGroup& group) { return !group.implies.empty(); });
    if (!isEasy) {
        auto rough = VisitSearching(*this, stopCosts, below, Effort::Rough).search();
        take(rough.plan);
        if (effort == Effort::Rough)
            return {std::move(known), rough.bound};
    }
    auto found = VisitSearching(*this, stopCosts, below, Effort::Exact).search();
    if (!found.plan)
        found.plan = std::move(known);
    return found;
}

std::optional<VisitPlan> goodPlan(const VisitQuestion& question) {
    return VisitSearch(question).cheapest({}, unreached, VisitSearch::Effort::Rough).plan;
}

std::optional<VisitPlan> cheapestPlan(const VisitQuestion& question) {
    auto [plan, bound] = VisitSearch(question).cheapest();
    if (plan)
        plan->bound = bound;
    return plan;
}

}
