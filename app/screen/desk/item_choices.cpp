// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/item_choices.h"

#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

namespace crownring::screen {

using namespace words;

QString ItemChoices::name(const ItemFacts& item) {
    return tr("%1 %2").arg(Words::kind(item.kind), inward(item.id.text()));
}

Choice ItemChoices::of(const FleetSheet& sheet, const ItemFacts& item) {
    const auto where = !item.balloon        ? tr("in the pool")
                       : item.place.empty() ? tr("on %1").arg(inward(item.balloon->text()))
                                            : tr("on %1, %2").arg(inward(item.balloon->text()), inward(item.place));
    const auto* worst = sheet.worstOf(item.id);
    const auto standing = item.out ? words::said(reasonOf(*item.out))
                          : worst  ? Words::standing(worst->state)
                                   : QString();
    Choice choice;
    choice.value = inward(item.id.text());
    choice.label = name(item);
    choice.detail = joined(
        {item.serial ? inward(*item.serial) : QString(), item.type ? inward(*item.type) : QString(), where, standing},
        QStringLiteral(" · "));
    choice.standing = worst ? static_cast<int>(reckonedAs(worst->state)) : -1;
    return choice;
}

}
