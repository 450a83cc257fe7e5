// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/parts/pool.h"

#include "answers/due.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace crownring {

namespace {

void take(GoodUntil& good, const DueRow& row) {
    const auto standing = row.state.standing;
    if (standing == Standing::Closed)
        return;
    const bool unproven = good.standing == Standing::Unproven || standing == Standing::Unproven;
    if (!good.standing || standing < *good.standing)
        good.standing = standing;
    if (unproven) {
        if (standing == Standing::Unproven)
            good.title = row.requirement->title;
        good.until.reset();
        return;
    }
    for (const auto& limit : row.state.limits)
        if (const auto* reach = limit.calendar(); reach && (!good.until || reach->due < *good.until)) {
            good.until = reach->due;
            good.title = row.requirement->title;
        }
}

bool isGood(const GoodUntil& good) { return good.standing && *good.standing >= Standing::Tolerance; }
bool isPast(const GoodUntil& good) { return good.standing && *good.standing < Standing::Unproven; }
bool isUnproven(const GoodUntil& good) { return good.standing == Standing::Unproven; }
/// What stands so without a day (a defect, an event) has none to come.
bool isPastWithoutDay(const GoodUntil& good) { return isPast(good) && !good.until; }

bool isCondemned(const ItemFacts& item) {
    return item.out && item.out->state == ServiceState::Condemned && !item.out->part;
}

bool isForGood(const PoolItem& item) {
    const auto& out = item.facts.out;
    return item.condemned || (out && (out->state == ServiceState::Sold || out->state == ServiceState::Scrapped ||
                                      out->state == ServiceState::Lost));
}

/// What has material of the lot in it.
Result<std::set<ItemId>> materialOfLot(Books& books, const std::string& lot, CivilDate on) {
    std::set<ItemId> items;
    const auto read = books.fabric({}, on, [&](const FabricHistory& history) {
        const auto isOfIt = [&](const auto& each) { return each.body.lot == lot; };
        if (std::ranges::any_of(history.repairs, isOfIt) || std::ranges::any_of(history.stated, isOfIt))
            items.insert(history.item);
    });
    return read.map([&] { return std::move(items); });
}

}

std::optional<CivilDate> PoolItem::first() const {
    if (!airworthy.until || !transport.until)
        return airworthy.until ? airworthy.until : transport.until;
    return std::min(*airworthy.until, *transport.until);
}

std::string PoolItem::quarter() const {
    constexpr int months = 3;
    const auto day = first();
    return day ? std::to_string(day->year()) + "-Q" + std::to_string((day->month() - 1) / months + 1) : std::string();
}

Result<std::vector<PoolItem>> pool(Books& books, const PoolAsked& asked, CivilDate on) {
    const auto told = componentsTold(books, {}, on);
    if (!told)
        return tl::unexpected(told.error());
    std::set<ItemId> material;
    if (!asked.lot.empty()) {
        auto found = materialOfLot(books, asked.lot, on);
        if (!found)
            return tl::unexpected(found.error());
        material = std::move(*found);
    }
    const auto list = due(books, {}, on, Outside::AsInService);
    if (!list)
        return tl::unexpected(list.error());
    std::map<ItemId, PoolItem> items;
    for (const auto& facts : list->items) {
        const auto found = told->find(facts.id);
        const auto component = found == told->end() ? Component() : found->second;
        const bool ofLot = asked.lot.empty() || component.lot == asked.lot || material.contains(facts.id);
        if ((asked.kind && facts.kind != *asked.kind) || !ofLot)
            continue;
        auto& item = items[facts.id];
        item.facts = facts;
        item.component = component;
        item.material = material.contains(facts.id);
    }
    std::set<ItemId> barred;
    for (const auto& row : list->rows)
        if (barsFilling(row))
            barred.insert(row.item->id);
    for (const auto& row : list->rows)
        if (const auto item = items.find(row.item->id);
            item != items.end() && row.requirement->force == Force::Mandatory && isRequired(row.state))
            take(row.requirement->blocks == Blocks::Filling ? item->second.transport : item->second.airworthy, row);
    std::vector<PoolItem> sorted;
    for (auto& [id, item] : items) {
        item.condemned = isCondemned(item.facts);
        for (auto* good : {&item.airworthy, &item.transport})
            if (item.condemned)
                *good = {Standing::Spent, {}, reasonOf(*item.facts.out)};
            else if (isPast(*good) && good->until && on <= *good->until)
                good->until.reset();
        item.fillable =
            item.facts.kind == ItemKind::Cylinder && !item.facts.out && isGood(item.transport) && !barred.contains(id);
        sorted.push_back(std::move(item));
    }
    const auto isFirst = [](const PoolItem& item) {
        return isUnproven(item.airworthy) || isUnproven(item.transport) || isPastWithoutDay(item.airworthy) ||
               isPastWithoutDay(item.transport);
    };
    std::ranges::stable_sort(sorted, {}, [&](const PoolItem& item) {
        return std::tuple(isForGood(item), !isFirst(item), item.first().value_or(CivilDate::last()));
    });
    return sorted;
}

}
