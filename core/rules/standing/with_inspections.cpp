// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/standing/with_inspections.h"

#include <algorithm>
#include <set>

namespace crownring {

namespace {

/// The days on which an inspection that the limit goes with was carried out, by itself or by what satisfies it.
std::set<CivilDate> inspectionDays(const Limit& limit, const ItemFacts& item, const InForce& inForce) {
    std::set<CivilDate> days;
    for (const auto& id : limit.with) {
        if (const auto* inspection = inForce.find(id)) {
            const auto counting = countingActs(*inspection, item, inForce);
            for (const auto& act : counting.acts)
                days.insert(act.on);
            continue;
        }
        for (const auto& done : item.done)
            if (done.requirement == id)
                days.insert(done.stamp.at.on());
    }
    return days;
}

/// How many of them came after what they are counted from; nothing where that is not known.
std::optional<std::int64_t> countSince(const Requirement& requirement, const ItemFacts& item, std::span<const Act> acts,
                                       const std::set<CivilDate>& days) {
    if (!acts.empty())
        return std::distance(days.upper_bound(acts.back().on), days.end());
    switch (requirement.startsFrom) {
    case StartsFrom::Done:
        return std::nullopt;
    case StartsFrom::Made:
        return std::ssize(days);
    case StartsFrom::Entered:
        return std::distance(days.lower_bound(item.entered), days.end());
    }
    return std::nullopt;
}

bool carriesOut(const RequirementId& inspection, const InForce& inForce, std::span<const RequirementId> carriedOut) {
    const auto is = [&](const RequirementId& id) { return std::ranges::find(carriedOut, id) != carriedOut.end(); };
    const auto* known = inForce.find(inspection);
    return is(inspection) || (known && std::ranges::any_of(known->satisfiedBy, is));
}

}

LimitState stateWith(const Requirement& requirement, const Limit& limit, const ItemFacts& item,
                     std::span<const Act> acts, const InForce& inForce, bool comes) {
    const auto days = inspectionDays(limit, item, inForce);
    const auto all = std::ssize(days);
    const auto since = countSince(requirement, item, acts, days).value_or(limit.every - 1);
    const auto left = std::max<std::int64_t>(limit.every - since, 1);
    LimitState state;
    state.clock = ClockName::Inspections;
    state.standing = left == 1 && comes ? Standing::Nearing : Standing::Clear;
    state.reach = UsageReach{ClockCount(std::max<std::int64_t>(all - since, 0)), ClockCount(all + left),
                             ClockCount(left), ClockCount(left)};
    state.share = static_cast<double>(left - 1) / static_cast<double>(limit.every);
    return state;
}

bool isDueWith(const Requirement& requirement, const Assessment& state, const InForce& inForce,
               std::span<const RequirementId> carriedOut) {
    if (state.because == Because::Exempt || !isRequired(state))
        return false;
    for (std::size_t i = 0; i < requirement.limits.size() && i < state.limits.size(); ++i) {
        const auto* reach = state.limits[i].usage();
        if ((!reach || reach->left == ClockCount(1)) && // where a fact is missing it is rather asked
            std::ranges::any_of(requirement.limits[i].with,
                                [&](const RequirementId& id) { return carriesOut(id, inForce, carriedOut); }))
            return true;
    }
    return false;
}

}
