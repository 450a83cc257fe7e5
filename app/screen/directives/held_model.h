// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The items that a directive is held against: each with why it is bound or not, what was done, what is next.

#include "screen/lists/list_base.h"

namespace crownring::screen {

struct HeldItem {
    QString item;
    QString where;
    QString why;
    QString done;
    QString word; ///< "overdue", "unknown", "answered"; with what is left
    int standing = -1;
    bool answerable = false; ///< it may be ticked, to be answered for
    bool ticked = false;
    [[nodiscard]] bool sameAs(const HeldItem& other) const { return item == other.item; }
    bool operator==(const HeldItem&) const = default;
};

class HeldModel : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk of directives")

public:
    enum Role {
        ItemRole = Qt::UserRole + 1,
        WhereRole,
        WhyRole,
        DoneRole,
        WordRole,
        StandingRole,
        AnswerableRole,
        TickedRole,
        SpokenRole,
    };
    Q_ENUM(Role)

    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_items.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    void show(std::vector<HeldItem> items) { replaceRows(m_items, std::move(items)); }
    [[nodiscard]] const std::vector<HeldItem>& items() const { return m_items; }
    Q_INVOKABLE QString itemAt(int row) const;

private:
    std::vector<HeldItem> m_items;
};

}
