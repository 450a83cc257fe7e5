// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The revisions of directives that the record has, each with how many it binds and what became of that.

#include "screen/lists/list_base.h"

namespace crownring::screen {

struct DirectiveEntry {
    QString entry;  ///< in which it stands
    QString number; ///< with its revision: "OAO-AD 2026-014 rev. 0"
    QString title;
    QString about;  ///< issuer, from when it is effective, what it is now
    QString counts; ///< "bound 14 · answered 13 · overdue 1 · unknown 2"
    int overdue = 0;
    int unknown = 0;
    int standing = -1; ///< the worst among whom it binds; -1: it binds nothing now
    [[nodiscard]] bool sameAs(const DirectiveEntry& other) const { return entry == other.entry; }
    bool operator==(const DirectiveEntry&) const = default;
};

class DirectiveModel : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk of directives")

public:
    enum Role {
        EntryRole = Qt::UserRole + 1,
        NumberRole,
        TitleRole,
        AboutRole,
        CountsRole,
        OverdueRole,
        UnknownRole,
        StandingRole,
        SpokenRole,
    };
    Q_ENUM(Role)

    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_entries.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    void show(std::vector<DirectiveEntry> entries) { replaceRows(m_entries, std::move(entries)); }
    [[nodiscard]] const std::vector<DirectiveEntry>& entries() const { return m_entries; }
    Q_INVOKABLE QString entryAt(int row) const;

private:
    std::vector<DirectiveEntry> m_entries;
};

}
