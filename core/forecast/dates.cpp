// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/dates.h"

#include "rules/standing/limit_state.h"

#include <algorithm>

namespace crownring {

namespace {

std::optional<UseClock> useClockOf(ClockName clock) {
    switch (clock) {
    case ClockName::Minutes:
        return UseClock::Minutes;
    case ClockName::Landings:
        return UseClock::Landings;
    case ClockName::Inflations:
        return UseClock::Inflations;
    case ClockName::Months:
    case ClockName::Days:
    case ClockName::Inspections:
        break;
    }
    return std::nullopt;
}

using Day = std::optional<CivilDate>; ///< nothing: not within the horizon

Day earlier(Day a, Day b) { return a && b ? std::min(*a, *b) : a ? a : b; }
Day later(Day a, Day b) { return a && b ? Day(std::max(*a, *b)) : std::nullopt; }

DateBand joined(const DateBand& a, const DateBand& b, Whichever whichever) {
    const auto join = whichever == Whichever::First ? earlier : later;
    return {join(a.p10, b.p10), join(a.p50, b.p50), join(a.p90, b.p90)};
}

bool isAheadOf(Standing standing) { return standing == Standing::Clear || standing == Standing::Nearing; }

}

DateBand usedUp(const UseAhead& ahead, UseClock clock, ClockCount count) {
    const auto left = static_cast<double>(count.value());
    DateBand band{ahead.reached(clock, left, 0.1), {}, {}};
    if (band.p10)
        band.p50 = ahead.reached(clock, left, 0.5);
    if (band.p50)
        band.p90 = ahead.reached(clock, left, 0.9);
    if (band.p50)
        band.p50 = std::max(*band.p10, *band.p50);
    if (band.p90)
        band.p90 = std::max(*band.p50, *band.p90);
    return band;
}

DateBand DatesAhead::usedUp(UseClock clock, ClockCount left, const std::optional<CivilDate>& certain) {
    if (const auto known = m_known.find({clock, left}); known != m_known.end())
        return known->second;
    if (certain && m_ahead.chanceOf(clock, static_cast<double>(left.value()), *certain) < 0.1)
        return {};
    return m_known[{clock, left}] = crownring::usedUp(m_ahead, clock, left);
}

bool isLimitedByUse(const Assessment& state) {
    return std::ranges::any_of(state.limits, [](const LimitState& limit) { return limit.usage() != nullptr; });
}

bool hangsOnUse(const Assessment& state) { return isAheadOf(state.standing) && isLimitedByUse(state); }

std::optional<DateBand> fallsDue(const Assessment& state, Whichever whichever, DatesAhead* ahead, CivilDate today) {
    if (!isAheadOf(state.standing))
        return std::nullopt;
    Day certain;
    if (whichever == Whichever::First)
        for (const auto& limit : state.limits)
            if (const auto* reach = limit.calendar())
                certain = earlier(certain, reach->due);
    std::optional<DateBand> band;
    const auto join = [&](const DateBand& other) { band = band ? joined(*band, other, whichever) : other; };
    for (const auto& limit : state.limits) {
        if (const auto* reach = limit.calendar(); reach && reach->due >= today)
            join({reach->due, reach->due, reach->due});
        else if (const auto* use = limit.usage(); use && isGood(use->left))
            if (const auto clock = useClockOf(limit.clock))
                join(ahead ? ahead->usedUp(*clock, use->left, certain) : DateBand());
    }
    if (band && !band->p10 && !band->p50 && !band->p90)
        return std::nullopt;
    return band;
}

}
