// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The days to come, a flight or a visit a row: when, what, whether it may be flown and why not, what it makes due.

#include "screen/lists/list_base.h"
#include "screen/next/ahead/ahead_sheet.h"

#include <QStringList>

namespace crownring::screen {

struct AgendaLine {
    QString entry;     ///< that plans it
    QString day;       ///< "Sat 5 Dec"
    QString title;     ///< "QE-LOFT · 2:00 h"
    QString says;      ///< "By the record, nothing stands against it"
    QStringList lines; ///< why not, and what it makes due; of a visit what it covers and what is due before it
    bool visit = false;
    bool good = true; ///< nothing stands against it
    [[nodiscard]] bool sameAs(const AgendaLine& other) const { return entry == other.entry; }
    bool operator==(const AgendaLine&) const = default;
};

class AgendaModel : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the days to come")

public:
    enum Role {
        EntryRole = Qt::UserRole + 1,
        DayRole,
        TitleRole,
        SaysRole,
        LinesRole,
        VisitRole,
        GoodRole,
        SpokenRole ///< the whole row as one sentence

    };
    Q_ENUM(Role)
    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    void show(std::vector<AgendaLine> lines) { replaceRows(m_lines, std::move(lines)); }

private:
    std::vector<AgendaLine> m_lines;
};

/// "Sat 5 Dec", in the user's language; with the year where it is another than that of `on`.
[[nodiscard]] QString dayText(CivilDate day, CivilDate on);
/// "1–3 Mar 2027"
[[nodiscard]] QString daysText(CivilDate first, CivilDate last, CivilDate on);

}
