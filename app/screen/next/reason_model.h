// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The reasons of a rig-up answer, each with its gauge, what it says, its source and what would answer it.

#include "rules/due/rig_up.h"
#include "screen/lists/list_base.h"

namespace crownring::screen {

struct ReasonLine {
    QString item;
    QString requirement;
    QString title;
    QString text;
    QString source;
    QString mend;
    QString word;
    int standing = 0;
    double used = -1;
    [[nodiscard]] bool sameAs(const ReasonLine& other) const {
        return title == other.title && requirement == other.requirement;
    }
    bool operator==(const ReasonLine&) const = default;
};

/// @param flight the one that was asked for: what it needs is said beside what is left
[[nodiscard]] ReasonLine reasonLine(const RigUpReason& reason, const PlannedFlight& flight);
[[nodiscard]] ReasonLine noteLine(const DueRow& row);
/// Which limit is passed and when, up to where its tolerance reaches, and what it is good for.
[[nodiscard]] ReasonLine toleranceLine(const ToleranceUse& use, const PlannedFlight& flight);

class ReasonModel : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the rig-up check")

public:
    enum Role {
        ItemRole = Qt::UserRole + 1,
        RequirementRole,
        TitleRole,
        SaysRole,
        SourceRole,
        MendRole,
        WordRole,
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
    void show(std::vector<ReasonLine> lines) { replaceRows(m_lines, std::move(lines)); }

private:
    std::vector<ReasonLine> m_lines;
};

}
