// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/directives/held_model.h"

#include "words/border.h"

namespace crownring::screen {

QVariant HeldModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= static_cast<int>(m_items.size()))
        return {};
    const auto& each = m_items[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case ItemRole:
        return each.item;
    case WhereRole:
        return each.where;
    case WhyRole:
        return each.why;
    case DoneRole:
        return each.done;
    case WordRole:
        return each.word;
    case StandingRole:
        return each.standing;
    case AnswerableRole:
        return each.answerable;
    case TickedRole:
        return each.ticked;
    case SpokenRole:
        return words::joined({each.item, each.where, each.word, each.why, each.done}, QStringLiteral(", "));
    default:
        return {};
    }
}

QString HeldModel::itemAt(int row) const {
    return row >= 0 && row < static_cast<int>(m_items.size()) ? m_items[static_cast<std::size_t>(row)].item : QString();
}

}
