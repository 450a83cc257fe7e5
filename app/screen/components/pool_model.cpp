// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/components/pool_model.h"

#include "words/border.h"

namespace crownring::screen {

QVariant PoolModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= static_cast<int>(m_lines.size()))
        return {};
    const auto& line = m_lines[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
    case ItemRole:
        return line.item;
    case WhereRole:
        return line.where;
    case AboutRole:
        return line.about;
    case DatesRole:
        return line.dates;
    case QuarterRole:
        return line.quarter;
    case StateRole:
        return line.state;
    case StandingRole:
        return line.standing;
    case TickedRole:
        return line.ticked;
    case SpokenRole:
        return words::joined({line.item, line.where, line.dates, line.state, line.about}, QStringLiteral(", "));
    default:
        return {};
    }
}

QString PoolModel::itemAt(int row) const {
    return row >= 0 && row < static_cast<int>(m_lines.size()) ? m_lines[static_cast<std::size_t>(row)].item : QString();
}

}
