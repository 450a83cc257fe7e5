// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The checklist's lines of one section, each for each item that it is looked at on.

#include "screen/lists/list_base.h"

#include <QStringList>
#include <QVariantList>

namespace crownring::screen {

struct CheckRow {
    QString line; ///< its id
    int at = -1;  ///< its place among the lines that the desk shows
    QString item;
    QString subject; ///< the item as it is called here; empty where the line is of the visit
    QString title;
    QString lookFor;
    QString source;
    QString finding;
    QString settled;  ///< "done, insp. 14, 2026-11-25"
    QString readings; ///< "12 of 24 readings", empty where none are asked
    QString tester;
    int state = 0;           ///< 0 open, 1 done, 2 not applicable
    int why = -1;            ///< of what is not applicable: 0 not fitted, 1 not asked for, 2 other; -1 not said
    QString page;            ///< of the manual that does not ask for it
    QStringList photographs; ///< digests
    QString apart;           ///< why it is not settled together with others; empty: it is
    /// What of the record stands open on it. Maps: directive, revision, item, said; against: the line is not done with
    /// it
    QVariantList directives;
    bool required = true;
    bool asksTester = false;
    bool asksPhotograph = false;
    [[nodiscard]] bool sameAs(const CheckRow& other) const { return line == other.line && item == other.item; }
    bool operator==(const CheckRow&) const = default;
};

class CheckLineModel : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")

public:
    enum Role {
        LineRole = Qt::UserRole + 1,
        AtRole,
        ItemRole,
        SubjectRole,
        TitleRole,
        LookForRole,
        SourceRole,
        FindingRole,
        SettledRole,
        ReadingsRole,
        TesterRole,
        SettledAsRole,
        PhotographsRole,
        ApartRole,
        DirectivesRole,
        RequiredRole,
        AsksTesterRole,
        AsksPhotographRole,
    };
    Q_ENUM(Role)
    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    void show(std::vector<CheckRow> rows) { replaceRows(m_rows, std::move(rows)); }
    [[nodiscard]] const std::vector<CheckRow>& rows() const { return m_rows; }

private:
    std::vector<CheckRow> m_rows;
};

}
