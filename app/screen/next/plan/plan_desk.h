// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The visit planner: the visits of the months ahead at least cost, by a file of stations that is chosen once. A visit
/// can be held, forbidden or moved: what that costs more is said first, and it is taken or left. Nothing is written
/// until the visits go into the calendar, all at once, after it was said what is written.

#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"
#include "screen/next/plan/plan_lines.h"

#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class PlanDesk : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    /// "stations.json: Ovelmere workshop, Harrowfell hangar"; empty where none is chosen or it cannot be read.
    Q_PROPERTY(QString stations READ stations NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL) ///< why there is no plan
    Q_PROPERTY(int months READ months WRITE setMonths NOTIFY changed FINAL)
    Q_PROPERTY(int percent READ percent WRITE setPercent NOTIFY changed FINAL) ///< the chance that may be taken
    Q_PROPERTY(bool working READ isWorking NOTIFY went FINAL)
    Q_PROPERTY(QString step READ step NOTIFY went FINAL) ///< "Choosing the visits … 12 s"
    /// There is a plan to be shown.
    Q_PROPERTY(bool planned READ isPlanned NOTIFY changed FINAL)
    /// The record or the day asked is another one since: the plan is to be asked for again.
    Q_PROPERTY(bool overtaken READ isOvertaken NOTIFY changed FINAL)
    Q_PROPERTY(QStringList worth READ worth NOTIFY changed FINAL)
    Q_PROPERTY(crownring::screen::PlanModel* visits READ visits CONSTANT FINAL)
    Q_PROPERTY(QStringList notKept READ notKept NOTIFY changed FINAL)
    Q_PROPERTY(QStringList leftOut READ leftOut NOTIFY changed FINAL)
    Q_PROPERTY(QStringList loose READ loose NOTIFY changed FINAL) ///< planned visits that are no part of it
    /// What the user wishes of the plan; value: its number.
    Q_PROPERTY(crownring::screen::ChoiceModel* wishes READ wishes CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::ChoiceModel* places READ places CONSTANT FINAL) ///< stations to move to
    /// What another plan would mean; empty: none is tried.
    Q_PROPERTY(QString tried READ tried NOTIFY triedChanged FINAL)
    Q_PROPERTY(QStringList means READ means NOTIFY triedChanged FINAL)
    Q_PROPERTY(bool takeable READ isTakeable NOTIFY triedChanged FINAL)
    /// What would be written; empty where the calendar says the same already.
    Q_PROPERTY(QStringList change READ change NOTIFY changed FINAL)
    Q_PROPERTY(bool writable READ isWritable NOTIFY changed FINAL)
    Q_PROPERTY(bool saving READ isSaving NOTIFY changed FINAL)
    Q_PROPERTY(QString writer READ writer NOTIFY changed FINAL) ///< who may be writing

public:
    using Resident::Resident;
    ~PlanDesk() override;

    [[nodiscard]] QString stations() const { return m_stationsText; }
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] int months() const { return m_months; }
    void setMonths(int months);
    [[nodiscard]] int percent() const { return m_percent; }
    void setPercent(int percent);
    [[nodiscard]] bool isWorking() const { return m_work.isUnderWay(); }
    [[nodiscard]] QString step() const;
    [[nodiscard]] bool isPlanned() const { return m_answer != nullptr; }
    [[nodiscard]] bool isOvertaken() const { return m_answer && m_overtaken; }
    [[nodiscard]] QStringList worth() const { return m_worth; }
    [[nodiscard]] PlanModel* visits() { return &m_visits; }
    [[nodiscard]] QStringList notKept() const { return m_notKept; }
    [[nodiscard]] QStringList leftOut() const { return m_leftOut; }
    [[nodiscard]] QStringList loose() const { return m_loose; }
    [[nodiscard]] ChoiceModel* wishes() { return &m_wishLines; }
    [[nodiscard]] ChoiceModel* places() { return &m_places; }
    [[nodiscard]] QString tried() const { return m_triedText; }
    [[nodiscard]] QStringList means() const { return m_means; }
    [[nodiscard]] bool isTakeable() const { return m_triedAnswer != nullptr; }
    [[nodiscard]] QStringList change() const { return m_changeLines; }
    [[nodiscard]] bool isWritable() const;
    [[nodiscard]] bool isSaving() const { return m_saving; }
    [[nodiscard]] QString writer() const;

    /// Remembered for this record where it can be read as one; else its problem is said and nothing changes.
    Q_INVOKABLE void chooseStations(const QUrl& file);
    /// Looks for the plan anew, with what is wished of it.
    Q_INVOKABLE void plan();
    Q_INVOKABLE void stop();

    /// Of a visit in the list. What is held where it stands costs nothing more, and is so at once.
    Q_INVOKABLE void hold(int row);
    /// Tries the plan without holding it.
    Q_INVOKABLE void letGo(int row);
    /// Tries the plan without that visit. @param anywhere without any of that balloon in that week
    Q_INVOKABLE void forbid(int row, bool anywhere);
    /// Tries the plan with it so many weeks later, at that station.
    Q_INVOKABLE void move(int row, int weeks, const QString& station);
    /// "Mon 8 Mar to Fri 12 Mar 2027": that visit so many weeks later.
    Q_INVOKABLE [[nodiscard]] QString weekOf(int row, int weeks) const;
    Q_INVOKABLE [[nodiscard]] QString stationOf(int row) const;
    /// Tries the plan without a wish.
    Q_INVOKABLE void dropWish(int nth);
    Q_INVOKABLE void take();
    Q_INVOKABLE void leave();
    /// Writes what `change` says, all or nothing. @param by who writes
    Q_INVOKABLE void intoCalendar(const QString& by);

signals:
    void changed();
    void went();
    void triedChanged();

private:
    void movedIn() override;
    void lookAtStations();
    [[nodiscard]] Result<PlanQuestion> questionWith(const PlanWishes& wishes);
    void tryOut(PlanWishes wishes, const QString& what);
    void show(std::shared_ptr<const PlanAnswer> answer);
    void showWishes();
    void forget();
    void overtake();

    PlanWork m_work;
    Stations m_stations;
    QString m_stationsText;
    QString m_problem;
    int m_months = 24;
    int m_percent = 5;
    PlanWishes m_wishes;
    std::shared_ptr<const PlanAnswer> m_answer;
    CalendarChange m_change; ///< by it
    bool m_overtaken = false;
    bool m_saving = false;
    PlanModel m_visits;
    ChoiceModel m_wishLines;
    ChoiceModel m_places;
    QStringList m_worth;
    QStringList m_notKept;
    QStringList m_leftOut;
    QStringList m_loose;
    QStringList m_changeLines;

    PlanWishes m_triedWishes;
    std::shared_ptr<const PlanAnswer> m_triedAnswer;
    QString m_triedText;
    QStringList m_means;
};

}
