// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/bench/check_group_model.h"

#include <algorithm>
#include <set>

namespace crownring::screen {

QVariant CheckGroupModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& group = m_groups[static_cast<std::size_t>(index.row())];
    switch (role) {
    case LineRole:
        return group.line;
    case TitleRole:
    case Qt::DisplayRole:
        return group.title;
    case LookForRole:
        return group.lookFor;
    case SourceRole:
        return group.source;
    case ApartRole:
        return group.apart;
    case OpenRole:
        return group.open;
    case CellsRole:
        return QVariant::fromValue(group.cells);
    default:
        return {};
    }
}

void CheckGroupModel::show(const std::vector<CheckRow>& rows) {
    std::vector<CheckGroup> groups;
    std::vector<std::vector<CheckRow>> cells;
    for (const auto& row : rows) {
        if (groups.empty() || groups.back().line != row.line) {
            groups.push_back({row.line, row.title, row.lookFor, row.source, row.apart, 0, nullptr});
            cells.emplace_back();
        }
        groups.back().open += row.state == 0 ? 1 : 0;
        cells.back().push_back(row);
    }
    std::set<CheckLineModel*> gone;
    for (const auto& group : m_groups)
        gone.insert(group.cells);
    for (std::size_t i = 0; i < groups.size(); ++i) {
        const auto had = std::ranges::find(m_groups, groups[i].line, &CheckGroup::line);
        groups[i].cells = had == m_groups.end() ? new CheckLineModel(this) : had->cells;
        gone.erase(groups[i].cells);
        groups[i].cells->show(std::move(cells[i]));
    }
    replaceRows(m_groups, std::move(groups));
    for (auto* model : gone)
        model->deleteLater();
}

int CheckGroupModel::groupOf(int row) const {
    const auto group = std::ranges::find_if(m_groups, [row](const CheckGroup& each) {
        return std::ranges::find(each.cells->rows(), row, &CheckRow::at) != each.cells->rows().end();
    });
    return group == m_groups.end() ? -1 : static_cast<int>(group - m_groups.begin());
}

}
