// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/horizon.h"

#include "words/words.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

int calendarBin(CivilDate due, CivilDate on) {
    const auto days = daysBetween(on, due).value();
    return days >= 7 * weeksShown ? LaterBin : FirstWeekBin + static_cast<int>(days / 7);
}

int useBin(ClockName clock, ClockCount left) {
    if (clock != ClockName::Minutes)
        return useBins - 1;
    if (left <= ClockCount(0))
        return 0;
    const auto step = std::lower_bound(useSteps.begin(), useSteps.end(), left.value());
    return 1 + static_cast<int>(step - useSteps.begin());
}

/// Of `last` only the limit that governs says when it is due; else the first of each lane does.
bool speaks(const DueRow& row, const LimitState& limit) {
    return row.requirement == nullptr || row.requirement->whichever == Whichever::First ||
           &limit == governingLimit(row.state);
}

/// What flies in its tolerance is past its limit too, be it of hours.
bool isPast(const Assessment& state) {
    return state.standing == Standing::Spent || state.standing == Standing::Lapsed ||
           state.standing == Standing::Tolerance;
}

}

Places horizonPlaces(const DueRow& row, CivilDate on) {
    const auto& state = row.state;
    if (state.standing == Standing::Closed || !isRequired(state))
        return {};
    if (state.standing == Standing::Unproven)
        return {UnprovenBin, std::nullopt};
    Places places;
    std::optional<CivilDate> due;
    for (const auto& limit : state.limits) {
        if (!speaks(row, limit))
            continue;
        if (const auto* reach = limit.calendar())
            due = due ? std::min(*due, reach->due) : reach->due;
        if (const auto* reach = limit.usage()) {
            const int bin = useBin(limit.clock, reach->left);
            places.use = places.use ? std::min(*places.use, bin) : bin;
        }
    }
    if (isPast(state))
        places.calendar = OverdueBin;
    else // what is exempt may have a date that passed and says nothing
        places.calendar = due && *due >= on ? calendarBin(*due, on) : NoDateBin;
    return places;
}

bool comesUpTo(const DueRow& row, CivilDate on, CivilDate last) {
    const auto& state = row.state;
    if (state.standing == Standing::Closed || !isRequired(state))
        return false;
    if (state.standing == Standing::Unproven || isPast(state))
        return true;
    const bool near = state.standing == Standing::Nearing;
    bool dated = false;
    for (const auto& limit : state.limits) {
        if (!speaks(row, limit))
            continue;
        if (const auto* reach = limit.calendar()) {
            if (reach->due >= on && reach->due <= last)
                return true;
            dated = true;
        }
        if (near && limit.usage() && limit.standing != Standing::Clear)
            return true;
    }
    return near && !dated;
}

}
