// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/record/intake_model.h"

namespace crownring::screen {

QVariant IntakeModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= static_cast<int>(m_lines.size()))
        return {};
    const auto& line = m_lines[static_cast<std::size_t>(index.row())];
    switch (role) {
    case LineRole:
        return line.line;
    case DayRole:
        return line.on;
    case Qt::DisplayRole:
    case SaysRole:
        return line.text;
    case FateRole:
        return line.fate;
    case TakenRole:
        return line.taken;
    case BadRole:
        return line.bad;
    default:
        return {};
    }
}

}
