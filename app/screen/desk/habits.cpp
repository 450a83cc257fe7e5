// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/habits.h"

#include "screen/desk/house.h"

#include <QCoreApplication>
#include <QSettings>

namespace crownring::screen {

namespace {

/// Qt keeps what an organisation without a name has under this one.
void takeOver(QSettings& settings) {
    if (!settings.allKeys().isEmpty())
        return;
    const QSettings before(QStringLiteral("Unknown Organization"), QCoreApplication::applicationName());
    for (const auto& key : {QStringLiteral("dark"), QStringLiteral("person")})
        if (before.contains(key))
            settings.setValue(key, before.value(key));
}

}

Habits::Habits(bool remembered, QObject* parent) : QObject(parent), m_remembered(remembered) {
    if (m_remembered) {
        QSettings settings;
        takeOver(settings);
        m_dark = settings.value(QStringLiteral("dark"), false).toBool();
        m_person = settings.value(QStringLiteral("person")).toString();
    }
}

Habits* Habits::create(QQmlEngine* engine, QJSEngine*) { return lent(House::of(*engine).habits); }

void Habits::setDark(bool dark) {
    if (dark == m_dark)
        return;
    m_dark = dark;
    remember(QStringLiteral("dark"), dark);
    emit changed();
}

void Habits::setPerson(const QString& person) {
    if (person == m_person)
        return;
    m_person = person;
    remember(QStringLiteral("person"), person);
    emit changed();
}

void Habits::remember(const QString& key, const QVariant& value) const {
    if (m_remembered)
        QSettings().setValue(key, value);
}

}
