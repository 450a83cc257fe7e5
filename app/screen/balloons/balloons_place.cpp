// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/balloons/balloons_place.h"

#include "screen/desk/house.h"

#include <QStringList>

#include <algorithm>
#include <utility>

namespace crownring::screen {

namespace {

bool says(const QString& text, const QStringList& words) {
    return std::all_of(words.begin(), words.end(),
                       [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

}

void BalloonsPlace::movedIn() {
    connect(&house().fleet, &Fleet::changed, this, &BalloonsPlace::look);
    look();
}

void BalloonsPlace::setWords(const QString& words) {
    if (words == m_words)
        return;
    m_words = words;
    look();
}

void BalloonsPlace::setPoolOnly(bool poolOnly) {
    if (poolOnly == m_poolOnly)
        return;
    m_poolOnly = poolOnly;
    look();
}

bool BalloonsPlace::ready() const { return house().fleet.ready(); }

void BalloonsPlace::look() {
    const auto before = std::exchange(m_sheet, house().fleet.sheet());
    if (m_sheet && m_sheet->mends(before))
        showMend();
    else if (m_sheet)
        showAll();
    emit changed();
}

/// What is searched for is as it was.
void BalloonsPlace::showMend() {
    for (const auto& balloon : m_sheet->mend().balloons)
        if (const auto* card = m_sheet->card(balloon))
            m_balloons.change(balloonLine(*m_sheet, *card));
    for (const auto& item : m_sheet->mend().items)
        m_items.change(itemLine(*m_sheet, *m_sheet->item(item), false));
}

void BalloonsPlace::showAll() {
    const auto words = m_words.split(u' ', Qt::SkipEmptyParts);
    std::vector<BalloonLine> balloons;
    for (const auto& card : m_sheet->balloons()) {
        auto line = balloonLine(*m_sheet, card);
        if (says(line.balloon + u' ' + line.title, words))
            balloons.push_back(std::move(line));
    }
    m_balloons.show(std::move(balloons));

    std::vector<const ItemFacts*> wanted;
    for (const auto& item : m_sheet->items())
        if (!m_poolOnly || !item.balloon)
            wanted.push_back(&item);
    std::sort(wanted.begin(), wanted.end(), [](const ItemFacts* a, const ItemFacts* b) {
        return std::tie(a->kind, a->id) < std::tie(b->kind, b->id);
    });
    std::vector<ItemLine> items;
    for (const auto* item : wanted) {
        auto line = itemLine(*m_sheet, *item, false);
        if (says(line.item + u' ' + line.kind + u' ' + line.about + u' ' + line.where, words))
            items.push_back(std::move(line));
    }
    m_items.show(std::move(items));
}

}
