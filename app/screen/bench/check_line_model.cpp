// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/bench/check_line_model.h"

namespace crownring::screen {

QVariant CheckLineModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const auto& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case LineRole:
        return row.line;
    case AtRole:
        return row.at;
    case ItemRole:
        return row.item;
    case SubjectRole:
        return row.subject;
    case TitleRole:
    case Qt::DisplayRole:
        return row.title;
    case LookForRole:
        return row.lookFor;
    case SourceRole:
        return row.source;
    case FindingRole:
        return row.finding;
    case SettledRole:
        return row.settled;
    case ReadingsRole:
        return row.readings;
    case TesterRole:
        return row.tester;
    case SettledAsRole:
        return row.state;
    case PhotographsRole:
        return row.photographs;
    case ApartRole:
        return row.apart;
    case DirectivesRole:
        return row.directives;
    case RequiredRole:
        return row.required;
    case AsksTesterRole:
        return row.asksTester;
    case AsksPhotographRole:
        return row.asksPhotograph;
    default:
        return {};
    }
}

}
