// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// One lane of the horizon: its bins with how many rows of each sort stand in them.

#include "screen/lists/list_base.h"
#include "screen/next/horizon.h"

#include <QList>

namespace crownring::screen {

class HorizonModel : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the place Next")
    /// The fullest bin of those of equal kind (the weeks, or all bins by use), at least 1.
    Q_PROPERTY(int tallest READ tallest NOTIFY tallestChanged FINAL)
    /// What stands in none of the bins, with its numbers, in words; empty where everything does.
    Q_PROPERTY(QString leftOut READ leftOut NOTIFY leftOutChanged FINAL)

public:
    enum Role {
        BinRole = Qt::UserRole + 1,
        LabelRole, ///< "overdue", "30 Nov", "≤ 10 h"
        MonthRole, ///< "Dec" where a month begins, with the year in January; else empty
        TallyRole, ///< list of numbers, by `Reckoned`
        TotalRole,
        SpokenRole, ///< "week from 2026-11-30: 2 lapsed, 5 clear"
        ZoneRole,   ///< true for the bins that are no week: no proof, overdue, later, no date
    };
    Q_ENUM(Role)

    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] int tallest() const { return m_tallest; }
    [[nodiscard]] QString leftOut() const { return m_leftOut; }

    void showCalendar(CivilDate on, const std::array<Tally, calendarBins>& tallies, const Tally& off);
    void showUse(const std::array<Tally, useBins>& tallies, const Tally& off);
    [[nodiscard]] QString label(int bin) const;
    /// "2 lapsed, 5 clear"
    [[nodiscard]] static QString told(const Tally& tally);

signals:
    void tallestChanged();
    void leftOutChanged();

private:
    struct Bin {
        int number = 0;
        QString label;
        QString month;
        QString spoken;
        bool zone = false;
        Tally tally{};
        [[nodiscard]] int total() const;
        [[nodiscard]] bool sameAs(const Bin& other) const { return number == other.number; }
        bool operator==(const Bin&) const = default;
    };
    void show(std::vector<Bin> bins, const QString& leftOut);

    std::vector<Bin> m_bins;
    QString m_leftOut;
    int m_tallest = 1;
};

}
