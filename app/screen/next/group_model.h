// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Groups of due rows: what each is, what governs it, and what else comes with it.

#include "screen/lists/list_base.h"
#include "screen/next/due_groups.h"

namespace crownring::screen {

struct GroupLine {
    GroupKey key;
    QString title;   ///< "QE-LOFT", "Annual inspection", "In the pool"
    QString governs; ///< "Annual inspection, envelope ENV-101"; of a visit or requirement: whose
    QString also;    ///< what else comes with it; may be empty
    QString word;
    QString left;
    QString due;
    int standing = -1;
    double used = -1;
    [[nodiscard]] bool sameAs(const GroupLine& other) const { return key == other.key; }
    bool operator==(const GroupLine&) const = default;
};

[[nodiscard]] GroupLine groupLine(const DueGroup& group, Grouping grouping);

class GroupModel : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the place Next")

public:
    enum Role {
        TitleRole = Qt::UserRole + 1,
        GovernsRole,
        AlsoRole,
        StandingWordRole,
        RemainsRole,
        DueRole,
        StandingRole,
        UsedRole,
        SpokenRole ///< the whole row as one sentence

    };
    Q_ENUM(Role)
    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    void show(std::vector<GroupLine> lines) { replaceRows(m_lines, std::move(lines)); }
    [[nodiscard]] const std::vector<GroupLine>& lines() const { return m_lines; }

private:
    std::vector<GroupLine> m_lines;
};

}
