// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The lines of one section as a grid: each line once, and under it a cell for each item that it is looked at on.

#include "screen/bench/check_line_model.h"

namespace crownring::screen {

struct CheckGroup {
    QString line; ///< its id
    QString title;
    QString lookFor;
    QString source;
    QString apart; ///< why it is not settled together with others: "wants a look of its own"; empty: it is
    int open = 0;
    CheckLineModel* cells = nullptr; ///< kept by the model that shows the group
    [[nodiscard]] bool sameAs(const CheckGroup& other) const { return line == other.line; }
    bool operator==(const CheckGroup&) const = default;
};

class CheckGroupModel : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")

public:
    enum Role { LineRole = Qt::UserRole + 1, TitleRole, LookForRole, SourceRole, ApartRole, OpenRole, CellsRole };
    Q_ENUM(Role)
    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_groups.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    /// @param rows in the order of their lines; what is being written in a cell stays while its row does
    void show(const std::vector<CheckRow>& rows);
    [[nodiscard]] const std::vector<CheckGroup>& groups() const { return m_groups; }
    /// The group that holds a row of the desk's lines; -1: none.
    [[nodiscard]] Q_INVOKABLE int groupOf(int row) const;

private:
    std::vector<CheckGroup> m_groups;
};

}
