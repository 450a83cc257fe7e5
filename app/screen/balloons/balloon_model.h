// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The register: each balloon with what it has flown and what governs it.

#include "screen/desk/fleet.h"
#include "screen/lists/list_base.h"

namespace crownring::screen {

struct BalloonLine {
    QString balloon;
    QString title;
    QString flown; ///< "envelope 509:45 h · registration 412:30 h"
    QString use;   ///< "310 flights logged for the registration, the last on 2026-11-20"
    QString items; ///< "7 items"
    QString worst; ///< what governs it: "Annual inspection, envelope ENV-101"
    QString word;
    QString left;
    int standing = -1;
    double used = -1;
    [[nodiscard]] bool sameAs(const BalloonLine& other) const { return balloon == other.balloon; }
    bool operator==(const BalloonLine&) const = default;
};

[[nodiscard]] BalloonLine balloonLine(const FleetSheet& sheet, const BalloonCard& card);

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
        WordRole,
        LeftRole,
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
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    /// The row of the one with that name, -1 when it is not in the list.
    Q_INVOKABLE int find(const QString& name) const;
    void show(std::vector<BalloonLine> lines) { replaceRows(m_lines, std::move(lines)); }
    void change(BalloonLine line) { changeRow(m_lines, std::move(line)); }

private:
    std::vector<BalloonLine> m_lines;
};

}
