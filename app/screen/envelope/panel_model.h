// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The panels of one envelope that have something to show, in the order of the plan. At most one mark a panel.

#include "screen/envelope/panel_mark.h"
#include "screen/lists/list_base.h"

#include <vector>

namespace crownring::screen {

class PanelModel : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the places")

public:
    enum Role {
        GoreRole = Qt::UserRole + 1,
        RowRole,
        ReadingRole, ///< number of panel::Reading
        ShareRole,
        TextRole,
        SaysRole,
        ReadingsRole,
        AskedRole,
        RepairedRole,
        DefectRole,
        LotRole,
        LotNameRole,
    };
    Q_ENUM(Role)

    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

    [[nodiscard]] const std::vector<PanelMark>& marks() const { return m_marks; }
    /// Takes new marks; views are told what differs. Of two marks for one panel the first counts.
    void show(std::vector<PanelMark> marks);

signals:
    /// New marks are there: once, however many rows went, came or changed.
    void shown();

private:
    std::vector<PanelMark> m_marks;
};

}
