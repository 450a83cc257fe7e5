// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the program remembers of its user between two starts: tones, and who writes into each record. It lives among
/// the settings of the program's organisation; what was kept before it named one is taken over once.

#include <QObject>
#include <QtQml/qqmlregistration.h>

class QJSEngine;
class QQmlEngine;

namespace crownring::screen {

class Habits : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool dark READ dark WRITE setDark NOTIFY changed FINAL)
    Q_PROPERTY(QString person READ person WRITE setPerson NOTIFY changed FINAL)

public:
    /// @param remembered false: nothing is read or written (tests, pictures)
    explicit Habits(bool remembered, QObject* parent = nullptr);
    static Habits* create(QQmlEngine*, QJSEngine*);

    [[nodiscard]] bool dark() const { return m_dark; }
    void setDark(bool dark);
    [[nodiscard]] QString person() const { return m_person; }
    void setPerson(const QString& person);
    /// Who writes is remembered for each record by itself: nobody writes into one in the name that another knows.
    void turnTo(const QString& record);

signals:
    void changed();

private:
    void remember(const QString& key, const QVariant& value) const;

    bool m_remembered;
    bool m_dark = false;
    QString m_record;
    QString m_person;
};

}
