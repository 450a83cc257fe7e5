// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/forecast/wear_ahead.h"

#include "answers/forecast/items_ahead.h"
#include "answers/forecast/limit_met.h"
#include "answers/type_book.h"
#include "bench/reading/quantity.h"

#include <algorithm>
#include <unordered_set>

namespace crownring {

namespace {

bool wears(const ItemFacts& item, const TypeBook& book) {
    return std::ranges::any_of(book.limits, [&](const StatedLimit& limit) {
        const auto* quantity = limit.kind == item.kind && item.type && limit.type.text() == *item.type
                                   ? quantityNamed(limit.quantity)
                                   : nullptr;
        return quantity && quantity->traits.wears;
    });
}

}

Result<std::vector<WearAhead>> wearAhead(Books& books, const DueList& due, CivilDate known) {
    const auto book = typeBook(books, due.on);
    if (!book)
        return tl::unexpected(book.error());
    std::vector<WearAhead> ahead;
    ItemsAheadWhenAsked items(books, due, known);
    std::unordered_set<ItemId> asked;
    for (const auto& row : due.rows) {
        const auto& item = *row.item;
        if (!item.balloon || item.out || !wears(item, *book) || !asked.insert(item.id).second)
            continue;
        auto worn = wearOf(books, item.id, due.on);
        if (!worn)
            return tl::unexpected(worn.error());
        for (auto& series : *worn) {
            if (!series.toLimit)
                continue;
            const auto use = items.of(item);
            if (!use)
                return tl::unexpected(use.error());
            if (!*use)
                continue;
            const auto met = bandMet(**use, known, due.on, [&](Hours more) {
                return chanceMet(*series.trend, series.limit->value(), series.way, *series.now + more);
            });
            if (met.p10)
                ahead.push_back({&item, std::move(series), met});
        }
    }
    return ahead;
}

}
