// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/balloon_lines.h"

#include "answers/due.h"
#include "problem/faults/use_fault.h"

#include <algorithm>
#include <functional>
#include <unordered_map>

namespace crownring {

namespace {

using Clocks = std::unordered_map<ItemId, Figures>;

/// What items went through since `from`: their clock on the day asked without what it was then, or when they came.
class Paces {
public:
    Paces(Clocks before, CivilDate from, CivilDate on) : m_before(std::move(before)), m_from(from), m_on(on) {}

    RecentUse operator()(const ItemFacts& item) const {
        const auto known = m_before.find(item.id);
        const auto& then = known == m_before.end() ? item.broughtForward : known->second;
        const auto since = known == m_before.end() ? item.entered : m_from;
        const auto gained = [](const auto& now, const auto& before) {
            using Count = std::decay_t<decltype(*now)>;
            return now && before ? *now - *before : Count{};
        };
        return {{gained(item.clock.minutes, then.minutes), gained(item.clock.landings, then.landings),
                 gained(item.clock.inflations, then.inflations)},
                daysBetween(since, m_on)};
    }

private:
    Clocks m_before;
    CivilDate m_from;
    CivilDate m_on;
};

Result<Paces> pacesOn(Books& books, const DueList& due, bool everything, CivilDate on) {
    const auto from = addMonths(on, -monthsOfRecentUse, DayRule::Same);
    Scope scope;
    if (!everything)
        for (const auto& item : due.items)
            scope.items.push_back(item.id);
    Clocks clocks;
    if (everything || !scope.items.empty()) {
        const auto facts = books.facts(scope, from);
        if (!facts)
            return tl::unexpected(facts.error());
        clocks.reserve(facts->size());
        for (const auto& item : *facts)
            clocks.emplace(item.id, item.clock);
    }
    return Paces(std::move(clocks), from, on);
}

Result<std::vector<BalloonCard>> cardsOf(Books& books, const std::optional<Registration>& balloon, CivilDate on,
                                         Outside outside) {
    auto cards = books.balloons(on);
    if (cards && !balloon && outside == Outside::LeftOut)
        std::erase_if(*cards, [](const BalloonCard& card) { return !card.inService(); });
    if (!cards || !balloon)
        return cards;
    std::erase_if(*cards, [&](const BalloonCard& card) { return card.balloon != *balloon; });
    if (cards->empty())
        return problem(UseFault::BalloonNotYetThere, {*balloon, on});
    return cards;
}

/// @param paceOf all clocks of the fleet: not copied for each balloon
Headlines headlinesOf(const DueList& due, const PaceOf& paceOf) {
    std::unordered_map<Registration, std::vector<const DueRow*>> rows;
    for (const auto& row : due.rows)
        if (row.item->balloon)
            rows[*row.item->balloon].push_back(&row);
    Headlines governing;
    for (const auto& [balloon, own] : rows)
        governing.emplace(balloon, headlineOf(own, paceOf, due.on));
    return governing;
}

}

Result<Headlines> headlines(Books& books, const DueList& due, bool everything) {
    const auto paces = pacesOn(books, due, everything, due.on);
    return paces.map([&](const Paces& known) { return headlinesOf(due, std::cref(known)); });
}

Result<Governing> governing(Books& books, const DueList& due, bool everything) {
    const auto paces = pacesOn(books, due, everything, due.on);
    if (!paces)
        return tl::unexpected(paces.error());
    const PaceOf paceOf = std::cref(*paces);
    Governing answer{headlinesOf(due, paceOf), {}};
    std::unordered_map<const ItemFacts*, std::vector<const DueRow*>> rows;
    for (const auto& row : due.rows)
        rows[row.item].push_back(&row);
    for (const auto& [item, own] : rows)
        if (const auto* row = headlineOf(own, paceOf, due.on).row)
            answer.items.emplace(item->id, row);
    return answer;
}

Result<std::vector<const DueRow*>> dueAsItComes(Books& books, const DueList& due) {
    const auto paces = pacesOn(books, due, false, due.on);
    if (!paces)
        return tl::unexpected(paces.error());
    std::vector<const DueRow*> rows;
    for (const auto& row : due.rows)
        rows.push_back(&row);
    return asTheyCome(std::move(rows), std::cref(*paces), due.on);
}

Result<BalloonLines> balloonLines(Books& books, const std::optional<Registration>& balloon, CivilDate on,
                                  Outside outside) {
    auto cards = cardsOf(books, balloon, on, outside);
    auto list = cards ? due(books, {balloon, {}}, on, outside) : Result<DueList>(tl::unexpected(cards.error()));
    if (!list)
        return tl::unexpected(list.error());
    BalloonLines answer;
    answer.due = std::make_shared<const DueList>(std::move(*list));
    const auto governing = headlines(books, *answer.due, !balloon);
    if (!governing)
        return tl::unexpected(governing.error());
    struct Fitted {
        std::int64_t items = 0;
        std::vector<ItemId> outOfService;
    };
    std::unordered_map<Registration, Fitted> fitted;
    for (const auto& item : answer.due->items) {
        if (!item.balloon)
            continue;
        auto& its = fitted[*item.balloon];
        ++its.items;
        if (item.out && !item.out->with)
            its.outOfService.push_back(item.id);
    }
    for (auto& card : *cards) {
        BalloonLine line;
        if (const auto found = governing->find(card.balloon); found != governing->end())
            line.headline = found->second;
        if (card.inService()) {
            auto& its = fitted[card.balloon];
            line.outOfService = std::move(its.outOfService);
            line.notEntered = card.items - its.items;
        }
        line.card = std::move(card);
        answer.lines.push_back(std::move(line));
    }
    return answer;
}

}
