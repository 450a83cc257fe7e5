// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The calendar: months with dues as bands and visits as blocks. A visit that is moved is said back first, with what it
/// covers then and what is due before it; only then the correction is written.

#include "screen/desk/resident.h"
#include "screen/next/ahead/calendar_model.h"

#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class CalendarDesk : public crownring::screen::Resident {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool shown READ isShown WRITE setShown NOTIFY shownChanged FINAL)
    Q_PROPERTY(bool ready READ isReady NOTIFY changed FINAL)
    Q_PROPERTY(bool renewing READ isRenewing NOTIFY changed FINAL) ///< what is shown is older than the record
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(crownring::screen::CalendarModel* lines READ lines CONSTANT FINAL)
    /// How many months are looked at, and what they are called; each begins at its place, from 0 to 1.
    Q_PROPERTY(int months READ months WRITE setMonths NOTIFY spanChanged FINAL)
    Q_PROPERTY(QStringList monthNames READ monthNames NOTIFY spanChanged FINAL)
    Q_PROPERTY(QList<double> monthsAt READ monthsAt NOTIFY spanChanged FINAL)
    Q_PROPERTY(double todayAt READ todayAt NOTIFY spanChanged FINAL)
    Q_PROPERTY(int days READ days NOTIFY spanChanged FINAL) ///< of all these months
    /// Only of this balloon; empty: of all.
    Q_PROPERTY(QString balloon READ balloon WRITE setBalloon NOTIFY changed FINAL)
    /// What a visit would mean on other days; empty: none is being moved.
    Q_PROPERTY(QString proposal READ proposal NOTIFY proposalChanged FINAL)
    Q_PROPERTY(QStringList means READ means NOTIFY proposalChanged FINAL)
    Q_PROPERTY(QString moving READ moving NOTIFY proposalChanged FINAL)        ///< the entry of that visit
    Q_PROPERTY(double movingFrom READ movingFrom NOTIFY proposalChanged FINAL) ///< where it would stand
    Q_PROPERTY(double movingTo READ movingTo NOTIFY proposalChanged FINAL)
    Q_PROPERTY(QString writer READ writer NOTIFY proposalChanged FINAL) ///< who may be writing
    Q_PROPERTY(bool saving READ isSaving NOTIFY proposalChanged FINAL)

public:
    using Resident::Resident;

    [[nodiscard]] bool isShown() const { return m_shown; }
    void setShown(bool shown);
    [[nodiscard]] bool isReady() const { return m_sheet != nullptr; }
    [[nodiscard]] bool isRenewing() const;
    [[nodiscard]] QString problem() const;
    [[nodiscard]] CalendarModel* lines() { return &m_lines; }
    [[nodiscard]] int months() const { return m_span.months; }
    void setMonths(int months);
    [[nodiscard]] QStringList monthNames() const;
    [[nodiscard]] QList<double> monthsAt() const;
    [[nodiscard]] double todayAt() const;
    [[nodiscard]] int days() const;
    [[nodiscard]] QString balloon() const { return m_balloon; }
    void setBalloon(const QString& balloon);
    [[nodiscard]] QString proposal() const { return m_proposal; }
    [[nodiscard]] QStringList means() const { return m_means; }
    [[nodiscard]] QString moving() const { return m_moving; }
    [[nodiscard]] double movingFrom() const { return m_movedTo ? m_span.at(m_movedTo->from) : -1; }
    [[nodiscard]] double movingTo() const { return m_movedTo ? m_span.at(addDays(m_movedTo->to, 1)) : -1; }
    [[nodiscard]] QString writer() const;
    [[nodiscard]] bool isSaving() const { return m_saving; }

    /// So many months on or back.
    Q_INVOKABLE void turn(int months);
    /// Back to the month of the day asked.
    Q_INVOKABLE void turnToNow();
    /// Moves a visit so many days further than it is being moved already, and says what that means.
    Q_INVOKABLE void move(const QString& entry, int days);
    Q_INVOKABLE void leaveIt();
    /// Writes it. @param by who writes
    Q_INVOKABLE void moveIt(const QString& by);
    /// The span's month sheet, or its table or calendar by the file's ending.
    Q_INVOKABLE QUrl proposedFile() const;
    Q_INVOKABLE void save(const QUrl& file);
    /// The letter to the station about a visit, as PDF or text, and beside it what the station reads in.
    Q_INVOKABLE QUrl proposedLetter(const QString& entry) const;
    Q_INVOKABLE void writeLetter(const QString& entry, const QUrl& file);

signals:
    void shownChanged();
    void changed();
    void spanChanged();
    void proposalChanged();

private:
    void movedIn() override;
    void look();
    void wantFabric();
    void show();
    [[nodiscard]] const VisitAhead* visit(const QString& entry) const;

    bool m_shown = false;
    Ahead m_sheet;
    CalendarModel m_lines;
    CalendarSpan m_span;
    bool m_turned = false; ///< by hand: it does not follow the day asked
    QString m_balloon;
    QString m_moving;
    std::optional<VisitPlanned> m_movedTo;
    QString m_proposal;
    QStringList m_means;
    bool m_saving = false;
};

}
