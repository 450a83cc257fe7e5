// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/lists/choice_model.h"

namespace crownring::screen {

QVariant ChoiceModel::data(const QModelIndex& index, int role) const {
    if (index.row() < 0 || index.row() >= static_cast<int>(m_choices.size()))
        return {};
    const auto& choice = m_choices[static_cast<std::size_t>(index.row())];
    switch (role) {
    case ValueRole:
        return choice.value;
    case Qt::DisplayRole:
    case LabelRole:
        return choice.label;
    case DetailRole:
        return choice.detail;
    case NumberRole:
        return choice.number;
    case StandingRole:
        return choice.standing;
    case ChosenRole:
        return choice.chosen;
    default:
        return {};
    }
}

QString ChoiceModel::valueAt(int row) const {
    return row >= 0 && row < static_cast<int>(m_choices.size()) ? m_choices[static_cast<std::size_t>(row)].value
                                                                : QString();
}

int ChoiceModel::indexOf(const QString& value) const {
    for (std::size_t at = 0; at < m_choices.size(); ++at)
        if (m_choices[at].value == value)
            return static_cast<int>(at);
    return -1;
}

}
