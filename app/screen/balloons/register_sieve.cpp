// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/balloons/register_sieve.h"

#include "screen/balloons/item_model.h"
#include "words/border.h"

#include <algorithm>
#include <tuple>

namespace crownring::screen {

using namespace words;

namespace {

bool says(const QString& text, const QStringList& words) {
    return std::ranges::all_of(words, [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

bool says(const BalloonCard& card, const QStringList& words) {
    return words.isEmpty() || says(inward(card.balloon.text()) + u' ' + inward(card.title), words);
}

bool says(const FleetSheet& sheet, const ItemFacts& item, const QStringList& words) {
    if (words.isEmpty())
        return true;
    const auto line = itemLine(sheet, item, false);
    return says(line.item + u' ' + line.kind + u' ' + line.about + u' ' + line.where, words);
}

}

Sought sought(const FleetSheet& sheet, const RegisterSieve& sieve) {
    Sought found;
    for (const auto& card : sheet.balloons()) {
        found.balloonsOut += card.inService() ? 0 : 1;
        if (!sieve.mine.holds(card.balloon) || !says(card, sieve.words))
            continue;
        if (card.inService() != sieve.outOfService)
            found.balloons.push_back(&card);
        else
            ++found.balloonsBeside;
    }
    for (const auto& item : sheet.items()) {
        found.itemsOut += item.out ? 1 : 0;
        if ((sieve.poolOnly && item.balloon) || !sieve.mine.holds(item.balloon) || !says(sheet, item, sieve.words))
            continue;
        if (item.out.has_value() == sieve.outOfService)
            found.items.push_back(&item);
        else
            ++found.itemsBeside;
    }
    std::ranges::sort(found.items, {}, [](const ItemFacts* item) { return std::tie(item->kind, item->id); });
    return found;
}

}
