// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/forecast/wear_ahead.h"

#include "answers/forecast/items_ahead.h"
#include "answers/type_book.h"
#include "bench/reading/quantity.h"

#include <algorithm>
#include <unordered_set>

namespace crownring {

namespace {

/// The first day by whose evening the limit is met with that probability, whatever is flown until then.
std::optional<CivilDate> metBy(const WearSeries& series, const UseAhead& ahead, CivilDate known, double share) {
    const auto chanceOn = [&](CivilDate day) {
        const auto use = ahead.upTo(day, UseClock::Minutes);
        constexpr int places = 20;
        double sum = 0;
        for (int place = 0; place < places; ++place)
            sum += chanceMet(*series.trend, series.limit->value(), series.way,
                             *series.now + Hours(use.quantile((place + 0.5) / places) / 60));
        return sum / places;
    };
    auto before = known;
    auto day = addMonths(known, 12 * UseAhead::horizonYears, DayRule::Same);
    if (chanceOn(day) < share)
        return std::nullopt;
    while (addDays(before, 1) < day) {
        const auto half = addDays(before, daysBetween(before, day).value() / 2);
        (chanceOn(half) < share ? before : day) = half;
    }
    return day;
}

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
    std::optional<ItemsAhead> items;
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
            if (!items) {
                auto read = ItemsAhead::read(books, due, known, ItemsAhead::Wanted::Always);
                if (!read)
                    return tl::unexpected(read.error());
                items = std::move(*read);
            }
            const auto* use = items->of(item);
            if (!use)
                continue;
            DateBand met;
            for (const auto& [place, share] : {std::pair{&met.p10, 0.1}, {&met.p50, 0.5}, {&met.p90, 0.9}})
                if (const auto day = metBy(series, *use, known, share))
                    *place = std::max(*day, due.on);
            if (met.p10)
                ahead.push_back({&item, std::move(series), met});
        }
    }
    return ahead;
}

}
