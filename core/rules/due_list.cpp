// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due_list.h"

#include "rules/due_order.h"

#include <algorithm>
#include <future>
#include <thread>

namespace crownring {

namespace {

/// What is in force for each item, by its place in the list.
std::vector<const RequirementSet*> setsOf(const std::vector<ItemFacts>& items, const Obligations& obligations,
                                          const std::optional<Registration>& flyingAs) {
    std::vector<const RequirementSet*> sets;
    sets.reserve(items.size());
    for (const auto& item : items)
        sets.push_back(&obligations.of(item.id, flyingAs, item.balloon));
    return sets;
}

/// The items of a list that are assessed together: a large fleet is shared out among the processors.
struct Part {
    std::size_t from = 0;
    std::size_t to = 0;
    std::vector<DueRow> rows;
    std::vector<DueKey> keys; ///< in the order of the list
};

std::vector<Part> partsOf(std::size_t items) {
    constexpr std::size_t worthAThread = 4'000;
    const auto count =
        std::clamp<std::size_t>(items / worthAThread, 1, std::max(std::thread::hardware_concurrency(), 1U));
    std::vector<Part> parts(count);
    for (std::size_t i = 0; i < count; ++i) {
        parts[i].from = items * i / count;
        parts[i].to = items * (i + 1) / count;
    }
    return parts;
}

void assessPart(Part& part, const std::vector<ItemFacts>& items, const std::vector<const RequirementSet*>& sets,
                const DueOrder& order, CivilDate on) {
    std::size_t most = 0;
    for (auto i = part.from; i < part.to; ++i)
        most += sets[i]->all().size();
    part.rows.reserve(most);
    part.keys.reserve(most);
    for (auto i = part.from; i < part.to; ++i)
        for (const auto& [requirement, programme] : sets[i]->all()) {
            if (!binds(*requirement, items[i]))
                continue;
            part.rows.push_back({&items[i], requirement, programme, assess(*requirement, items[i], *sets[i], on)});
            part.keys.push_back(order.keyOf(part.rows.back(), static_cast<std::uint32_t>(part.keys.size())));
        }
    std::ranges::sort(part.keys);
}

/// The rows of all parts in one order.
std::vector<DueRow> merged(std::vector<Part> parts) {
    struct Next {
        const DueKey* key;
        const DueKey* end;
        std::vector<DueRow>* rows;
    };
    std::size_t count = 0;
    std::vector<Next> queues;
    for (auto& part : parts) {
        count += part.rows.size();
        queues.push_back({part.keys.data(), part.keys.data() + part.keys.size(), &part.rows});
    }
    std::vector<DueRow> rows;
    rows.reserve(count);
    while (rows.size() < count) {
        std::erase_if(queues, [](const Next& next) { return next.key == next.end; });
        auto& first = *std::ranges::min_element(queues, [](const Next& a, const Next& b) { return *a.key < *b.key; });
        rows.push_back(std::move((*first.rows)[first.key->row]));
        ++first.key;
    }
    return rows;
}

}

DueList dueList(std::vector<ItemFacts> items, Obligations obligations, CivilDate on,
                const std::optional<Registration>& flyingAs) {
    DueList list;
    list.on = on;
    list.items = std::move(items);
    list.obligations = std::make_unique<Obligations>(std::move(obligations));
    const auto sets = setsOf(list.items, *list.obligations, flyingAs);
    const DueOrder order(list.items, sets);
    auto parts = partsOf(list.items.size());
    std::vector<std::future<void>> others;
    for (std::size_t i = 1; i < parts.size(); ++i)
        others.push_back(std::async(std::launch::async, assessPart, std::ref(parts[i]), std::cref(list.items),
                                    std::cref(sets), std::cref(order), on));
    assessPart(parts.front(), list.items, sets, order, on);
    for (auto& other : others)
        other.get();
    list.rows = merged(std::move(parts));
    return list;
}

}
