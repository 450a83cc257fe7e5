// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/standing/limit_state.h"

#include <algorithm>

namespace crownring {

namespace {

/// `from` and so much later, in the unit of the clock. A negative length is earlier.
CivilDate later(ClockName clock, CivilDate from, std::int64_t length, DayRule rule) {
    return clock == ClockName::Months ? addMonths(from, length, rule) : addDays(from, length);
}
ClockCount later(ClockName, ClockCount from, std::int64_t length, DayRule) { return from + ClockCount(length); }

Days between(CivilDate from, CivilDate to) { return daysBetween(from, to); }
ClockCount between(ClockCount from, ClockCount to) { return to - from; }

template <class At>
Interval<At> sinceOrigin(At origin, const Limit& limit, DayRule rule) {
    return {origin, origin, later(limit.clock, origin, limit.first.value_or(limit.every), rule)};
}

/// The interval that runs before anything is done. The last argument says which of the two it is of.
std::optional<Interval<CivilDate>> firstInterval(const Requirement& requirement, const Limit& limit,
                                                 const ItemFacts& item, CivilDate today, CivilDate) {
    switch (requirement.startsFrom) {
    case StartsFrom::Done:
        return std::nullopt;
    case StartsFrom::Made:
        if (!isKnownMade(item, today))
            return std::nullopt;
        // A month stamped is good through its last day.
        return sinceOrigin(item.made->lastDay(), limit, item.made->isMonth() ? DayRule::MonthEnd : limit.day);
    case StartsFrom::Entered:
        return sinceOrigin(item.entered, limit, limit.day);
    }
    return std::nullopt;
}

std::optional<Interval<ClockCount>> firstInterval(const Requirement& requirement, const Limit& limit,
                                                  const ItemFacts& item, CivilDate, ClockCount) {
    switch (requirement.startsFrom) {
    case StartsFrom::Done:
        return std::nullopt;
    case StartsFrom::Made:
        return sinceOrigin(ClockCount(0), limit, limit.day);
    case StartsFrom::Entered:
        if (const auto origin = figureOf(item.broughtForward, limit.clock))
            return sinceOrigin(*origin, limit, limit.day);
        return std::nullopt;
    }
    return std::nullopt;
}

std::optional<CivilDate> doneAt(const Act& act, ClockName, CivilDate) { return act.on; }
std::optional<ClockCount> doneAt(const Act& act, ClockName clock, ClockCount) { return figureOf(act.clock, clock); }

std::optional<std::int64_t> amountOf(const PerClock& amounts, ClockName clock) {
    const auto found = std::ranges::find(amounts, clock, &PerClock::value_type::first);
    return found == amounts.end() ? std::nullopt : std::optional(found->second);
}

/// The earliest moment at which the pattern of `due` is kept; days or months serve any calendar limit, its own unit
/// first.
std::optional<CivilDate> windowOpens(const PerClock& window, ClockName clock, CivilDate due) {
    const auto other = clock == ClockName::Months ? ClockName::Days : ClockName::Months;
    for (const auto unit : {clock, other})
        if (const auto length = amountOf(window, unit))
            return later(unit, due, -*length, DayRule::Same);
    return std::nullopt;
}
std::optional<ClockCount> windowOpens(const PerClock& window, ClockName clock, ClockCount due) {
    const auto length = amountOf(window, clock);
    return length ? std::optional(due - ClockCount(*length)) : std::nullopt;
}

/// What the next interval counts from, done at `done` with `due` before it.
template <class At>
At countedFrom(NextFrom nextFrom, const Act& act, ClockName clock, At done, At due) {
    switch (nextFrom) {
    case NextFrom::Done:
        return done;
    case NextFrom::Earlier:
        return std::min(done, due);
    case NextFrom::Kept: {
        const auto opens = windowOpens(*act.window, clock, due);
        return opens && *opens <= done && done <= due ? due : done;
    }
    }
    return done;
}

/// What the certificate itself says. The last argument says which of the two it is of.
std::optional<CivilDate> printed(const Act& act, CivilDate) { return act.expires; }
std::optional<ClockCount> printed(const Act&, ClockCount) { return std::nullopt; }

std::int64_t lengthAfter(const Requirement& requirement, const Limit& limit, const Act& act) {
    if (limit.clock != ClockName::Months || act.method.empty())
        return limit.every;
    const auto found = std::ranges::find(requirement.byMethod, act.method,
                                         [](const auto& entry) { return std::string_view(entry.first); });
    return found == requirement.byMethod.end() ? limit.every : found->second;
}

template <class At>
std::optional<Interval<At>> nextInterval(const Requirement& requirement, const Limit& limit, const Act& act,
                                         const std::optional<Interval<At>>& before) {
    const auto done = doneAt(act, limit.clock, At());
    if (!done)
        return std::nullopt;
    const auto from = before ? countedFrom(requirement.nextFrom, act, limit.clock, *done, before->due) : *done;
    return Interval<At>{
        *done, from,
        printed(act, At()).value_or(later(limit.clock, from, lengthAfter(requirement, limit, act), limit.day))};
}

/// Empty when there is nothing to count from.
template <class At>
std::optional<Interval<At>> runningInterval(const Requirement& requirement, const Limit& limit, const ItemFacts& item,
                                            std::span<const Act> acts, CivilDate today) {
    auto interval = firstInterval(requirement, limit, item, today, At());
    // History on paper comes before the origin `entered`: nothing was due before it.
    if (requirement.startsFrom == StartsFrom::Entered && !acts.empty() && acts.front().on < item.entered)
        interval.reset();
    // Counted from when it was done, only the last act matters.
    if (requirement.nextFrom == NextFrom::Done && !acts.empty())
        return nextInterval<At>(requirement, limit, acts.back(), std::nullopt);
    for (const auto& act : acts)
        interval = nextInterval(requirement, limit, act, interval);
    return interval;
}

std::int64_t lookAhead(const Limit& limit) { return limit.lookAhead.value_or(defaultLookAhead(limit.clock)); }

bool isNear(const Limit& limit, CivilDate due, CivilDate today) {
    return due <= later(limit.clock, today, lookAhead(limit), DayRule::Same);
}
bool isNear(const Limit& limit, ClockCount due, ClockCount now) { return due - now <= ClockCount(lookAhead(limit)); }

template <class Reach, class At>
LimitState stateOf(const Interval<At>& interval, const Limit& limit, Action action, At now) {
    const auto end = limit.tolerance == 0 ? interval.due : later(limit.clock, interval.due, limit.tolerance, limit.day);
    const Reach reach{interval.last, interval.due, between(now, interval.due), between(now, end)};
    LimitState state;
    state.clock = limit.clock;
    if (isGood(reach.left))
        state.standing = isNear(limit, interval.due, now) ? Standing::Nearing : Standing::Clear;
    else if (isGood(reach.toleranceLeft))
        state.standing = Standing::Tolerance;
    else
        state.standing = action == Action::Retire ? Standing::Spent : Standing::Lapsed;
    // The interval is empty only where it runs into the end of the calendar.
    const auto length = std::max<std::int64_t>(between(interval.from, interval.due).value(), 1);
    state.share = static_cast<double>(reach.left.value()) / static_cast<double>(length);
    state.reach = reach;
    return state;
}

template <class Value>
std::optional<ClockCount> asCount(const std::optional<Value>& figure) {
    return figure ? std::optional(ClockCount(figure->value())) : std::nullopt;
}

LimitState unproven(const Limit& limit) {
    LimitState state;
    state.clock = limit.clock;
    return state;
}

}

bool isKnownMade(const ItemFacts& item, CivilDate today) { return item.made && !isBefore(today, *item.made); }

std::optional<ClockCount> figureOf(const Figures& figures, ClockName clock) {
    switch (clock) {
    case ClockName::Minutes:
        return asCount(figures.minutes);
    case ClockName::Landings:
        return asCount(figures.landings);
    case ClockName::Inflations:
        return asCount(figures.inflations);
    case ClockName::Months:
    case ClockName::Days:
    case ClockName::Inspections:
        break;
    }
    return std::nullopt;
}

ClockCount figureOf(const Usage& use, ClockName clock) {
    return figureOf(Figures{use.minutes, use.landings, use.inflations}, clock).value_or(ClockCount(0));
}

LimitState stateIn(const Interval<CivilDate>& interval, const Limit& limit, Action action, CivilDate today) {
    return stateOf<CalendarReach>(interval, limit, action, today);
}

LimitState stateIn(const Interval<ClockCount>& interval, const Limit& limit, Action action, ClockCount now) {
    return stateOf<UsageReach>(interval, limit, action, now);
}

LimitState limitState(const Requirement& requirement, const Limit& limit, const ItemFacts& item,
                      std::span<const Act> acts, CivilDate today) {
    if (isCalendar(limit.clock)) {
        const auto interval = runningInterval<CivilDate>(requirement, limit, item, acts, today);
        return interval ? stateIn(*interval, limit, requirement.action, today) : unproven(limit);
    }
    const auto now = figureOf(item.clock, limit.clock);
    const auto interval = runningInterval<ClockCount>(requirement, limit, item, acts, today);
    return interval && now ? stateIn(*interval, limit, requirement.action, *now) : unproven(limit);
}

}
