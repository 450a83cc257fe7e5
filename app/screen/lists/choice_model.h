// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A list of things to choose from: a value, its label, a second line, how many, and whether it is chosen.

#include "screen/lists/list_base.h"

#include <QVariant>

namespace crownring::screen {

struct Choice {
    QString value;
    QString label;
    QString detail;
    int number = -1;   ///< how many; -1 where that says nothing
    int standing = -1; ///< draws the gauge of that standing; -1 draws none
    bool chosen = false;
    QVariant of{}; ///< what it stands for, where the value alone does not tell it from all others
    [[nodiscard]] bool sameAs(const Choice& other) const { return value == other.value && of == other.of; }
    bool operator==(const Choice&) const = default;
};

class ChoiceModel : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the places")

public:
    enum Role { ValueRole = Qt::UserRole + 1, LabelRole, DetailRole, NumberRole, StandingRole, ChosenRole };
    Q_ENUM(Role)

    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_choices.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

    void show(std::vector<Choice> choices) { replaceRows(m_choices, std::move(choices)); }
    void change(Choice choice) { changeRow(m_choices, std::move(choice)); }
    [[nodiscard]] const std::vector<Choice>& choices() const { return m_choices; }
    Q_INVOKABLE QString valueAt(int row) const;
    Q_INVOKABLE int indexOf(const QString& value) const;

private:
    std::vector<Choice> m_choices;
};

}
