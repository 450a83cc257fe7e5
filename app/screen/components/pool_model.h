// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The items of the pool: each with where it is, until when it is good for flight and for filling, and its state.

#include "screen/lists/list_base.h"

namespace crownring::screen {

struct PoolLine {
    QString item;
    QString where;
    QString about;   ///< serial number, type, lot, when it was filled
    QString dates;   ///< "airworthy until 2027-04-30 · transport until 2028-05-31"
    QString quarter; ///< in which it falls due first
    QString state;   ///< "may be filled", "away …"
    int standing = -1;
    bool ticked = false;
    [[nodiscard]] bool sameAs(const PoolLine& other) const { return item == other.item; }
    bool operator==(const PoolLine&) const = default;
};

class PoolModel : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk of the pool")

public:
    enum Role {
        ItemRole = Qt::UserRole + 1,
        WhereRole,
        AboutRole,
        DatesRole,
        QuarterRole,
        StateRole,
        StandingRole,
        TickedRole,
        SpokenRole,
    };
    Q_ENUM(Role)

    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    void show(std::vector<PoolLine> lines) { replaceRows(m_lines, std::move(lines)); }
    [[nodiscard]] const std::vector<PoolLine>& lines() const { return m_lines; }
    Q_INVOKABLE QString itemAt(int row) const;

private:
    std::vector<PoolLine> m_lines;
};

}
