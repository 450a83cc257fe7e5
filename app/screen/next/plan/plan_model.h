// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The visits of a plan, by week: which balloon, where, what it costs, what is done there and why then.

#include "screen/lists/list_base.h"
#include "screen/next/plan/plan_wishes.h"

#include <QStringList>

namespace crownring::screen {

struct PlanLine {
    VisitPlace place;
    std::optional<EntryId> entry{}; ///< that plans it already
    QString week;                   ///< "Mon 1 Mar to Fri 5 Mar 2027"
    QString title;                  ///< "QE-OVA at Lakeside"
    QString cost;                   ///< "260.00"
    QString mark;                   ///< "planned already"; mostly empty
    QStringList covers;
    bool isHeld = false; ///< by the user
    [[nodiscard]] bool sameAs(const PlanLine& other) const { return place == other.place; }
    bool operator==(const PlanLine&) const = default;
};

class PlanModel : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the planner")

public:
    enum Role {
        WeekRole = Qt::UserRole + 1,
        TitleRole,
        CostRole,
        MarkRole,
        CoversRole,
        HeldRole,    ///< by the user
        WrittenRole, ///< the record plans it already
        SpokenRole   ///< the whole row as one sentence

    };
    Q_ENUM(Role)
    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    void show(std::vector<PlanLine> lines) { replaceRows(m_lines, std::move(lines)); }
    [[nodiscard]] const PlanLine* line(int row) const;

private:
    std::vector<PlanLine> m_lines;
};

}
