// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Items with their clocks and their worst standing.

#include "screen/desk/fleet.h"
#include "screen/lists/list_base.h"

namespace crownring::screen {

struct ItemLine {
    QString item;
    QString kind;
    QString about; ///< type, serial number, made
    QString where; ///< place on the balloon, the balloon, or the pool
    QString clock;
    QString title; ///< what is worst
    QString word;
    QString left;
    int standing = -1;
    double used = -1;
};

/// @param onBalloon the list is one balloon's: `where` is the place on it
[[nodiscard]] ItemLine itemLine(const FleetSheet& sheet, const ItemFacts& item, bool onBalloon);

/// A row points into the sheet that is shown; its texts are made when it is looked at.
class ItemModel : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the place Balloons")

public:
    enum Role {
        ItemRole = Qt::UserRole + 1,
        KindRole,
        AboutRole,
        WhereRole,
        ClockRole,
        TitleRole,
        WordRole,
        RemainsRole,
        StandingRole,
        UsedRole,
        SpokenRole ///< the whole row as one sentence

    };
    Q_ENUM(Role)
    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    /// The row of the one with that name, -1 when it is not in the list.
    Q_INVOKABLE int find(const QString& name) const;
    /// @param onBalloon the list is one balloon's
    void show(const Sheet& sheet, const std::vector<const ItemFacts*>& items, bool onBalloon = false);
    /// What the sheet mends of what is shown; the other rows stay.
    void mend(const Sheet& sheet);

private:
    struct Row {
        const ItemFacts* item;
        [[nodiscard]] bool sameAs(const Row& other) const { return item->id == other.item->id; }
        bool operator==(const Row&) const = default;
    };
    [[nodiscard]] const ItemLine& line(int row) const;

    Sheet m_sheet;
    std::vector<Row> m_rows;
    bool m_onBalloon = false;
    mutable int m_told = -1; ///< the row that `m_line` is of: one is asked for several texts after the other
    mutable ItemLine m_line;
};

}
