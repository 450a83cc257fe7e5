// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/habits.h"

#include "screen/desk/house.h"

#include <QCoreApplication>
#include <QCryptographicHash>
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

/// A location may hold what no key may.
QString personKey(const QString& record) {
    const auto digest = QCryptographicHash::hash(record.toUtf8(), QCryptographicHash::Sha256).toHex().left(16);
    return QStringLiteral("persons/%1").arg(QString::fromLatin1(digest));
}

}

Habits::Habits(bool remembered, QObject* parent) : QObject(parent), m_remembered(remembered) {
    if (m_remembered) {
        QSettings settings;
        takeOver(settings);
        m_dark = settings.value(QStringLiteral("dark"), false).toBool();
        m_horizonFolded = settings.value(QStringLiteral("horizonFolded"), false).toBool();
        m_grouping = settings.value(QStringLiteral("grouping")).toString();
    }
}

Habits* Habits::create(QQmlEngine* engine, QJSEngine*) { return lent(House::of(*engine).habits); }

template <class Value>
void Habits::keep(Value& have, const Value& next, const char* key) {
    if (next == have)
        return;
    have = next;
    remember(QString::fromLatin1(key), next);
    emit changed();
}

void Habits::setPerson(const QString& person) {
    if (person == m_person)
        return;
    m_person = person;
    remember(personKey(m_record), person);
    emit changed();
}

void Habits::turnTo(const QString& record) {
    if (record.isEmpty() || record == m_record)
        return;
    m_record = record;
    if (!m_remembered)
        return;
    // What was kept before each record had its own is who wrote into the one that there was.
    const QSettings settings;
    m_person = settings.value(personKey(record), settings.value(QStringLiteral("person"))).toString();
    emit changed();
}

void Habits::setDark(bool dark) { keep(m_dark, dark, "dark"); }
void Habits::setHorizonFolded(bool folded) { keep(m_horizonFolded, folded, "horizonFolded"); }
void Habits::setGrouping(const QString& grouping) { keep(m_grouping, grouping, "grouping"); }

void Habits::remember(const QString& key, const QVariant& value) const {
    if (m_remembered)
        QSettings().setValue(key, value);
}

}
