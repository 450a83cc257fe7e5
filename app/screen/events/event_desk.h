// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is told beside the rows that events make due: the clocks of reports that may be owed, and that a balloon burns
/// more than it did. Nothing here says that a report is owed, or that one was made where no entry says so.

#include "answers/events/told_events.h"
#include "answers/parts/fuel.h"
#include "screen/desk/fleet.h"
#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"

#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class EventDesk : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    /// Of what is fitted to it; empty: of the whole fleet, and nothing of fuel.
    Q_PROPERTY(QString balloon READ balloon WRITE setBalloon NOTIFY asked FINAL)
    /// Somebody looks; nothing is asked before.
    Q_PROPERTY(bool looking READ isLooking WRITE setLooking NOTIFY asked FINAL)
    /// Events of which no report to the authority is in the record. value: the entry; label: what happened, to what;
    /// detail: by when, by which rule
    Q_PROPERTY(crownring::screen::ChoiceModel* clocks READ clocks CONSTANT FINAL)
    /// "2 events may have to be reported; the first 72 hours end on …"; empty where there is none
    Q_PROPERTY(QString summary READ summary NOTIFY changed FINAL)
    /// That the balloon burns more than it did, by which flights; empty where nothing says so.
    Q_PROPERTY(QString fuel READ fuel NOTIFY changed FINAL)

public:
    using Resident::Resident;

    [[nodiscard]] QString balloon() const { return m_balloon; }
    void setBalloon(const QString& balloon);
    [[nodiscard]] bool isLooking() const { return m_looking; }
    void setLooking(bool looking);
    [[nodiscard]] ChoiceModel* clocks() { return &m_clocks; }
    [[nodiscard]] QString summary() const { return m_summary; }
    [[nodiscard]] QString fuel() const { return m_fuel; }
    /// What the form that says it was reported begins with: the event, and of what it was.
    Q_INVOKABLE QVariantMap givenFor(int row) const;

signals:
    void asked();
    void changed();

private:
    struct Told {
        std::vector<ToldEvent> events;
        std::optional<FuelTold> fuel;
    };
    void movedIn() override;
    void look();
    void take(const Told& told);
    [[nodiscard]] QString fuelSaid(const FuelTold& told) const;

    QString m_balloon, m_summary, m_fuel;
    ChoiceModel m_clocks;
    std::vector<QVariantMap> m_given; ///< as the rows of `m_clocks`
    int m_turn = 0;
    bool m_looking = false;
};

}
