// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Flights from a file: read, asked about where the file leaves something open, looked at, then accepted or not.

#include "acts/flight_import.h"
#include "exchange/log/flight_log.h"
#include "screen/desk/resident.h"
#include "screen/lists/choice_model.h"
#include "screen/record/intake_model.h"

#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class FlightIntake : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(crownring::screen::IntakeModel* rows READ rows CONSTANT FINAL)
    Q_PROPERTY(QString file READ file NOTIFY changed FINAL)
    Q_PROPERTY(bool open READ isOpen NOTIFY changed FINAL)
    Q_PROPERTY(bool reading READ reading NOTIFY changed FINAL)
    /// "12 flights: 10 new, 2 in the record already; 1 row cannot be read"
    Q_PROPERTY(QString summary READ summary NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(QString remarks READ remarks NOTIFY changed FINAL)
    /// What each column of a log is taken for.
    Q_PROPERTY(QString columns READ columns NOTIFY changed FINAL)
    Q_PROPERTY(int acceptable READ acceptable NOTIFY changed FINAL)
    Q_PROPERTY(QString verb READ verb NOTIFY changed FINAL)

    /// What the file leaves open. Values are the names of the answers.
    Q_PROPERTY(bool asksDateOrder READ asksDateOrder NOTIFY changed FINAL)
    Q_PROPERTY(bool asksDurationUnit READ asksDurationUnit NOTIFY changed FINAL)
    Q_PROPERTY(bool asksTemperatureUnit READ asksTemperatureUnit NOTIFY changed FINAL)
    Q_PROPERTY(bool asksFuelUnit READ asksFuelUnit NOTIFY changed FINAL)
    Q_PROPERTY(bool asksLoadUnit READ asksLoadUnit NOTIFY changed FINAL)
    Q_PROPERTY(crownring::screen::ChoiceModel* balloons READ balloons CONSTANT FINAL)
    /// Stands for every row that does not name its balloon.
    Q_PROPERTY(QString balloon READ balloon WRITE setBalloon NOTIFY changed FINAL)
    Q_PROPERTY(bool timesAreUtc READ timesAreUtc WRITE setTimesAreUtc NOTIFY changed FINAL)

public:
    using Resident::Resident;

    Q_INVOKABLE void openFile(const QUrl& file);
    Q_INVOKABLE void close();
    /// "day-first", "month-first", "year-first"
    Q_INVOKABLE void datesAre(const QString& order);
    /// "minutes", "hours", "hours.minutes"
    Q_INVOKABLE void durationsAre(const QString& unit);
    /// "celsius", "fahrenheit"
    Q_INVOKABLE void temperaturesAre(const QString& unit);
    /// "kg", "lb", "l", "usg"
    Q_INVOKABLE void fuelIs(const QString& unit);
    /// "kg", "lb"
    Q_INVOKABLE void loadsAre(const QString& unit);
    Q_INVOKABLE void accept();

    [[nodiscard]] IntakeModel* rows() { return &m_rows; }
    [[nodiscard]] QString file() const { return m_file; }
    [[nodiscard]] bool isOpen() const { return !m_file.isEmpty(); }
    [[nodiscard]] bool reading() const { return m_reading; }
    [[nodiscard]] QString summary() const { return m_summary; }
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] QString remarks() const { return m_remarks; }
    [[nodiscard]] QString columns() const { return m_columns; }
    [[nodiscard]] int acceptable() const { return m_acceptable; }
    [[nodiscard]] QString verb() const;
    [[nodiscard]] bool asksDateOrder() const { return asks(OpenChoice::DateOrder); }
    [[nodiscard]] bool asksDurationUnit() const { return asks(OpenChoice::DurationUnit); }
    [[nodiscard]] bool asksTemperatureUnit() const { return asks(OpenChoice::TemperatureUnit); }
    [[nodiscard]] bool asksFuelUnit() const { return asks(OpenChoice::FuelUnit); }
    [[nodiscard]] bool asksLoadUnit() const { return asks(OpenChoice::LoadUnit); }
    [[nodiscard]] ChoiceModel* balloons() { return &m_balloons; }
    [[nodiscard]] QString balloon() const;
    void setBalloon(const QString& balloon);
    [[nodiscard]] bool timesAreUtc() const { return m_choices.timesAreUtc; }
    void setTimesAreUtc(bool utc);

signals:
    void changed();
    void accepted();

private:
    struct Read;
    [[nodiscard]] static Read readFlights(const QByteArray& bytes, const std::string& file,
                                          const FlightLogChoices& choices);
    [[nodiscard]] bool asks(OpenChoice choice) const;
    void read();
    void judgeThem(const Read& read);
    void take(std::vector<JudgedProposal> judged, const Read& read);
    void showBalloons();

    IntakeModel m_rows;
    ChoiceModel m_balloons;
    QString m_file; ///< its name without the folders
    QByteArray m_bytes;
    FlightLogChoices m_choices;
    std::vector<OpenChoice> m_open;
    std::vector<JudgedProposal> m_judged;
    QString m_summary;
    QString m_problem;
    QString m_remarks;
    QString m_columns;
    int m_acceptable = 0;
    int m_turn = 0;
    bool m_reading = false;
};

}
