// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The register: each balloon with what it has flown and what governs it.

#include "answers/supported.h"
#include "screen/desk/fleet.h"
#include "screen/lists/list_base.h"

namespace crownring::screen {

struct BalloonLine {
    QString balloon;
    QString title;
    QString flown; ///< "total time in service 509:45 h · registration 412:30 h"
    QString use;   ///< "310 flights logged for the registration, the last on 2026-11-20"
    QString items; ///< "7 items"
    QString lost;  ///< "OL-2026-017: signed, and no longer supported by the record"
    QString worst; ///< what governs it: "Annual inspection, envelope ENV-101"
    QString word;
    QString left;
    int standing = -1;
    double used = -1;
};

[[nodiscard]] BalloonLine balloonLine(const FleetSheet& sheet, const BalloonCard& card);

/// A row points into the sheet that is shown; its texts are made when it is looked at.
class BalloonModel : public crownring::screen::ListBase {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the place Balloons")

public:
    enum Role {
        BalloonRole = Qt::UserRole + 1,
        TitleRole,
        FlownRole,
        ItemsRole,
        WorstRole,
        LostRole,
        WordRole,
        RemainsRole,
        StandingRole,
        UsedRole,
        SpokenRole ///< the whole row as one sentence

    };
    Q_ENUM(Role)
    using ListBase::ListBase;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    /// The row of the one with that name, -1 when it is not in the list.
    Q_INVOKABLE int find(const QString& name) const;
    void show(const Sheet& sheet, const std::vector<const BalloonCard*>& cards);
    /// Which signed releases the record no longer supports.
    void tell(const LostReleases& lost);
    /// What the sheet mends of what is shown; the other rows stay.
    void mend(const Sheet& sheet);

private:
    struct Row {
        const BalloonCard* card;
        [[nodiscard]] bool sameAs(const Row& other) const { return card->balloon == other.card->balloon; }
        bool operator==(const Row&) const = default;
    };
    [[nodiscard]] const BalloonLine& line(int row) const;

    Sheet m_sheet;
    std::vector<Row> m_rows;
    LostReleases m_lost;
    mutable int m_told = -1; ///< the row that `m_line` is of: one is asked for several texts after the other
    mutable BalloonLine m_line;
};

}
