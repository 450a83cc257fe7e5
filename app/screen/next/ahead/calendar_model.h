// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The calendar's rows: visits as blocks, dues as bands from their p10 to their p90 day, on one span of months. Each
/// row says its days in words too, so that the same rows are the calendar's table.

#include "screen/lists/list_base.h"
#include "screen/next/ahead/fabric_now.h"

namespace crownring::screen {

struct CalendarLine {
    enum Sort { Balloon, Due, Visit };
    QString key; ///< unlike any other's
    int sort = Due;
    QString balloon; ///< registration; empty: of the pool
    QString title;
    QString days;  ///< "between 2027-01-10 and 2027-03-02"
    QString first; ///< p10; of a visit its first day
    QString likely;
    QString last;
    QString entry;    ///< of a visit
    double from = -1; ///< share of the span; nothing of it is seen where `to` is not above it
    double to = -1;
    double likelyAt = -1;
    bool byUse = false; ///< use limits it: a band, not a day
    int standing = -1;
    [[nodiscard]] bool sameAs(const CalendarLine& other) const { return key == other.key; }
    bool operator==(const CalendarLine&) const = default;
};

/// The months that are looked at.
struct CalendarSpan {
    CivilDate first; ///< of a month
    int months = 12;
    [[nodiscard]] CivilDate end() const; ///< the day after the last
    /// Where the morning of a day stands in it, from 0 to 1; beyond, outside these.
    [[nodiscard]] double at(CivilDate day) const;
    bool operator==(const CalendarSpan&) const = default;
};

/// Visits first, then each balloon with what of it comes first; of one balloon all that is to come.
/// @param only of this balloon
[[nodiscard]] std::vector<CalendarLine> calendarLines(const AheadSheet& sheet, std::span<const FabricAhead> fabrics,
                                                      const CalendarSpan& span,
                                                      const std::optional<Registration>& only);

class CalendarModel : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the calendar")

public:
    enum Role {
        SortRole = Qt::UserRole + 1,
        BalloonRole,
        TitleRole,
        DaysRole,
        FirstRole,
        LikelyRole,
        LastRole,
        EntryRole,
        FromRole,
        ToRole,
        LikelyAtRole,
        ByUseRole,
        StandingRole,
        SpokenRole ///< the whole row as one sentence

    };
    Q_ENUM(Role)
    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    void show(std::vector<CalendarLine> lines) { replaceRows(m_lines, std::move(lines)); }
    [[nodiscard]] const CalendarLine* line(int row) const;

private:
    std::vector<CalendarLine> m_lines;
};

}
