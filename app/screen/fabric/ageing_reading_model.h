// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The table behind the ageing chart: its readings, in the order in which they were handed over.

#include "screen/fabric/ageing_curve.h"
#include "screen/lists/list_base.h"

#include <array>

namespace crownring::screen {

struct AgeingRow {
    AgeingReading reading;
    QString hours;       ///< with a decimal, in the user's manner
    int likeItAbove = 0; ///< rows above that say the same
    [[nodiscard]] std::array<QString, 4> said() const { return {reading.day, hours, reading.place, reading.says}; }
    [[nodiscard]] bool sameAs(const AgeingRow& other) const {
        return likeItAbove == other.likeItAbove && said() == other.said();
    }
    bool operator==(const AgeingRow&) const = default;
};

class AgeingReadingModel : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the ageing chart")

public:
    enum Role {
        DayRole = Qt::UserRole + 1,
        HoursRole,
        PlaceRole,
        LotRole,
        SaysRole,
        JudgementRole,
        FailsRole,
        KindRole,
        OtherRole,  ///< of another set of fabric than the curve
        SpokenRole, ///< the whole row in one sentence
    };
    Q_ENUM(Role)

    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

    void show(const std::vector<AgeingReading>& readings);

private:
    std::vector<AgeingRow> m_rows;
};

}
