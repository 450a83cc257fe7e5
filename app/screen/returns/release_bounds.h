// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How far a release after incomplete maintenance lets it fly, as written: a last day, hours, flights. What is left
/// empty is not bounded.

#include "record/kinds/inspections.h"

#include <QtCore/QObject>
#include <QtQml/qqmlregistration.h>

namespace crownring::screen {

class ReleaseBounds : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a release desk")
    Q_PROPERTY(QString until READ until WRITE setUntil NOTIFY changed FINAL)
    Q_PROPERTY(QString aloft READ aloft WRITE setAloft NOTIFY changed FINAL) ///< h:mm or hours
    Q_PROPERTY(QString flights READ flights WRITE setFlights NOTIFY changed FINAL)
    Q_PROPERTY(QString understood READ understood NOTIFY changed FINAL) ///< in whole words
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)       ///< what cannot be read

public:
    using QObject::QObject;
    [[nodiscard]] QString until() const { return m_until; }
    void setUntil(const QString& until) { set(m_until, until); }
    [[nodiscard]] QString aloft() const { return m_aloft; }
    void setAloft(const QString& aloft) { set(m_aloft, aloft); }
    [[nodiscard]] QString flights() const { return m_flights; }
    void setFlights(const QString& flights) { set(m_flights, flights); }
    [[nodiscard]] QString understood() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    [[nodiscard]] const FlownWithin& within() const { return m_within; }
    void clear();

signals:
    void changed();

private:
    void set(QString& field, const QString& written);
    void read();

    QString m_until, m_aloft, m_flights, m_problem;
    FlownWithin m_within;
};

}
