// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The place Balloons: the register of balloons and of all items, with a search over both.

#include "screen/balloons/balloon_model.h"
#include "screen/balloons/item_model.h"
#include "screen/desk/resident.h"

#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class BalloonsPlace : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(crownring::screen::BalloonModel* balloons READ balloons CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::ItemModel* items READ items CONSTANT FINAL)
    Q_PROPERTY(QString words READ words WRITE setWords NOTIFY changed FINAL)
    /// Only items that are fitted to nothing.
    Q_PROPERTY(bool poolOnly READ poolOnly WRITE setPoolOnly NOTIFY changed FINAL)
    Q_PROPERTY(bool ready READ ready NOTIFY changed FINAL)

public:
    using Resident::Resident;
    [[nodiscard]] BalloonModel* balloons() { return &m_balloons; }
    [[nodiscard]] ItemModel* items() { return &m_items; }
    [[nodiscard]] QString words() const { return m_words; }
    void setWords(const QString& words);
    [[nodiscard]] bool poolOnly() const { return m_poolOnly; }
    void setPoolOnly(bool poolOnly);
    [[nodiscard]] bool ready() const;

signals:
    void changed();

private:
    void movedIn() override;
    void look();
    void showAll();
    void showMend();

    Sheet m_sheet; ///< what the lists show
    BalloonModel m_balloons;
    ItemModel m_items;
    QString m_words;
    bool m_poolOnly = false;
};

}
