// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A due list on the screen. Rows point into a sheet that the model keeps; texts are made when a row is drawn, so that
/// a list of hundreds of thousands of rows costs no more than what is seen of it.

#include "screen/desk/fleet.h"
#include "screen/lists/list_base.h"

#include <functional>

namespace crownring::screen {

using DueBefore = std::function<bool(const DueRow&, const DueRow&)>;

class DueModel : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the places")

public:
    enum Role {
        ItemRole = Qt::UserRole + 1, ///< the item's id
        KindRole,                    ///< "envelope"
        BalloonRole,                 ///< registration, or empty
        WhereRole,                   ///< "QE-OVA · envelope ENV-101"
        RequirementRole,             ///< the requirement's id
        TitleRole,
        SourceRole,
        StandingRole,     ///< as what it is reckoned, worst is 0
        StandingWordRole, ///< what stands beside the gauge
        UsedRole,         ///< share of the interval used, 0 to 1; -1 when unknown
        RemainsRole,      ///< "9:24 h", "31 days past"; empty when unknown
        DueRole,          ///< "2026-12-26", "412:30 h"
        RemarkRole,       ///< "recommended", "not to be refilled", "positioning only"; mostly empty
        SpokenRole,       ///< the whole row as one sentence
    };
    Q_ENUM(Role)

    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

    void show(Sheet sheet, const DueRows& rows);
    /// Other rows in place of some: what stays of a requirement is changed or moved, and nothing else is touched.
    /// @param before the order in which the list stands and stays; @pre `gone` are in it, and `come` of the same items
    void mend(Sheet sheet, const DueRows& gone, const DueRows& come, const DueBefore& before);
    [[nodiscard]] const DueRow* row(int at) const;
    Q_INVOKABLE int find(const QString& item, const QString& requirement) const;

private:
    struct Line {
        const DueRow* row = nullptr;
        [[nodiscard]] bool sameAs(const Line& other) const;
        bool operator==(const Line& other) const;
    };
    [[nodiscard]] std::ptrdiff_t placeOf(const DueRow& row, const DueBefore& before) const;
    void replace(const DueRow& gone, const DueRow& come, const DueBefore& before);
    void remove(const DueRow& gone, const DueBefore& before);
    void insert(const DueRow& come, const DueBefore& before);

    Sheet m_sheet;
    std::vector<Line> m_lines;
};

/// What the screen says of one due row; used by the model, the rig-up answer and the detail alike.
struct DueTexts {
    [[nodiscard]] static QString where(const DueRow& row);
    [[nodiscard]] static QString left(const DueRow& row);
    [[nodiscard]] static QString due(const DueRow& row);
    [[nodiscard]] static QString remark(const DueRow& row);
    [[nodiscard]] static QString spoken(const DueRow& row);
    [[nodiscard]] static double used(const DueRow& row);
};

}
