// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/forecast/items_ahead.h"

#include "answers/forecast/fleet_use.h"

namespace crownring {

Result<ItemsAhead> ItemsAhead::read(Books& books, const DueList& due, CivilDate known, Wanted wanted) {
    ItemsAhead items(due, known);
    if (const auto read = items.readAll(books, wanted); !read)
        return tl::unexpected(read.error());
    return items;
}

Result<void> ItemsAhead::readAll(Books& books, Wanted wanted) {
    std::unordered_set<ItemId> limited;
    for (const auto& row : m_due->rows)
        if (hangsOnUse(row.state) && !row.item->out)
            limited.insert(row.item->id);
    if (limited.empty() && wanted == Wanted::WhereLimited)
        return {};
    auto logs = everyLog(books, m_known);
    if (!logs)
        return tl::unexpected(logs.error());
    m_logs = std::move(*logs);
    m_pattern = patternOf(m_logs, m_known);
    const auto planned = plannedFrom(books, addDays(m_known, 1), m_known);
    if (!planned)
        return tl::unexpected(planned.error());
    m_plans = PlansOfSubjects(*planned);
    return readBalloons(books, limited);
}

/// The paces of the balloons that items with short logs are on.
Result<void> ItemsAhead::readBalloons(Books& books, const std::unordered_set<ItemId>& limited) {
    std::unordered_set<Registration> wanted;
    for (const auto& item : m_due->items)
        if (item.balloon && limited.contains(item.id) && isShortOf(item.id))
            wanted.insert(*item.balloon);
    if (wanted.empty())
        return {};
    const auto cards = books.balloons(m_known);
    if (!cards)
        return tl::unexpected(cards.error());
    for (const auto& card : *cards) {
        if (!wanted.contains(card.balloon))
            continue;
        const auto log = logOf(books, card, m_known);
        if (!log)
            return tl::unexpected(log.error());
        if (const auto pace = flownPaceOf(*log, m_pattern))
            m_paces.emplace(card.balloon, *pace);
    }
    return {};
}

bool ItemsAhead::isShortOf(const ItemId& item) const {
    const auto place = m_logs.ofItem.find(item);
    return place != m_logs.ofItem.end() && isShort(m_logs.logs[place->second]);
}

DatesAhead* ItemsAhead::datesOf(const ItemFacts& item) {
    const auto place = m_logs.ofItem.find(item.id);
    if (item.out || place == m_logs.ofItem.end())
        return nullptr;
    std::optional<double> pace;
    if (item.balloon && isShortOf(item.id))
        if (const auto known = m_paces.find(*item.balloon); known != m_paces.end())
            pace = known->second;
    const auto planned = m_plans.keyOf(item.balloon, item.id);
    auto& ahead = m_ahead[{place->second, pace, planned}];
    if (!ahead)
        ahead.emplace(UseAhead(crownring::utilisationOf(inMonths(m_logs.logs[place->second]), m_pattern, pace),
                               addDays(m_known, 1), m_plans.of(planned)));
    return &*ahead;
}

const Utilisation* ItemsAhead::utilisationOf(const ItemFacts& item) {
    const auto* ahead = of(item);
    return ahead ? &ahead->utilisation() : nullptr;
}

Result<const UseAhead*> ItemsAheadWhenAsked::of(const ItemFacts& item) {
    if (!m_items) {
        auto read = ItemsAhead::read(m_books, m_due, m_known, ItemsAhead::Wanted::Always);
        if (!read)
            return tl::unexpected(read.error());
        m_items = std::move(*read);
    }
    return m_items->of(item);
}

}
