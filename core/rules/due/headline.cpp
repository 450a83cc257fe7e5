// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due/headline.h"

#include <algorithm>

namespace crownring {

namespace {

std::int64_t usedOf(const Usage& use, ClockName clock) {
    switch (clock) {
    case ClockName::Minutes:
        return use.minutes.value();
    case ClockName::Landings:
        return use.landings.value();
    case ClockName::Inflations:
        return use.inflations.value();
    case ClockName::Months:
    case ClockName::Days:
        break;
    }
    return 0;
}

/// Of the limits that stand as the row does.
Headline comingLimit(const DueRow& row, const RecentUse& pace, CivilDate today) {
    Headline first{&row};
    const bool last = row.requirement->whichever == Whichever::Last;
    for (const auto& limit : row.state.limits) {
        const auto comes = comesOn(limit, pace, today);
        const bool sooner = comes && (!first.comes || *comes < *first.comes);
        const bool later = first.limit && (!comes || (first.comes && *first.comes < *comes));
        if (!first.limit || (last ? later : sooner)) {
            first.limit = limit;
            first.comes = comes;
        }
    }
    return first;
}

Headline decidingLimit(const DueRow& row) {
    Headline headline{&row};
    if (const auto* limit = governingLimit(row.state))
        headline.limit = *limit;
    return headline;
}

bool isAhead(Standing standing) { return standing == Standing::Clear || standing == Standing::Nearing; }

}

bool isBinding(const DueRow& row) {
    return row.requirement->force == Force::Mandatory && row.requirement->blocks == Blocks::Flight &&
           isRequired(row.state);
}

std::optional<CivilDate> comesOn(const LimitState& limit, const RecentUse& pace, CivilDate today) {
    if (!limit.due || !limit.left)
        return std::nullopt;
    if (isCalendar(limit.clock))
        return CivilDate::fromDayNumber(*limit.due);
    const auto used = usedOf(pace.use, limit.clock);
    if (used <= 0 || pace.days <= 0)
        return std::nullopt;
    // Whole days of which the last still has something left.
    const auto days = static_cast<double>(*limit.left) * static_cast<double>(pace.days) / static_cast<double>(used);
    constexpr double mostDays = 3'000'000;
    return addDays(today, static_cast<std::int64_t>(std::clamp(days, -mostDays, mostDays)));
}

Headline headlineOf(std::span<const DueRow* const> rows, const PaceOf& paceOf, CivilDate today) {
    Headline governs;
    for (const auto* row : rows) {
        if (!isBinding(*row))
            continue;
        if (governs.row && row->state.standing != governs.row->state.standing)
            break;
        if (!isAhead(row->state.standing)) {
            governs = decidingLimit(*row);
            break;
        }
        auto next = comingLimit(*row, paceOf(*row->item), today);
        if (!governs.row || (next.comes && (!governs.comes || *next.comes < *governs.comes)))
            governs = next;
    }
    return governs;
}

}
