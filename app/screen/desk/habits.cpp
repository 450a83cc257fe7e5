// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/habits.h"

#include <QJSEngine>
#include <QSettings>

namespace crownring::screen {

namespace {
Habits* instance = nullptr;
}

Habits::Habits(bool remembered, QObject* parent) : QObject(parent), m_remembered(remembered) {
    instance = this;
    if (m_remembered) {
        const QSettings settings;
        m_dark = settings.value(QStringLiteral("dark"), false).toBool();
        m_person = settings.value(QStringLiteral("person")).toString();
    }
}

Habits::~Habits() { instance = nullptr; }

Habits* Habits::current() { return instance; }

Habits* Habits::create(QQmlEngine*, QJSEngine*) {
    QJSEngine::setObjectOwnership(instance, QJSEngine::CppOwnership);
    return instance;
}

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
