// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The days to come: who may fly this weekend, which visit comes next, what is planned, and "if I fly four hours on
/// Saturday". What is supposed is written nowhere.

#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"
#include "screen/next/ahead/agenda_model.h"
#include "screen/next/reason_model.h"

#include <QtQml/qqmlregistration.h>

#include <map>

namespace crownring::screen {

class AgendaDesk : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    /// Somebody looks: else nothing is asked of the record.
    Q_PROPERTY(bool shown READ isShown WRITE setShown NOTIFY shownChanged FINAL)
    Q_PROPERTY(bool ready READ isReady NOTIFY changed FINAL)
    Q_PROPERTY(bool renewing READ isRenewing NOTIFY changed FINAL) ///< what is shown is older than the record
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(QString weekend READ weekend NOTIFY changed FINAL)     ///< "Sat 5 Dec and Sun 6 Dec"
    Q_PROPERTY(QString mayFly READ mayFly NOTIFY changed FINAL)       ///< registrations; empty for none
    Q_PROPERTY(QStringList mayNot READ mayNot NOTIFY changed FINAL)   ///< each with its first reason
    Q_PROPERTY(int notChecked READ notChecked NOTIFY changed FINAL)   ///< balloons more than are checked
    Q_PROPERTY(QString nextVisit READ nextVisit NOTIFY changed FINAL) ///< empty where none is planned
    Q_PROPERTY(QStringList nextCovers READ nextCovers NOTIFY changed FINAL)
    Q_PROPERTY(crownring::screen::AgendaModel* agenda READ agenda CONSTANT FINAL)
    Q_PROPERTY(crownring::screen::ChoiceModel* balloons READ balloons CONSTANT FINAL)
    Q_PROPERTY(QString balloon READ balloon WRITE setBalloon NOTIFY supposedChanged FINAL)
    Q_PROPERTY(QString duration READ duration WRITE setDuration NOTIFY supposedChanged FINAL)
    Q_PROPERTY(QString day READ day WRITE setDay NOTIFY supposedChanged FINAL) ///< the coming Saturday where empty
    Q_PROPERTY(QString understood READ understood NOTIFY supposedChanged FINAL)
    Q_PROPERTY(QString wrong READ wrong NOTIFY supposedChanged FINAL)
    /// "If QE-LOFT flies 4 hours on Sat 5 Dec, 2 requirements more are due."
    Q_PROPERTY(QString answer READ answer NOTIFY supposedChanged FINAL)
    Q_PROPERTY(crownring::screen::ReasonModel* makes READ makes CONSTANT FINAL)

public:
    using Resident::Resident;
    ~AgendaDesk() override;

    [[nodiscard]] bool isShown() const { return m_shown; }
    void setShown(bool shown);
    [[nodiscard]] bool isReady() const { return m_sheet != nullptr; }
    [[nodiscard]] bool isRenewing() const;
    [[nodiscard]] QString problem() const;
    [[nodiscard]] QString weekend() const;
    [[nodiscard]] QString mayFly() const { return m_mayFly; }
    [[nodiscard]] QStringList mayNot() const { return m_mayNot; }
    [[nodiscard]] int notChecked() const { return m_sheet ? static_cast<int>(m_sheet->notChecked) : 0; }
    [[nodiscard]] QString nextVisit() const { return m_nextVisit; }
    [[nodiscard]] QStringList nextCovers() const { return m_nextCovers; }
    [[nodiscard]] AgendaModel* agenda() { return &m_agenda; }
    [[nodiscard]] ChoiceModel* balloons() { return &m_balloons; }
    [[nodiscard]] QString balloon() const { return m_balloon; }
    void setBalloon(const QString& balloon);
    [[nodiscard]] QString duration() const { return m_duration; }
    void setDuration(const QString& duration);
    [[nodiscard]] QString day() const { return m_day; }
    void setDay(const QString& day);
    [[nodiscard]] QString understood() const { return m_understood; }
    [[nodiscard]] QString wrong() const { return m_wrong; }
    [[nodiscard]] QString answer() const { return m_answer; }
    [[nodiscard]] ReasonModel* makes() { return &m_makes; }

signals:
    void shownChanged();
    void changed();
    void supposedChanged();

private:
    void movedIn() override;
    void look();
    void showWeekend();
    void showVisits(std::vector<AgendaLine>& lines);
    void suppose();
    void take(const Supposed& supposed, const SupposedFlight& flight);

    bool m_shown = false;
    Ahead m_sheet;
    AgendaModel m_agenda;
    ChoiceModel m_balloons;
    ReasonModel m_makes;
    QString m_mayFly;
    QStringList m_mayNot;
    std::map<Registration, QString> m_whyNot;
    QString m_nextVisit;
    QStringList m_nextCovers;
    QString m_balloon;
    QString m_duration;
    QString m_day;
    QString m_understood;
    QString m_wrong;
    QString m_answer;
    int m_turn = 0;
};

}
