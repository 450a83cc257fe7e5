// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/standing/limit_state.h"

#include <algorithm>

namespace crownring {

namespace {

/// `from` and so much later, in the unit of the clock. A negative length is earlier.
std::int64_t later(ClockName clock, std::int64_t from, std::int64_t length, DayRule rule) {
    if (clock == ClockName::Months)
        return addMonths(CivilDate::fromDayNumber(from), length, rule).dayNumber();
    if (clock == ClockName::Days)
        return addDays(CivilDate::fromDayNumber(from), length).dayNumber();
    return from + length;
}

std::optional<Interval> sinceOrigin(std::optional<std::int64_t> origin, const Limit& limit, DayRule rule) {
    if (!origin)
        return std::nullopt;
    return Interval{*origin, *origin, later(limit.clock, *origin, limit.first.value_or(limit.every), rule)};
}

/// The interval that runs before anything is done.
std::optional<Interval> firstInterval(const Requirement& requirement, const Limit& limit, const ItemFacts& item) {
    const bool calendar = isCalendar(limit.clock);
    switch (requirement.startsFrom) {
    case StartsFrom::Done:
        return std::nullopt;
    case StartsFrom::Made:
        if (!calendar)
            return sinceOrigin(0, limit, limit.day);
        if (!item.made)
            return std::nullopt;
        // A month stamped is good through its last day.
        return sinceOrigin(item.made->lastDay().dayNumber(), limit,
                           item.made->isMonth() ? DayRule::MonthEnd : limit.day);
    case StartsFrom::Entered:
        return sinceOrigin(calendar ? item.entered.dayNumber() : figureOf(item.broughtForward, limit.clock), limit,
                           limit.day);
    }
    return std::nullopt;
}

std::optional<std::int64_t> amountOf(const PerClock& amounts, ClockName clock) {
    const auto found = std::ranges::find(amounts, clock, &PerClock::value_type::first);
    return found == amounts.end() ? std::nullopt : std::optional(found->second);
}

/// The earliest moment at which the pattern of `due` is kept; days or months serve any calendar limit, its own unit
/// first.
std::optional<std::int64_t> windowOpens(const PerClock& window, ClockName clock, std::int64_t due) {
    if (const auto length = amountOf(window, clock))
        return later(clock, due, -*length, DayRule::Same);
    if (!isCalendar(clock))
        return std::nullopt;
    const auto other = clock == ClockName::Months ? ClockName::Days : ClockName::Months;
    if (const auto length = amountOf(window, other))
        return later(other, due, -*length, DayRule::Same);
    return std::nullopt;
}

/// What the next interval counts from, done at `done` with `due` before it.
std::int64_t countedFrom(NextFrom nextFrom, const Act& act, ClockName clock, std::int64_t done, std::int64_t due) {
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

std::int64_t lengthAfter(const Requirement& requirement, const Limit& limit, const Act& act) {
    if (limit.clock != ClockName::Months || act.method.empty())
        return limit.every;
    const auto found = std::ranges::find(requirement.byMethod, act.method,
                                         [](const auto& entry) { return std::string_view(entry.first); });
    return found == requirement.byMethod.end() ? limit.every : found->second;
}

std::optional<Interval> nextInterval(const Requirement& requirement, const Limit& limit, const Act& act,
                                     const std::optional<Interval>& before) {
    const auto done = isCalendar(limit.clock) ? act.on.dayNumber() : figureOf(act.clock, limit.clock);
    if (!done)
        return std::nullopt;
    const auto from = before ? countedFrom(requirement.nextFrom, act, limit.clock, *done, before->due) : *done;
    return Interval{*done, from, later(limit.clock, from, lengthAfter(requirement, limit, act), limit.day)};
}

bool isNear(const Limit& limit, std::int64_t due, std::int64_t now) {
    const auto lookAhead = limit.lookAhead.value_or(defaultLookAhead(limit.clock));
    if (limit.clock == ClockName::Months)
        return due <= later(limit.clock, now, lookAhead, DayRule::Same);
    return due - now <= lookAhead;
}

/// @param toleranceLeft up to the last good day on the calendar, to the count at which nothing is left otherwise.
Standing standingAt(const Requirement& requirement, const Limit& limit, const Interval& interval, std::int64_t now,
                    std::int64_t toleranceLeft) {
    // The due date itself is good; a count that is reached is used up.
    const std::int64_t least = isCalendar(limit.clock) ? 0 : 1;
    if (interval.due - now >= least)
        return isNear(limit, interval.due, now) ? Standing::Nearing : Standing::Clear;
    if (toleranceLeft >= least)
        return Standing::Tolerance;
    return requirement.action == Action::Retire ? Standing::Spent : Standing::Lapsed;
}

}

std::optional<std::int64_t> figureOf(const Figures& figures, ClockName clock) {
    const auto value = [](const auto& figure) {
        return figure ? std::optional(figure->value()) : std::optional<std::int64_t>();
    };
    switch (clock) {
    case ClockName::Minutes:
        return value(figures.minutes);
    case ClockName::Landings:
        return value(figures.landings);
    case ClockName::Inflations:
        return value(figures.inflations);
    case ClockName::Months:
    case ClockName::Days:
        return std::nullopt;
    }
    return std::nullopt;
}

std::optional<Interval> runningInterval(const Requirement& requirement, const Limit& limit, const ItemFacts& item,
                                        std::span<const Act> acts) {
    auto interval = firstInterval(requirement, limit, item);
    // History on paper comes before the origin `entered`: nothing was due before it.
    if (requirement.startsFrom == StartsFrom::Entered && !acts.empty() && acts.front().on < item.entered)
        interval.reset();
    // Counted from when it was done, only the last act matters.
    if (requirement.nextFrom == NextFrom::Done && !acts.empty())
        return nextInterval(requirement, limit, acts.back(), std::nullopt);
    for (const auto& act : acts)
        interval = nextInterval(requirement, limit, act, interval);
    return interval;
}

LimitState limitState(const Requirement& requirement, const Limit& limit, const ItemFacts& item,
                      std::span<const Act> acts, CivilDate today) {
    LimitState state;
    state.clock = limit.clock;
    const auto interval = runningInterval(requirement, limit, item, acts);
    const auto now = isCalendar(limit.clock) ? today.dayNumber() : figureOf(item.clock, limit.clock);
    if (!interval || !now)
        return state;
    const auto end =
        limit.tolerance == 0 ? interval->due : later(limit.clock, interval->due, limit.tolerance, limit.day);
    state.last = interval->last;
    state.due = interval->due;
    state.left = interval->due - *now;
    state.toleranceLeft = end - *now;
    state.standing = standingAt(requirement, limit, *interval, *now, *state.toleranceLeft);
    // The interval is empty only where it runs into the end of the calendar.
    const auto length = std::max<std::int64_t>(interval->due - interval->from, 1);
    state.share = static_cast<double>(*state.left) / static_cast<double>(length);
    return state;
}

}
