// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/taken_name.h"

#include "registry/spelling.h"

namespace crownring {

namespace {

Result<std::optional<TakenName>> takenBalloon(Books& books, const Registration& balloon) {
    const auto cards = books.balloons(CivilDate::last());
    if (!cards)
        return tl::unexpected(cards.error());
    for (const auto& card : *cards)
        if (bareName(card.balloon.text()) == bareName(balloon.text()))
            return TakenName{TakenName::What::Balloon, card.balloon.text(), card.entered};
    return std::nullopt;
}

Result<std::optional<TakenName>> takenItem(Books& books, const ItemId& item) {
    const auto facts = books.facts({}, CivilDate::last());
    if (!facts)
        return tl::unexpected(facts.error());
    for (const auto& each : *facts)
        if (bareName(each.id.text()) == bareName(item.text()))
            return TakenName{TakenName::What::Item, each.id.text(), each.entered};
    return std::nullopt;
}

}

Result<std::optional<TakenName>> takenName(Books& books, const Entry& entry) {
    if (const auto* balloon = std::get_if<BalloonEntered>(&entry.body))
        return takenBalloon(books, balloon->balloon);
    if (const auto* item = std::get_if<ItemEntered>(&entry.body))
        return takenItem(books, item->item);
    return std::nullopt;
}

}
