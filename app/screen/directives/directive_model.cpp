// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/directives/directive_model.h"

namespace crownring::screen {

QVariant DirectiveModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= static_cast<int>(m_entries.size()))
        return {};
    const auto& each = m_entries[static_cast<std::size_t>(index.row())];
    switch (role) {
    case EntryRole:
        return each.entry;
    case Qt::DisplayRole:
    case NumberRole:
        return each.number;
    case TitleRole:
        return each.title;
    case AboutRole:
        return each.about;
    case CountsRole:
        return each.counts;
    case OverdueRole:
        return each.overdue;
    case UnknownRole:
        return each.unknown;
    case StandingRole:
        return each.standing;
    case SpokenRole:
        return QStringList{each.number, each.title, each.about, each.counts}.join(QStringLiteral(", "));
    default:
        return {};
    }
}

QString DirectiveModel::entryAt(int row) const {
    return row >= 0 && row < static_cast<int>(m_entries.size()) ? m_entries[static_cast<std::size_t>(row)].entry
                                                                : QString();
}

}
