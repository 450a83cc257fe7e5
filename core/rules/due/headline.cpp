// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due/headline.h"

#include "rules/standing/limit_state.h"

#include <algorithm>
#include <tuple>

namespace crownring {

namespace {

/// Of the limits that stand as the row does.
Headline comingLimit(const DueRow& row, const RecentUse& pace, CivilDate today) {
    Headline first{&row};
    const bool last = row.requirement->whichever == Whichever::Last;
    for (const auto& limit : row.state.limits) {
        const auto comes = comesOn(limit, pace, today);
        // At no known pace nobody knows when it comes; where it is the limit by which the row stands, it comes first.
        const auto decides = [&](const LimitState& each) { return each.standing == row.state.standing; };
        if (!last && first.limit && decides(limit) != decides(*first.limit) && (!comes || !first.comes)) {
            if (decides(limit))
                first = {&row, limit, comes};
            continue;
        }
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
    if (const auto* reach = limit.calendar())
        return reach->due;
    const auto* reach = limit.usage();
    const auto used = figureOf(pace.use, limit.clock).value();
    if (!reach || used <= 0 || pace.over <= Days(0))
        return std::nullopt;
    // Whole days of which the last still has something left.
    const auto days =
        static_cast<double>(reach->left.value()) * static_cast<double>(pace.over.value()) / static_cast<double>(used);
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

std::vector<const DueRow*> asTheyCome(std::vector<const DueRow*> rows, const PaceOf& paceOf, CivilDate today) {
    struct Met {
        const DueRow* row;
        std::optional<CivilDate> comes;
    };
    std::vector<Met> met;
    for (const auto* row : rows)
        met.push_back(
            {row, isAhead(row->state.standing) ? comingLimit(*row, paceOf(*row->item), today).comes : std::nullopt});
    std::ranges::stable_sort(met, {}, [](const Met& each) {
        return std::tuple(!isBinding(*each.row), each.row->state.standing, !each.comes,
                          each.comes.value_or(CivilDate()));
    });
    std::ranges::transform(met, rows.begin(), &Met::row);
    return rows;
}

}
