// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/plan/next_dues.h"

#include "rules/due/reckoned.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

namespace crownring {

namespace {

constexpr int never = 1 << 14; ///< weeks: later than anybody plans

std::optional<UseClock> useClockOf(ClockName clock) {
    switch (clock) {
    case ClockName::Minutes:
        return UseClock::Minutes;
    case ClockName::Landings:
        return UseClock::Landings;
    case ClockName::Inflations:
        return UseClock::Inflations;
    default:
        return std::nullopt;
    }
}

bool isPast(const DueRow& row) {
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

/// The least interval, where how it is done decides.
CivilDate nextDay(const DueRow& row, const Limit& limit, CivilDate done) {
    if (limit.clock == ClockName::Days)
        return addDays(done, limit.every);
    auto every = limit.every;
    for (const auto& [method, months] : row.requirement->byMethod)
        every = std::min(every, months);
    return addMonths(done, every, limit.day);
}

class Laying {
public:
    Laying(const DueRow& row, const UseAhead* ahead, const PlanWeeks& weeks, double level)
        : m_row(row), m_ahead(ahead), m_weeks(weeks), m_level(level), m_uses(useLimitsOf(row)) {
        for (const auto& limit : row.requirement->limits)
            if (isCalendar(limit.clock))
                m_calendar.push_back(&limit);
        m_isLast = row.requirement->whichever == Whichever::Last;
    }

    TaskAhead lay() {
        begin();
        if (m_row.requirement->once || isOfTheRecord(m_row) || (m_calendar.empty() && m_uses.empty()))
            endForGood();
        else
            repeat();
        return std::move(m_made);
    }

private:
    void begin() {
        std::optional<CivilDate> day;
        for (const auto& limit : m_row.state.limits)
            if (const auto* reach = limit.calendar())
                day = !day ? reach->due : m_isLast ? std::max(*day, reach->due) : std::min(*day, reach->due);
        std::optional<int> use;
        for (const auto& limit : m_row.state.limits)
            if (const auto clock = useClockOf(limit.clock))
                if (const auto* reach = limit.usage())
                    use = joined(use, lastWeekOfUse(*clock, static_cast<double>(reach->left.value()), -1));
        m_made.task.dues.push_back(dueAt(day, use));
        m_made.dues.push_back({day, isByUse(day, use)});
        if (isPast(m_row) || (!day && !use))
            m_made.task.dues.front().latest = -1;
    }

    [[nodiscard]] int joined(const std::optional<int>& a, int b) const {
        return !a ? b : m_isLast ? std::max(*a, b) : std::min(*a, b);
    }
    [[nodiscard]] bool isByUse(const std::optional<CivilDate>& day, const std::optional<int>& use) const {
        return use && (!day || (m_isLast ? *use > m_weeks.lastWeekBy(*day) : *use < m_weeks.lastWeekBy(*day)));
    }

    /// The last week before whose Monday that much is put on with no more than the chance.
    int lastWeekOfUse(UseClock clock, double count, int doneIn) {
        if (count <= 0)
            return -1;
        if (!m_ahead)
            return never;
        // What is done later lasts as long at least, so that the search goes on from where the last one ended.
        int& week = m_lastOfUse.try_emplace({clock, count}, doneIn).first->second;
        week = std::max(week, doneIn);
        while (week < farthest() && chanceBetween(*m_ahead, m_weeks, clock, count, doneIn, week + 1) <= m_level)
            ++week;
        return week < farthest() ? week : never;
    }
    [[nodiscard]] int farthest() const { return m_calendar.empty() ? 2 * m_weeks.count : m_weeks.count + 52; }

    /// Life in days where the calendar alone limits it, in use foretold where use alone does, else in weeks.
    VisitTask::Due dueAt(const std::optional<CivilDate>& day, const std::optional<int>& use) {
        VisitTask::Due due;
        due.latest = day ? m_weeks.lastWeekBy(*day) : never;
        if (use)
            due.latest = day ? joined(due.latest, *use) : *use;
        if (day && m_uses.empty())
            due.life = day->dayNumber();
        else if (day || !m_ahead || m_uses.empty())
            due.life = due.latest;
        else
            due.life = m_ahead->upTo(m_weeks.monday(std::clamp(due.latest, 0, 2 * m_weeks.count)), m_uses.front().clock)
                           .mean();
        return due;
    }

    void endForGood() {
        m_made.task.dues.push_back({never, 0});
        m_made.dues.emplace_back();
        m_made.task.dues.front().life = 0;
        m_made.task.after.assign(static_cast<std::size_t>(m_weeks.count), {1, 1});
    }

    std::size_t placeOf(const std::optional<CivilDate>& day, const std::optional<int>& use) {
        const auto [known, isNew] = m_known.try_emplace({day, use}, m_made.task.dues.size());
        if (isNew) {
            m_made.task.dues.push_back(dueAt(day, use));
            m_made.dues.push_back({day, isByUse(day, use)});
        }
        return known->second;
    }

    void repeat() {
        auto& task = m_made.task;
        double longest = 0;
        for (int week = 0; week < m_weeks.count; ++week) {
            const auto done = m_weeks.signedOn(week);
            std::optional<CivilDate> day;
            for (const auto* limit : m_calendar) {
                const auto next = nextDay(m_row, *limit, done);
                day = !day ? next : m_isLast ? std::max(*day, next) : std::min(*day, next);
            }
            std::optional<int> use;
            for (const auto& limit : m_uses)
                use = joined(use, lastWeekOfUse(limit.clock, limit.every, week));
            const auto due = placeOf(day, use);
            task.after.push_back({due, task.dues[due].life});
            longest = std::max(longest, task.dues[due].life - lifeOfDoing(week));
        }
        keepPattern();
        const double unit = std::max(longest, 1e-9);
        for (auto& due : task.dues)
            due.life /= unit;
        for (auto& after : task.after)
            after.life = task.dues[after.due].life;
    }

    [[nodiscard]] double lifeOfDoing(int week) {
        if (!m_calendar.empty() && m_uses.empty())
            return m_weeks.signedOn(week).dayNumber();
        if (!m_calendar.empty() || !m_ahead)
            return week;
        return m_ahead->upTo(m_weeks.monday(week), m_uses.front().clock).mean();
    }

    /// Done within the window before it is due, the next counts from that day (02, `kept`).
    void keepPattern() {
        const auto& requirement = *m_row.requirement;
        if (requirement.nextFrom != NextFrom::Kept || m_calendar.size() != 1 || !m_uses.empty())
            return;
        const auto& limit = *m_calendar.front();
        for (std::size_t due = 0; due < m_made.task.dues.size(); ++due) {
            const auto day = m_made.dues[due].last;
            if (!day || m_made.task.dues[due].latest >= m_weeks.count || m_made.task.dues[due].latest < 0)
                continue;
            auto opens = *day;
            for (const auto& [clock, length] : requirement.window)
                if (clock == ClockName::Days)
                    opens = addDays(*day, -length);
                else if (clock == ClockName::Months)
                    opens = addMonths(*day, -length, limit.day);
            const auto next = placeOf(nextDay(m_row, limit, *day), std::nullopt);
            m_made.task.dues[due].keeps = next;
            m_made.task.dues[due].keepsFrom = m_weeks.lastWeekBy(addDays(opens, -1)) + 1;
        }
    }

    const DueRow& m_row;
    const UseAhead* m_ahead;
    const PlanWeeks& m_weeks;
    double m_level;
    std::vector<UseLimit> m_uses;
    std::vector<const Limit*> m_calendar;
    bool m_isLast = false;
    std::map<std::pair<UseClock, double>, int> m_lastOfUse;
    std::map<std::pair<std::optional<CivilDate>, std::optional<int>>, std::size_t> m_known;
    TaskAhead m_made;
};

}

std::vector<UseLimit> useLimitsOf(const DueRow& row) {
    std::vector<UseLimit> limits;
    for (std::size_t nth = 0; nth < row.requirement->limits.size(); ++nth) {
        const auto& limit = row.requirement->limits[nth];
        const auto clock = useClockOf(limit.clock);
        if (!clock)
            continue;
        const auto* reach = nth < row.state.limits.size() ? row.state.limits[nth].usage() : nullptr;
        limits.push_back(
            {*clock, reach ? static_cast<double>(reach->left.value()) : 0, static_cast<double>(limit.every)});
    }
    return limits;
}

double chanceBetween(const UseAhead& ahead, const PlanWeeks& weeks, UseClock clock, double count, int doneIn,
                     int until) {
    const auto last = addDays(weeks.monday(until), -1);
    if (doneIn < 0)
        return ahead.upTo(last, clock).chanceOf(count);
    const auto first = addDays(weeks.signedOn(doneIn), 1);
    return last < first ? 0 : ahead.between(first, last, clock).chanceOf(count);
}

TaskAhead taskAhead(const DueRow& row, const UseAhead* ahead, const PlanWeeks& weeks, double level) {
    return Laying(row, ahead, weeks, level).lay();
}

}
