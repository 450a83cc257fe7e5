// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How an item wears: its readings by place with limit, trend and when the limit is met; of a basket on a map of its
/// sides, floor and runners.

#include "answers/parts/wear.h"
#include "screen/desk/fleet.h"
#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"

#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class WearDesk : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    /// Empty: nothing is asked.
    Q_PROPERTY(QString item READ item WRITE setItem NOTIFY itemChanged FINAL)
    /// It has a map of places.
    Q_PROPERTY(bool basket READ isBasket NOTIFY changed FINAL)
    /// There is something to show: it is a basket, or something that wears was read of it.
    Q_PROPERTY(bool worth READ isWorth NOTIFY changed FINAL)
    /// The place that is looked at, by its slug; empty: all.
    Q_PROPERTY(QString place READ place WRITE setPlace NOTIFY placeChanged FINAL)
    /// "long side 1"; empty while all are looked at.
    Q_PROPERTY(QString placeName READ placeName NOTIFY placeChanged FINAL)
    /// Of a basket all places, in the order of `BasketPlace`. value: its slug; label: its name; detail: its worst
    /// series in a few words; number: how many series; standing: of the worst, -1 where nothing is foretold
    Q_PROPERTY(crownring::screen::ChoiceModel* places READ places CONSTANT FINAL)
    /// Those of the place. label: quantity and place; detail: value, limit, trend, when it is met; standing as above
    Q_PROPERTY(crownring::screen::ChoiceModel* series READ series CONSTANT FINAL)

public:
    using Resident::Resident;

    [[nodiscard]] QString item() const { return m_item; }
    void setItem(const QString& item);
    [[nodiscard]] bool isBasket() const { return m_basket; }
    [[nodiscard]] bool isWorth() const { return m_basket || !m_told.empty(); }
    [[nodiscard]] QString place() const { return m_place; }
    void setPlace(const QString& place);
    [[nodiscard]] QString placeName() const;
    [[nodiscard]] ChoiceModel* places() { return &m_places; }
    [[nodiscard]] ChoiceModel* series() { return &m_series; }
    /// What the form of a reading at the place begins with: the place, and what wears there.
    Q_INVOKABLE QVariantMap givenFor(const QString& place) const;

signals:
    void itemChanged();
    void changed();
    void placeChanged();

private:
    void movedIn() override;
    void look();
    void show();

    QString m_item, m_place;
    std::vector<WearSeries> m_told;
    ChoiceModel m_places, m_series;
    int m_turn = 0;
    bool m_basket = false;
};

}
