// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due/due_order.h"

#include <algorithm>
#include <limits>
#include <unordered_set>

namespace crownring {

namespace {

int placeOf(const Assessment& state) { return isRequired(state) ? static_cast<int>(state.standing) : standingCount; }

/// Without a share a row is as bad as its standing can be, but for a clear one: nothing of it is used up.
double shareOf(const Assessment& state) {
    constexpr auto end = std::numeric_limits<double>::infinity();
    return state.share.value_or(state.standing == Standing::Clear ? end : -end);
}

/// By their place in the vector.
std::vector<std::uint32_t> itemRanks(const std::vector<ItemFacts>& items) {
    std::vector<const ItemFacts*> byName;
    byName.reserve(items.size());
    for (const auto& item : items)
        byName.push_back(&item);
    const auto before = [](const ItemFacts* a, const ItemFacts* b) { return a->id < b->id; };
    if (!std::ranges::is_sorted(byName, before))
        std::ranges::sort(byName, before);
    std::vector<std::uint32_t> ranks(items.size());
    std::uint32_t rank = 0;
    for (const auto* item : byName)
        ranks[static_cast<std::size_t>(item - items.data())] = rank++;
    return ranks;
}

/// Equal names, of different programmes, share one rank.
std::unordered_map<const Requirement*, std::uint32_t> requirementRanks(const std::vector<const RequirementSet*>& sets,
                                                                       const std::deque<Requirement>& defects) {
    std::vector<const Requirement*> byName;
    for (const auto& defect : defects)
        byName.push_back(&defect);
    for (const auto* set : std::unordered_set<const RequirementSet*>(sets.begin(), sets.end()))
        for (const auto& held : set->all())
            byName.push_back(held.requirement);
    std::ranges::sort(byName, [](const Requirement* a, const Requirement* b) { return a->id < b->id; });
    std::unordered_map<const Requirement*, std::uint32_t> ranks(byName.size());
    std::uint32_t rank = 0;
    for (std::size_t i = 0; i < byName.size(); ++i) {
        if (i > 0 && byName[i - 1]->id != byName[i]->id)
            ++rank;
        ranks.emplace(byName[i], rank);
    }
    return ranks;
}

}

DueOrder::DueOrder(const std::vector<ItemFacts>& items, const std::vector<const RequirementSet*>& sets,
                   const std::deque<Requirement>& defects)
    : m_first(items.data()), m_items(itemRanks(items)), m_requirements(requirementRanks(sets, defects)) {}

DueKey DueOrder::keyOf(const DueRow& row, std::uint32_t number) const {
    const std::uint64_t item = m_items[static_cast<std::size_t>(row.item - m_first)];
    return {placeOf(row.state), number, shareOf(row.state), item << 32 | m_requirements.at(row.requirement)};
}

bool comesBefore(const DueRow& a, const DueRow& b) {
    if (placeOf(a.state) != placeOf(b.state))
        return placeOf(a.state) < placeOf(b.state);
    if (shareOf(a.state) != shareOf(b.state))
        return shareOf(a.state) < shareOf(b.state);
    if (a.item->id != b.item->id)
        return a.item->id < b.item->id;
    return a.requirement->id < b.requirement->id;
}

}
