// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/standing/oracle.h"

#include <algorithm>
#include <chrono>
#include <set>

namespace crownring::oracle {

namespace {

using namespace std::chrono;
using Number = std::int64_t;

bool isIn(const std::string& what, const std::vector<std::string>& list) {
    for (const auto& one : list)
        if (one == what)
            return true;
    return false;
}
bool isIn(const RequirementId& what, const std::vector<RequirementId>& list) {
    for (const auto& one : list)
        if (one == what)
            return true;
    return false;
}

Number monthsLater(Number day, Number count, bool toMonthEnd) {
    const year_month_day from{sys_days{days{static_cast<int>(day)}}};
    const year_month month = from.year() / from.month() + months{static_cast<int>(count)};
    const auto last = year_month_day_last{month.year(), month_day_last{month.month()}};
    const auto chosen = toMonthEnd || from.day() > last.day() ? last.day() : from.day();
    return sys_days{month / chosen}.time_since_epoch().count();
}

Number plus(ClockName clock, Number from, Number count, bool toMonthEnd) {
    return clock == ClockName::Months ? monthsLater(from, count, toMonthEnd) : from + count;
}

bool onCalendar(ClockName clock) { return clock == ClockName::Months || clock == ClockName::Days; }

std::optional<Number> read(const Figures& figures, ClockName clock) {
    if (clock == ClockName::Minutes && figures.minutes)
        return figures.minutes->value();
    if (clock == ClockName::Landings && figures.landings)
        return figures.landings->value();
    if (clock == ClockName::Inflations && figures.inflations)
        return figures.inflations->value();
    return std::nullopt;
}

struct Question {
    const Requirement& row;
    const ItemFacts& item;
    const std::vector<Requirement>& inForce;
    Number today;

    const Requirement* lookUp(const RequirementId& id) const {
        if (id == row.id)
            return &row;
        for (const auto& one : inForce)
            if (one.id == id)
                return &one;
        return nullptr;
    }

    std::vector<Accomplishment> signedAt(Moment moment) const {
        std::vector<Accomplishment> together;
        for (const auto& done : item.done)
            if (done.stamp.at == moment)
                together.push_back(done);
        return together;
    }

    /// Too many in a row: counts back from the act over moments until a fuller act is met.
    bool tooMany(const Accomplishment& act) const {
        const auto* kind = lookUp(act.requirement);
        if (!kind || !kind->atMost)
            return false;
        std::set<Moment> moments;
        for (const auto& done : item.done)
            if (done.stamp.at <= act.stamp.at)
                moments.insert(done.stamp.at);
        int inARow = 0;
        for (auto moment = moments.rbegin(); moment != moments.rend(); ++moment) {
            bool same = false;
            bool fuller = false;
            for (const auto& done : signedAt(*moment)) {
                same = same || done.requirement == act.requirement;
                fuller = fuller || isIn(done.requirement, kind->satisfiedBy);
            }
            if (fuller)
                return inARow > *kind->atMost;
            inARow += same ? 1 : 0;
        }
        return inARow > *kind->atMost;
    }

    bool counts(const Accomplishment& act) const {
        return (act.requirement == row.id || isIn(act.requirement, row.satisfiedBy)) && !tooMany(act);
    }

    std::vector<Moment> momentsThatCount() const {
        std::set<Moment> moments;
        for (const auto& done : item.done)
            if (counts(done))
                moments.insert(done.stamp.at);
        return {moments.begin(), moments.end()};
    }

    /// Those of one moment that count; the row's own before the others, these in the order of `satisfied_by`.
    std::vector<Accomplishment> actsAt(Moment moment) const {
        std::vector<RequirementId> order{row.id};
        order.insert(order.end(), row.satisfiedBy.begin(), row.satisfiedBy.end());
        std::vector<Accomplishment> acts;
        for (const auto& id : order)
            for (const auto& done : signedAt(moment))
                if (done.requirement == id && counts(done))
                    acts.push_back(done);
        return acts;
    }

    std::optional<Number> doneValue(const std::vector<Accomplishment>& acts, ClockName clock) const {
        const auto on = acts.front().stamp.at.on();
        if (onCalendar(clock))
            return on.dayNumber();
        for (const auto& act : acts)
            if (const auto stated = read(act.stated, clock))
                return stated;
        if (on < item.entered)
            return std::nullopt;
        for (const auto& act : acts)
            if (const auto computed = read(act.clock, clock))
                return computed;
        return std::nullopt;
    }
};

struct Running {
    Number last, from, due;
};

/// A month is good from its first day.
bool isMade(const Question& q) {
    if (!q.item.made)
        return false;
    const auto last = q.item.made->lastDay();
    return q.item.made->isMonth()
               ? CivilDate::fromDayNumber(static_cast<int>(q.today)).iso().substr(0, 7) >= last.iso().substr(0, 7)
               : q.today >= last.dayNumber();
}

std::optional<Running> atFirst(const Question& q, const Limit& limit, const std::vector<Moment>& moments) {
    const bool monthEnd = limit.day == DayRule::MonthEnd;
    const auto length = limit.first ? *limit.first : limit.every;
    std::optional<Number> origin;
    bool endOfMonth = monthEnd;
    if (q.row.startsFrom == StartsFrom::Made) {
        if (!onCalendar(limit.clock))
            origin = 0;
        else if (isMade(q)) {
            origin = q.item.made->lastDay().dayNumber();
            endOfMonth = monthEnd || q.item.made->isMonth();
        }
    } else if (q.row.startsFrom == StartsFrom::Entered) {
        if (!moments.empty() && moments.front().on() < q.item.entered)
            return std::nullopt;
        origin = onCalendar(limit.clock) ? q.item.entered.dayNumber() : read(q.item.broughtForward, limit.clock);
    }
    if (!origin)
        return std::nullopt;
    return Running{*origin, *origin, plus(limit.clock, *origin, length, endOfMonth)};
}

Number keptOrDone(const Question& q, const Requirement* carriedOut, ClockName clock, Number done, Number due) {
    const auto& window = carriedOut && !carriedOut->window.empty() ? carriedOut->window : q.row.window;
    for (const auto wanted : {clock, clock == ClockName::Months ? ClockName::Days : ClockName::Months}) {
        if (wanted != clock && !onCalendar(clock))
            break;
        for (const auto& [unit, length] : window)
            if (unit == wanted)
                return plus(unit, due, -length, false) <= done && done <= due ? due : done;
    }
    return done;
}

std::optional<Running> running(const Question& q, const Limit& limit) {
    const auto moments = q.momentsThatCount();
    auto now = atFirst(q, limit, moments);
    for (const auto moment : moments) {
        const auto acts = q.actsAt(moment);
        const auto done = q.doneValue(acts, limit.clock);
        if (!done) {
            now.reset();
            continue;
        }
        auto from = *done;
        if (now && q.row.nextFrom == NextFrom::Earlier && now->due < from)
            from = now->due;
        if (now && q.row.nextFrom == NextFrom::Kept)
            from = keptOrDone(q, q.lookUp(acts.front().requirement), limit.clock, *done, now->due);
        auto length = limit.every;
        std::string method;
        for (const auto& act : acts)
            if (method.empty())
                method = act.method;
        for (const auto& [name, months] : q.row.byMethod)
            if (limit.clock == ClockName::Months && name == method)
                length = months;
        now = Running{*done, from, plus(limit.clock, from, length, limit.day == DayRule::MonthEnd)};
        if (onCalendar(limit.clock)) // what the certificate prints
            for (auto act = acts.rbegin(); act != acts.rend(); ++act)
                if (act->expires)
                    now->due = act->expires->dayNumber();
    }
    return now;
}

/// Whether any inspection that the limit goes with is near or past by its own limits, or none is known.
bool isComing(const Question& q, const Limit& limit) {
    bool known = false;
    for (const auto& id : limit.with)
        for (auto inspection : q.inForce) {
            if (inspection.id != id)
                continue;
            std::vector<Limit> own;
            for (const auto& each : inspection.limits)
                if (each.with.empty())
                    own.push_back(each);
            inspection.limits = own;
            const auto answer = ask(inspection, q.item, q.inForce, CivilDate::fromDayNumber(static_cast<int>(q.today)));
            known = known || answer.required;
            if (answer.required && answer.standing != "clear" && answer.standing != "closed")
                return true;
        }
    return !known;
}

LimitAnswer withInspections(const Question& q, const Limit& limit) {
    std::set<Number> days;
    for (const auto& id : limit.with) {
        const auto* inspection = q.lookUp(id);
        for (const auto& done : q.item.done)
            if (!inspection ? done.requirement == id : Question{*inspection, q.item, q.inForce, q.today}.counts(done))
                days.insert(done.stamp.at.on().dayNumber());
    }
    Number since = 0;
    const auto own = q.momentsThatCount();
    for (const auto day : days)
        if (!own.empty() ? day > own.back().on().dayNumber()
                         : q.row.startsFrom == StartsFrom::Made || day >= q.item.entered.dayNumber())
            ++since;
    if (own.empty() && q.row.startsFrom == StartsFrom::Done)
        since = limit.every - 1;
    const auto all = static_cast<Number>(days.size());
    LimitAnswer answer;
    answer.left = std::max<Number>(limit.every - since, 1);
    answer.toleranceLeft = answer.left;
    answer.due = all + *answer.left;
    answer.last = std::max<Number>(all - since, 0);
    answer.share = static_cast<double>(*answer.left - 1) / static_cast<double>(limit.every);
    answer.standing = *answer.left == 1 && isComing(q, limit) ? "nearing" : "clear";
    return answer;
}

LimitAnswer answerOf(const Question& q, const Limit& limit) {
    LimitAnswer answer;
    if (!limit.with.empty())
        return withInspections(q, limit);
    const auto interval = running(q, limit);
    const auto now = onCalendar(limit.clock) ? std::optional(q.today) : read(q.item.clock, limit.clock);
    if (!interval || !now)
        return answer;
    const bool monthEnd = limit.day == DayRule::MonthEnd;
    const auto end = limit.tolerance > 0 ? plus(limit.clock, interval->due, limit.tolerance, monthEnd) : interval->due;
    answer.last = interval->last;
    answer.due = interval->due;
    answer.left = interval->due - *now;
    answer.toleranceLeft = end - *now;
    // What is printed may lie before what the pattern is counted from.
    const auto length = std::max<Number>(interval->due - interval->from, 1);
    answer.share = static_cast<double>(*answer.left) / static_cast<double>(length);
    const std::vector<Number> usual{600, 10, 10, 1, 30};
    const auto ahead = limit.lookAhead ? *limit.lookAhead : usual[static_cast<std::size_t>(limit.clock)];
    const bool inside = onCalendar(limit.clock) ? *now <= interval->due : *now < interval->due;
    const bool tolerated = onCalendar(limit.clock) ? *now <= end : *now < end;
    const bool near =
        limit.clock == ClockName::Months ? interval->due <= monthsLater(*now, ahead, false) : *answer.left <= ahead;
    if (inside)
        answer.standing = near ? "nearing" : "clear";
    else if (tolerated)
        answer.standing = "tolerance";
    else
        answer.standing = q.row.action == Action::Retire ? "spent" : "lapsed";
    return answer;
}

bool exempt(const Question& q) {
    for (const auto& [clock, amount] : q.row.exemptUntil) {
        if (onCalendar(clock)) {
            if (!isMade(q))
                return false;
            const Number made = q.item.made->lastDay().dayNumber();
            if (q.today >= plus(clock, made, amount, q.item.made->isMonth()))
                return false;
        } else {
            const auto figure = read(q.item.clock, clock);
            if (!figure || *figure >= amount)
                return false;
        }
    }
    return !q.row.exemptUntil.empty();
}

bool triggered(const Question& q) {
    for (const auto& event : q.item.events) {
        bool after = isIn(event.event, q.row.triggeredBy);
        for (const auto& done : q.item.done)
            if (q.counts(done) && event.stamp < done.stamp)
                after = false;
        if (after)
            return true;
    }
    return false;
}

int rank(const std::string& standing) {
    const std::vector<std::string> worstFirst{"spent", "lapsed", "unproven", "tolerance", "nearing", "clear", "closed"};
    for (int i = 0; i < 7; ++i)
        if (worstFirst[static_cast<std::size_t>(i)] == standing)
            return i;
    return -1;
}

/// The limit that no other one goes before.
std::size_t governing(const Requirement& row, const std::vector<LimitAnswer>& limits) {
    std::size_t best = 0;
    for (std::size_t i = 1; i < limits.size(); ++i) {
        const int worse = rank(limits[i].standing) - rank(limits[best].standing);
        const double share = limits[i].share.value_or(0) - limits[best].share.value_or(0);
        const bool first = row.whichever == Whichever::First;
        if (first ? worse < 0 || (worse == 0 && share < 0) : worse > 0 || (worse == 0 && share > 0))
            best = i;
    }
    return best;
}

}

Answer ask(const Requirement& requirement, const ItemFacts& item, const std::vector<Requirement>& inForce,
           CivilDate today) {
    const Question q{requirement, item, inForce, today.dayNumber()};
    Answer answer;
    answer.required = requirement.operations.empty();
    for (const auto& operation : item.operations)
        answer.required = answer.required || isIn(operation, requirement.operations);
    answer.standing = "closed";
    for (const auto& done : item.done)
        if (isIn(done.requirement, requirement.endedBy))
            return answer;
    if (requirement.once && !q.momentsThatCount().empty())
        return answer;
    for (const auto& limit : requirement.limits)
        answer.limits.push_back(answerOf(q, limit));
    answer.standing = "clear";
    if (triggered(q)) {
        answer.standing = requirement.action == Action::Retire ? "spent" : "lapsed";
    } else if (!exempt(q) && !answer.limits.empty()) {
        const auto at = governing(requirement, answer.limits);
        answer.standing = answer.limits[at].standing;
        answer.governs = requirement.limits[at].clock;
    }
    return answer;
}

}
