// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/envelope/panel_model.h"

#include <set>

namespace crownring::screen {

int PanelModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_marks.size());
}

QVariant PanelModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& mark = m_marks[static_cast<std::size_t>(index.row())];
    switch (role) {
    case GoreRole:
        return mark.gore;
    case RowRole:
        return mark.row;
    case ReadingRole:
        return static_cast<int>(mark.reading);
    case ShareRole:
        return mark.share;
    case TextRole:
        return mark.text;
    case SaysRole:
        return mark.says;
    case ReadingsRole:
        return mark.count;
    case AskedRole:
        return mark.asked;
    case RepairedRole:
        return mark.repaired;
    case DefectRole:
        return mark.defect;
    case LotRole:
        return mark.lot;
    case LotNameRole:
        return mark.lotName;
    default:
        return {};
    }
}

void PanelModel::show(std::vector<PanelMark> marks) {
    std::set<std::pair<int, int>> seen;
    std::erase_if(marks, [&](const PanelMark& mark) { return !seen.emplace(mark.gore, mark.row).second; });
    replaceRows(m_marks, std::move(marks));
    emit shown();
}

}
