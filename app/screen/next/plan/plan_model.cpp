// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/plan/plan_model.h"

namespace crownring::screen {

const PlanLine* PlanModel::line(int row) const {
    return row < 0 || row >= static_cast<int>(m_lines.size()) ? nullptr : &m_lines[static_cast<std::size_t>(row)];
}

QVariant PlanModel::data(const QModelIndex& index, int role) const {
    const auto* line = this->line(index.row());
    if (!line)
        return {};
    switch (role) {
    case WeekRole:
        return line->week;
    case Qt::DisplayRole:
    case TitleRole:
        return line->title;
    case CostRole:
        return line->cost;
    case MarkRole:
        return line->mark;
    case CoversRole:
        return line->covers;
    case HeldRole:
        return line->isHeld;
    case WrittenRole:
        return line->entry.has_value();
    case SpokenRole: {
        QStringList said{line->title, line->week, tr("costs %1").arg(line->cost)};
        if (!line->mark.isEmpty())
            said += line->mark;
        return (said + line->covers).join(QStringLiteral(", "));
    }
    default:
        return {};
    }
}

}
