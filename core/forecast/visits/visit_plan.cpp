// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/visits/visit_plan.h"

#include <queue>

#include <algorithm>
#include <functional>
#include <limits>
#include <map>
#include <tuple>
#include <utility>

namespace crownring {

namespace {

constexpr double never = std::numeric_limits<double>::infinity();
using Covered = unsigned; ///< a bit a task

bool isCovered(Covered covered, std::size_t task) { return (covered >> task & 1U) != 0; }

/// What one task costs from a week on, if nothing else were there.
class Alone {
public:
    /// @param withVisits going there is paid by this task, else by nobody
    Alone(const VisitQuestion& question, std::size_t task, bool withVisits)
        : m_question(question), m_task(question.tasks[task]), m_withVisits(withVisits) {}

    double from(int week, int latest) {
        const auto weeks = static_cast<int>(m_question.weeks.size());
        if (latest >= weeks)
            return 0;
        const auto [known, isNew] = m_known.try_emplace({week, latest}, never);
        if (!isNew)
            return known->second;
        double best = never;
        for (int at = week; at <= latest; ++at)
            if (const auto& visit = m_question.weeks[static_cast<std::size_t>(at)])
                best = std::min(best, (m_withVisits ? *visit : 0) + costOfDoing(m_task, at, latest) +
                                          from(at + 1, latestAfter(m_task, at, latest)));
        return m_known[{week, latest}] = best;
    }

private:
    const VisitQuestion& m_question;
    const VisitTask& m_task;
    bool m_withVisits;
    std::map<std::pair<int, int>, double> m_known;
};

/// Everything up to `week` is decided.
struct State {
    int week = 0;
    std::vector<int> latest;
    auto operator<=>(const State&) const = default;
};

struct Reached {
    double cost = never;
    State before;
    PlannedVisit visit; ///< that led here
    bool isDone = false;
};

class Searching {
public:
    explicit Searching(const VisitQuestion& question)
        : m_question(question), m_weeks(static_cast<int>(question.weeks.size())) {
        for (std::size_t task = 0; task < question.tasks.size(); ++task) {
            m_withVisits.emplace_back(question, task, true);
            m_work.emplace_back(question, task, false);
        }
    }

    std::optional<VisitPlan> search() {
        State first;
        for (const auto& task : m_question.tasks)
            first.latest.push_back(task.latest);
        m_reached[first] = {0, {}, {}, false};
        ask(first, 0);
        while (!m_open.empty()) {
            const auto [bound, cost, state] = m_open.top();
            m_open.pop();
            auto& reached = m_reached[state];
            if (reached.isDone || cost > reached.cost)
                continue;
            reached.isDone = true;
            if (isFinished(state))
                return planTo(state);
            goOn(state, cost);
        }
        return std::nullopt;
    }

private:
    [[nodiscard]] bool isFinished(const State& state) const {
        return std::ranges::all_of(state.latest, [&](int latest) { return latest >= m_weeks; }) &&
               std::ranges::none_of(m_question.pins, [&](const auto& pin) { return pin.week >= state.week; });
    }

    /// What is still to come costs no less.
    double atLeast(const State& state) {
        double work = 0;
        double most = 0;
        for (std::size_t task = 0; task < state.latest.size(); ++task) {
            const double own = m_work[task].from(state.week, state.latest[task]);
            work += own;
            most = std::max(most, m_withVisits[task].from(state.week, state.latest[task]) - own);
        }
        return work == never ? never : work + most;
    }

    void ask(const State& state, double cost) {
        if (const double rest = atLeast(state); rest < never)
            m_open.push({cost + rest, cost, state});
    }

    /// To every visit that can be the next one: until the first task may wait no longer, and no pin is passed.
    void goOn(const State& state, double cost) {
        int last = m_weeks - 1;
        for (const int latest : state.latest)
            last = std::min(last, latest);
        for (const auto& pin : m_question.pins)
            if (pin.week >= state.week)
                last = std::min(last, pin.week);
        for (int week = state.week; week <= last; ++week)
            if (const auto& visit = m_question.weeks[static_cast<std::size_t>(week)])
                for (Covered covered = 1; covered < Covered{1} << state.latest.size(); ++covered)
                    if (holdsAll(state, week, covered))
                        go(state, cost, week, covered, *visit);
    }

    /// What may wait no longer, and what is pinned there.
    [[nodiscard]] bool holdsAll(const State& state, int week, Covered covered) const {
        for (std::size_t task = 0; task < state.latest.size(); ++task)
            if (state.latest[task] == week && !isCovered(covered, task))
                return false;
        return std::ranges::all_of(m_question.pins,
                                   [&](const auto& pin) { return pin.week != week || isCovered(covered, pin.task); });
    }

    void go(const State& from, double cost, int week, Covered covered, double visit) {
        State to{week + 1, from.latest};
        PlannedVisit planned{week, {}, visit};
        for (std::size_t task = 0; task < to.latest.size(); ++task)
            if (isCovered(covered, task)) {
                const auto& each = m_question.tasks[task];
                planned.covers.push_back(task);
                planned.cost += costOfDoing(each, week, from.latest[task]);
                to.latest[task] = latestAfter(each, week, from.latest[task]);
            }
        auto& reached = m_reached[to];
        if (cost + planned.cost >= reached.cost)
            return;
        reached = {cost + planned.cost, from, std::move(planned), false};
        ask(to, reached.cost);
    }

    VisitPlan planTo(State state) {
        VisitPlan plan;
        plan.cost = m_reached.at(state).cost;
        while (!m_reached.at(state).visit.covers.empty()) {
            const auto& reached = m_reached.at(state);
            plan.visits.push_back(reached.visit);
            state = reached.before;
        }
        std::ranges::reverse(plan.visits);
        return plan;
    }

    struct Waiting {
        double bound;
        double cost;
        State state;
        bool operator>(const Waiting& other) const {
            return std::tie(bound, state) > std::tie(other.bound, other.state);
        }
    };
    const VisitQuestion& m_question;
    int m_weeks;
    std::vector<Alone> m_withVisits, m_work;
    std::map<State, Reached> m_reached;
    std::priority_queue<Waiting, std::vector<Waiting>, std::greater<>> m_open;
};

}

int latestAfter(const VisitTask& task, int week, int latest) {
    const int lasts = task.lasts[static_cast<std::size_t>(week)];
    return (task.window > 0 && latest - week <= task.window ? latest : week) + lasts;
}

double costOfDoing(const VisitTask& task, int week, int latest) {
    return task.cost + task.weekWasted * (latest - week);
}

std::optional<VisitPlan> cheapestPlan(const VisitQuestion& question) { return Searching(question).search(); }

std::optional<VisitPlan> planWhenDue(const VisitQuestion& question) {
    const auto weeks = static_cast<int>(question.weeks.size());
    std::vector<int> latest;
    for (const auto& task : question.tasks)
        latest.push_back(task.latest);
    VisitPlan plan;
    for (int from = 0;;) {
        // The last open week in which each may still be done; the earliest of them comes next.
        int next = weeks;
        std::vector<int> last(latest.size(), weeks);
        for (std::size_t task = 0; task < latest.size(); ++task) {
            if (latest[task] >= weeks)
                continue;
            int week = latest[task];
            while (week >= from && !question.weeks[static_cast<std::size_t>(week)])
                --week;
            if (week < from)
                return std::nullopt;
            last[task] = week;
            next = std::min(next, week);
        }
        if (next == weeks)
            return plan;
        PlannedVisit visit{next, {}, *question.weeks[static_cast<std::size_t>(next)]};
        for (std::size_t task = 0; task < latest.size(); ++task)
            if (last[task] == next) {
                visit.covers.push_back(task);
                visit.cost += costOfDoing(question.tasks[task], next, latest[task]);
                latest[task] = latestAfter(question.tasks[task], next, latest[task]);
            }
        plan.cost += visit.cost;
        plan.visits.push_back(std::move(visit));
        from = next + 1;
    }
}

}
