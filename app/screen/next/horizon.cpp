// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/horizon.h"

#include "words/words.h"

#include <algorithm>

namespace crownring::screen {

using namespace words;

namespace {

int calendarBin(CivilDate due, CivilDate on) {
    const auto days = daysBetween(on, due).value();
    if (days < 0)
        return OverdueBin;
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

}

std::optional<Place> horizonPlace(const DueRow& row, CivilDate on) {
    const auto& state = row.state;
    if (state.standing == Standing::Closed || !isRequired(state))
        return std::nullopt;
    if (state.standing == Standing::Unproven)
        return Place{false, UnprovenBin};
    if (state.because == Because::Triggered)
        return Place{false, OverdueBin};
    const auto* limit = governingLimit(state);
    if (const auto* reach = limit ? limit->usage() : nullptr)
        return Place{true, useBin(limit->clock, reach->left)};
    if (const auto* reach = limit ? limit->calendar() : nullptr)
        return Place{false, calendarBin(reach->due, on)};
    return std::nullopt;
}

}
