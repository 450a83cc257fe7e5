// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// An item as a component: what it is a part of, the parts that it has, what it came with, what is stamped on it.

#include "answers/directives/fitted.h"
#include "answers/parts/components.h"
#include "screen/desk/fleet.h"
#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"

#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class ComponentDesk : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    /// Empty: nothing is asked.
    Q_PROPERTY(QString item READ item WRITE setItem NOTIFY itemChanged FINAL)
    /// The item that it is fitted to, or empty.
    Q_PROPERTY(QString partOf READ partOf NOTIFY changed FINAL)
    /// It is on a balloon or in an item: another can take its place.
    Q_PROPERTY(bool fitted READ isFitted NOTIFY changed FINAL)
    /// In service, a cylinder that may be filled as far as its kind goes.
    Q_PROPERTY(bool vessel READ isVessel NOTIFY changed FINAL)
    Q_PROPERTY(QString stamped READ stamped NOTIFY changed FINAL)
    Q_PROPERTY(QString filled READ filled NOTIFY changed FINAL)
    Q_PROPERTY(QString lot READ lot NOTIFY changed FINAL)
    /// Since new, and since overhaul.
    Q_PROPERTY(QString times READ times NOTIFY changed FINAL)
    Q_PROPERTY(QString release READ release NOTIFY changed FINAL)
    /// value: the part; label: what it is; detail: serial number, lot, release, clock; standing: its worst
    Q_PROPERTY(crownring::screen::ChoiceModel* parts READ parts CONSTANT FINAL)
    /// What a list of its parts says, a part a line; empty where there is none.
    Q_PROPERTY(QString listed READ listed NOTIFY changed FINAL)

public:
    using Resident::Resident;

    [[nodiscard]] QString item() const { return m_item; }
    void setItem(const QString& item);
    [[nodiscard]] QString partOf() const { return m_partOf; }
    [[nodiscard]] bool isFitted() const { return m_fitted; }
    [[nodiscard]] bool isVessel() const { return m_vessel; }
    [[nodiscard]] QString stamped() const { return m_stamped; }
    [[nodiscard]] QString filled() const { return m_filled; }
    [[nodiscard]] QString lot() const { return m_lot; }
    [[nodiscard]] QString times() const { return m_times; }
    [[nodiscard]] QString release() const { return m_release; }
    [[nodiscard]] ChoiceModel* parts() { return &m_parts; }
    [[nodiscard]] QString listed() const { return m_listed; }

signals:
    void itemChanged();
    void changed();

private:
    struct Told {
        std::map<ItemId, Component> components;
        FittedThing listed;
    };
    void movedIn() override;
    void look();
    void take(const Sheet& sheet, const ItemFacts& item, const std::vector<const ItemFacts*>& parts, const Told& told);

    QString m_item, m_partOf, m_stamped, m_filled, m_lot, m_times, m_release, m_listed;
    ChoiceModel m_parts;
    int m_turn = 0;
    bool m_fitted = false;
    bool m_vessel = false;
};

}
