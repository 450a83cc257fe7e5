// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The rig-up check: choose a kit and a flight, and hear whether the record allows it and why not.

#include "answers/check_rig_up.h"
#include "screen/desk/fleet.h"
#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"
#include "screen/next/reason_model.h"

#include <QtQml/qqmlregistration.h>

#include <set>

namespace crownring::screen {

class RigUpCheck : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    /// The items to choose from: what was searched for first, then what is chosen, then the others as far as one would
    /// look through them.
    Q_PROPERTY(crownring::screen::ChoiceModel* items READ items CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::ChoiceModel* balloons READ balloons CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::ReasonModel* reasons READ reasons CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::ReasonModel* notes READ notes CONSTANT FINAL)
    /// How many more there are that `items` leaves out.
    Q_PROPERTY(int leftOut READ leftOut NOTIFY kitChanged FINAL)
    Q_PROPERTY(QString words READ words WRITE setWords NOTIFY kitChanged FINAL)
    /// The balloon whose kit was taken last.
    Q_PROPERTY(QString balloon READ balloon WRITE setBalloon NOTIFY kitChanged FINAL)
    Q_PROPERTY(QString kit READ kit NOTIFY kitChanged FINAL)
    Q_PROPERTY(int chosen READ chosen NOTIFY kitChanged FINAL)
    Q_PROPERTY(QString duration READ duration WRITE setDuration NOTIFY flightChanged FINAL)
    Q_PROPERTY(QString understood READ understood NOTIFY flightChanged FINAL) ///< the planned time in full words
    Q_PROPERTY(QString durationProblem READ durationProblem NOTIFY flightChanged FINAL)
    Q_PROPERTY(bool positioning READ positioning WRITE setPositioning NOTIFY flightChanged FINAL)
    Q_PROPERTY(bool checkFlight READ checkFlight WRITE setCheckFlight NOTIFY flightChanged FINAL)
    Q_PROPERTY(QString limitations READ limitations NOTIFY answerChanged FINAL) ///< of a check flight
    Q_PROPERTY(bool answered READ answered NOTIFY answerChanged FINAL)
    Q_PROPERTY(bool mayFly READ mayFly NOTIFY answerChanged FINAL)
    Q_PROPERTY(QString headline READ headline NOTIFY answerChanged FINAL)
    Q_PROPERTY(QString governs READ governs NOTIFY answerChanged FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY answerChanged FINAL)

public:
    using Resident::Resident;

    [[nodiscard]] ChoiceModel* items() { return &m_items; }
    [[nodiscard]] ChoiceModel* balloons() { return &m_balloons; }
    [[nodiscard]] ReasonModel* reasons() { return &m_reasons; }
    [[nodiscard]] ReasonModel* notes() { return &m_notes; }
    [[nodiscard]] int leftOut() const { return m_leftOut; }
    [[nodiscard]] QString words() const { return m_words; }
    void setWords(const QString& words);
    [[nodiscard]] QString balloon() const { return m_balloon; }
    void setBalloon(const QString& balloon);
    [[nodiscard]] QString kit() const;
    [[nodiscard]] int chosen() const { return static_cast<int>(m_kit.size()); }
    [[nodiscard]] QString duration() const { return m_duration; }
    void setDuration(const QString& duration);
    [[nodiscard]] QString understood() const { return m_understood; }
    [[nodiscard]] QString durationProblem() const { return m_durationProblem; }
    [[nodiscard]] bool positioning() const { return m_flight.positioning; }
    void setPositioning(bool positioning);
    [[nodiscard]] bool checkFlight() const { return m_flight.checkFlight; }
    void setCheckFlight(bool checkFlight);
    [[nodiscard]] QString limitations() const { return m_limitations; }

    Q_INVOKABLE void toggle(const QString& item);
    Q_INVOKABLE void clearKit();

    [[nodiscard]] bool answered() const { return m_answered; }
    [[nodiscard]] bool mayFly() const { return m_mayFly; }
    [[nodiscard]] QString headline() const;
    [[nodiscard]] QString governs() const { return m_governs; }
    [[nodiscard]] QString problem() const { return m_problem; }

signals:
    void kitChanged();
    void flightChanged();
    void answerChanged();

private:
    void movedIn() override;
    void look();
    void changeKit();
    void showItems();
    void showBalloons();
    [[nodiscard]] Choice choiceOf(const ItemFacts& item) const;
    void check();
    void take(const RigUpAnswer& answer);

    Sheet m_sheet; ///< what the items are of
    ChoiceModel m_items;
    ChoiceModel m_balloons;
    ReasonModel m_reasons;
    ReasonModel m_notes;
    std::set<ItemId> m_kit;
    QString m_words;
    QString m_balloon;
    QString m_duration;
    QString m_understood;
    QString m_durationProblem;
    PlannedFlight m_flight;
    QString m_governs;
    QString m_limitations;
    QString m_problem;
    int m_turn = 0;
    int m_leftOut = 0;
    bool m_answered = false;
    bool m_mayFly = false;
};

}
