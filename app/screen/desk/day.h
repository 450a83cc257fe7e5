// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The day that the whole screen answers for. Dates reach QML as ISO text only: a date that crosses into JavaScript
/// becomes a moment there and may show the day before.

#include "civil/civil_date.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

class QJSEngine;
class QQmlEngine;

namespace crownring::screen {

class Day : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QString asked READ asked NOTIFY changed FINAL)
    Q_PROPERTY(QString today READ today NOTIFY changed FINAL)
    Q_PROPERTY(bool isToday READ isToday NOTIFY changed FINAL)
    /// "in 96 days", "31 days ago"; empty on the day itself.
    Q_PROPERTY(QString distance READ distance NOTIFY changed FINAL)
    /// "Wednesday, 25 November 2026" in the user's language.
    Q_PROPERTY(QString spoken READ spoken NOTIFY changed FINAL)

public:
    explicit Day(CivilDate today, QObject* parent = nullptr);
    static Day* create(QQmlEngine*, QJSEngine*);

    [[nodiscard]] CivilDate date() const { return m_asked; }
    [[nodiscard]] CivilDate todayDate() const { return m_today; }
    [[nodiscard]] QString asked() const;
    [[nodiscard]] QString today() const;
    [[nodiscard]] bool isToday() const { return m_asked == m_today; }
    [[nodiscard]] QString distance() const;
    [[nodiscard]] QString spoken() const;

    /// Asks for another day, "YYYY-MM-DD". Returns what is wrong with it, or an empty text.
    Q_INVOKABLE QString ask(const QString& iso);
    Q_INVOKABLE void askToday();
    Q_INVOKABLE void stepDays(int days);
    Q_INVOKABLE void stepMonths(int months);

    void setAsked(CivilDate day);
    /// At midnight the day moves on, and with it the day asked unless another was chosen.
    void setToday(CivilDate day);

signals:
    void changed();

private:
    CivilDate m_today;
    CivilDate m_asked;
};

}
