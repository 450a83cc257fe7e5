// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/balloons/balloons_place.h"

#include "screen/desk/house.h"

#include <QStringList>
#include <QtConcurrent>

#include <algorithm>
#include <memory>
#include <utility>

namespace crownring::screen {

namespace {

bool says(const QString& text, const QStringList& words) {
    return std::all_of(words.begin(), words.end(),
                       [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

std::vector<BalloonLine> balloonsOf(const FleetSheet& sheet, const QStringList& words) {
    std::vector<BalloonLine> lines;
    for (const auto& card : sheet.balloons()) {
        auto line = balloonLine(sheet, card);
        if (says(line.balloon + u' ' + line.title, words))
            lines.push_back(std::move(line));
    }
    return lines;
}

std::vector<ItemLine> itemsOf(const FleetSheet& sheet, const QStringList& words, bool poolOnly) {
    std::vector<const ItemFacts*> wanted;
    for (const auto& item : sheet.items())
        if (!poolOnly || !item.balloon)
            wanted.push_back(&item);
    std::sort(wanted.begin(), wanted.end(), [](const ItemFacts* a, const ItemFacts* b) {
        return std::tie(a->kind, a->id) < std::tie(b->kind, b->id);
    });
    std::vector<ItemLine> lines;
    for (const auto* item : wanted) {
        auto line = itemLine(sheet, *item, false);
        if (says(line.item + u' ' + line.kind + u' ' + line.about + u' ' + line.where, words))
            lines.push_back(std::move(line));
    }
    return lines;
}

struct Lines {
    std::vector<BalloonLine> balloons;
    std::vector<ItemLine> items;
};

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

bool BalloonsPlace::ready() const { return m_filled; }

void BalloonsPlace::look() {
    const auto before = std::exchange(m_sheet, house().fleet.sheet());
    if (m_sheet && m_sheet->mends(before) && !m_filling)
        showMend();
    else if (m_sheet)
        fillAgain();
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

/// Off the screen's thread: a large fleet has tens of thousands of lines.
void BalloonsPlace::fillAgain() {
    const auto turn = ++m_turn;
    m_filling = true;
    const auto words = m_words.split(u' ', Qt::SkipEmptyParts);
    hear(QtConcurrent::run([sheet = m_sheet, words, poolOnly = m_poolOnly] {
             return std::make_shared<Lines>(Lines{balloonsOf(*sheet, words), itemsOf(*sheet, words, poolOnly)});
         }),
         this, [this, turn](const std::shared_ptr<Lines>& lines) {
             if (turn != m_turn)
                 return;
             m_filling = false;
             m_filled = true;
             m_balloons.show(std::move(lines->balloons));
             m_items.show(std::move(lines->items));
             emit changed();
         });
}

}
