// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/balloons/item_model.h"

#include "screen/desk/due_model.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QStringList>

#include <algorithm>
#include <utility>

namespace crownring::screen {

using namespace words;

ItemLine itemLine(const FleetSheet& sheet, const ItemFacts& item, bool onBalloon) {
    ItemLine line;
    line.item = inward(item.id.text());
    line.kind = Words::kind(item.kind);
    QStringList about;
    if (item.type)
        about += inward(*item.type);
    if (item.serial)
        about += ItemModel::tr("serial %1").arg(inward(*item.serial));
    if (item.made)
        about += ItemModel::tr("made %1").arg(inward(item.made->iso()));
    line.about = about.join(QStringLiteral(" · "));
    line.where = onBalloon      ? inward(item.place)
                 : item.balloon ? inward(item.balloon->text())
                                : ItemModel::tr("in the pool");
    line.clock = Words::figures(item.clock);
    if (const auto* worst = sheet.worstOf(item.id)) {
        line.title = words::said(worst->requirement->title);
        line.word = Words::standing(worst->state);
        line.left = DueTexts::left(*worst);
        line.standing = static_cast<int>(reckonedAs(worst->state));
        line.used = DueTexts::used(*worst);
    } else if (item.out) {
        line.word = Words::service(item.out->state);
        line.title = words::said(reasonOf(*item.out));
    } else if (!item.balloon && !item.carrier && !sheet.adoptions().empty()) {
        line.word = ItemModel::tr("airworthiness: bound only on a balloon");
    } else {
        line.word = ItemModel::tr("no requirement of airworthiness binds it");
    }
    return line;
}

QVariant ItemModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= static_cast<int>(m_rows.size()))
        return {};
    const auto& line = this->line(index.row());
    switch (role) {
    case Qt::DisplayRole:
    case ItemRole:
        return line.item;
    case KindRole:
        return line.kind;
    case AboutRole:
        return line.about;
    case WhereRole:
        return line.where;
    case ClockRole:
        return line.clock;
    case TitleRole:
        return line.title;
    case WordRole:
        return line.word;
    case RemainsRole:
        return line.left;
    case StandingRole:
        return line.standing;
    case UsedRole:
        return line.used;
    case SpokenRole:
        return joined({line.item, line.kind, line.where, line.clock, line.word, line.left, line.title},
                      QStringLiteral(", "));
    default:
        return {};
    }
}

const ItemLine& ItemModel::line(int row) const {
    if (row != m_told)
        m_line = itemLine(*m_sheet, *m_rows[static_cast<std::size_t>(row)].item, m_onBalloon);
    m_told = row;
    return m_line;
}

void ItemModel::show(const Sheet& sheet, const std::vector<const ItemFacts*>& items, bool onBalloon) {
    std::vector<Row> rows;
    rows.reserve(items.size());
    for (const auto* item : items)
        rows.push_back({item});
    const auto kept = std::exchange(m_sheet, sheet); // the old rows are looked at until they are replaced
    m_onBalloon = onBalloon;
    m_told = -1;
    replaceRows(m_rows, std::move(rows));
}

void ItemModel::mend(const Sheet& sheet) {
    const auto kept = std::exchange(m_sheet, sheet);
    m_told = -1;
    for (const auto& id : sheet->mend().items) {
        const auto at = std::ranges::find_if(m_rows, [&](const Row& row) { return row.item->id == id; });
        if (at == m_rows.end())
            continue;
        at->item = sheet->item(id);
        const auto changed = index(static_cast<int>(at - m_rows.begin()));
        emit dataChanged(changed, changed);
    }
}

int ItemModel::find(const QString& name) const {
    const auto at = std::ranges::find_if(
        m_rows, [sought = outward(name)](const Row& row) { return row.item->id.text() == sought; });
    return at == m_rows.end() ? -1 : static_cast<int>(at - m_rows.begin());
}

}
