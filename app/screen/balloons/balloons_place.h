// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The place Balloons: the register of balloons and of all items, with a search over both.

#include "screen/balloons/balloon_model.h"
#include "screen/balloons/item_model.h"
#include "screen/balloons/register_sieve.h"
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
    /// What is out of service, and nothing else; else what is in service.
    Q_PROPERTY(bool outOfService READ outOfService WRITE setOutOfService NOTIFY changed FINAL)
    /// How many are.
    Q_PROPERTY(int balloonsOut READ balloonsOut NOTIFY changed FINAL)
    Q_PROPERTY(int itemsOut READ itemsOut NOTIFY changed FINAL)
    /// How many of what is sought `outOfService` hides.
    Q_PROPERTY(int balloonsBeside READ balloonsBeside NOTIFY changed FINAL)
    Q_PROPERTY(int itemsBeside READ itemsBeside NOTIFY changed FINAL)
    /// Whether it is on the screen: releases are asked about only then.
    Q_PROPERTY(bool shown READ shown WRITE setShown NOTIFY shownChanged FINAL)
    Q_PROPERTY(bool ready READ ready NOTIFY changed FINAL)

public:
    using Resident::Resident;
    [[nodiscard]] BalloonModel* balloons() { return &m_balloons; }
    [[nodiscard]] ItemModel* items() { return &m_items; }
    [[nodiscard]] QString words() const { return m_sieve.words.join(u' '); }
    void setWords(const QString& words);
    [[nodiscard]] bool poolOnly() const { return m_sieve.poolOnly; }
    void setPoolOnly(bool poolOnly);
    [[nodiscard]] bool outOfService() const { return m_sieve.outOfService; }
    void setOutOfService(bool outOfService);
    [[nodiscard]] int balloonsOut() const { return m_balloonsOut; }
    [[nodiscard]] int itemsOut() const { return m_itemsOut; }
    [[nodiscard]] int balloonsBeside() const { return m_balloonsBeside; }
    [[nodiscard]] int itemsBeside() const { return m_itemsBeside; }
    [[nodiscard]] bool shown() const { return m_shown; }
    void setShown(bool shown);
    [[nodiscard]] bool ready() const { return m_sheet != nullptr; }

signals:
    void changed();
    void shownChanged();

private:
    void movedIn() override;
    void look();
    void seek();
    void take(const Sheet& sheet, const Sought& found);
    void mend(const Sheet& sheet);
    void askSupport();

    Sheet m_sheet; ///< what the lists show; none before they are filled first
    BalloonModel m_balloons;
    ItemModel m_items;
    RegisterSieve m_sieve;
    std::vector<Sheet> m_since; ///< that came while it is sought
    int m_turn = 0;
    int m_balloonsBeside = 0;
    int m_itemsBeside = 0;
    bool m_seeking = false;
    bool m_shown = false;
    Sheet m_supportAsked; ///< of which it was
    int m_balloonsOut = 0;
    int m_itemsOut = 0;
};

}
