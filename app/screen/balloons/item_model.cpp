// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/balloons/item_model.h"

#include "screen/desk/due_model.h"
#include "words/border.h"
#include "words/sentence.h"
#include "words/words.h"

#include <QStringList>

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
    } else {
        line.word = ItemModel::tr("no requirement binds it");
    }
    return line;
}

QVariant ItemModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= static_cast<int>(m_lines.size()))
        return {};
    const auto& line = m_lines[static_cast<std::size_t>(index.row())];
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
    case LeftRole:
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

QHash<int, QByteArray> ItemModel::roleNames() const {
    return {{ItemRole, "item"},         {KindRole, "kind"},   {AboutRole, "about"},  {WhereRole, "where"},
            {ClockRole, "clock"},       {TitleRole, "title"}, {WordRole, "word"},    {LeftRole, "remains"},
            {StandingRole, "standing"}, {UsedRole, "used"},   {SpokenRole, "spoken"}};
}

int ItemModel::find(const QString& name) const {
    for (std::size_t at = 0; at < m_lines.size(); ++at)
        if (m_lines[at].item == name)
            return static_cast<int>(at);
    return -1;
}

}
