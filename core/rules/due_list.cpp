// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due_list.h"

#include <algorithm>
#include <limits>
#include <unordered_map>

namespace crownring {

namespace {

/// 0 for spent to 6 for closed; 7 where the operation does not call for it.
int placeOf(const Assessment& state) {
    return state.because == Because::NotRequired ? standingCount : static_cast<int>(state.standing);
}

/// Without a share a row is as bad as its standing can be, but for a clear one: nothing of it is used up.
double shareOf(const Assessment& state) {
    constexpr auto end = std::numeric_limits<double>::infinity();
    return state.share.value_or(state.standing == Standing::Clear ? end : -end);
}

/// What a row is sorted by, without following pointers to its names.
struct Key {
    int place;
    double share;
    std::uint32_t item;
    std::uint32_t requirement;
    std::uint32_t row;
    auto operator<=>(const Key&) const = default;
};

/// The place of each named thing in the order of the names; equal names share one.
template <class Thing>
std::unordered_map<const Thing*, std::uint32_t> ranksByName(std::vector<const Thing*> things) {
    std::ranges::sort(things, [](const Thing* a, const Thing* b) { return a->id < b->id; });
    std::unordered_map<const Thing*, std::uint32_t> ranks(things.size());
    std::uint32_t rank = 0;
    for (std::size_t i = 0; i < things.size(); ++i) {
        if (i > 0 && things[i - 1]->id != things[i]->id)
            ++rank;
        ranks.emplace(things[i], rank);
    }
    return ranks;
}

std::vector<const Requirement*> requirementsIn(const std::vector<DueRow>& rows) {
    std::unordered_map<const Requirement*, bool> seen;
    std::vector<const Requirement*> requirements;
    for (const auto& row : rows)
        if (seen.emplace(row.requirement, true).second)
            requirements.push_back(row.requirement);
    return requirements;
}

/// Ranks of the items, by their place in the vector.
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

std::vector<Key> keysOf(const std::vector<DueRow>& rows, const std::vector<ItemFacts>& items) {
    const auto ofItem = itemRanks(items);
    const auto ofRequirement = ranksByName(requirementsIn(rows));
    std::vector<Key> keys;
    keys.reserve(rows.size());
    for (const auto& row : rows)
        keys.push_back({placeOf(row.state), shareOf(row.state),
                        ofItem[static_cast<std::size_t>(row.item - items.data())], ofRequirement.at(row.requirement),
                        static_cast<std::uint32_t>(keys.size())});
    return keys;
}

/// Sorts in place, following each cycle of moves, since a second list of all rows costs more than the sorting.
void sortRows(std::vector<DueRow>& rows, const std::vector<ItemFacts>& items) {
    auto keys = keysOf(rows, items);
    std::ranges::sort(keys);
    for (std::uint32_t start = 0; start < keys.size(); ++start) {
        if (keys[start].row == start)
            continue;
        auto held = std::move(rows[start]);
        auto to = start;
        for (auto from = keys[to].row; from != start; from = keys[to].row) {
            rows[to] = std::move(rows[from]);
            keys[to].row = to;
            to = from;
        }
        rows[to] = std::move(held);
        keys[to].row = to;
    }
}

/// What is in force for each item, by its place in the list.
std::vector<const RequirementSet*> setsOf(const std::vector<ItemFacts>& items, const Obligations& obligations,
                                          const std::optional<Registration>& flyingAs) {
    std::vector<const RequirementSet*> sets;
    sets.reserve(items.size());
    for (const auto& item : items)
        sets.push_back(&obligations.of(item.id, flyingAs, item.balloon));
    return sets;
}

}

DueList dueList(std::vector<ItemFacts> items, Obligations obligations, CivilDate on,
                const std::optional<Registration>& flyingAs) {
    DueList list;
    list.on = on;
    list.items = std::move(items);
    list.obligations = std::make_unique<Obligations>(std::move(obligations));
    const auto sets = setsOf(list.items, *list.obligations, flyingAs);
    std::size_t most = 0;
    for (const auto* set : sets)
        most += set->all().size();
    list.rows.reserve(most);
    for (std::size_t i = 0; i < sets.size(); ++i) {
        const auto& item = list.items[i];
        for (const auto& [requirement, programme] : sets[i]->all())
            if (binds(*requirement, item))
                list.rows.push_back({&item, requirement, programme, assess(*requirement, item, *sets[i], on)});
    }
    sortRows(list.rows, list.items);
    return list;
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
