// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/desk/habits.h"

#include "screen/desk/house.h"
#include "words/border.h"

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QSettings>

#include <algorithm>

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
QString keyOf(const char* what, const QString& record) {
    const auto digest = QCryptographicHash::hash(record.toUtf8(), QCryptographicHash::Sha256).toHex().left(16);
    return QStringLiteral("%1/%2").arg(QString::fromLatin1(what), QString::fromLatin1(digest));
}

constexpr const char* persons = "persons";
constexpr const char* inspectors = "inspectors";
constexpr const char* stations = "stations";
constexpr const char* toldOf = "told";
constexpr const char* stationsFiles = "stationsFiles";
constexpr const char* mineOf = "mine";
constexpr const char* mineOnlyIn = "mineOnly";

}

Habits::Habits(bool remembered, QObject* parent) : QObject(parent), m_remembered(remembered) {
    if (m_remembered) {
        QSettings settings;
        takeOver(settings);
        m_dark = settings.value(QStringLiteral("dark"), false).toBool();
        m_horizonFolded = settings.value(QStringLiteral("horizonFolded"), false).toBool();
        m_cameraFolder = settings.value(QStringLiteral("cameraFolder")).toString();
        m_tellsLimits = settings.value(QStringLiteral("tellsLimits"), true).toBool();
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
    remember(keyOf(persons, m_record), person);
    emit changed();
}

void Habits::setInspector(const QString& inspector) {
    if (inspector == m_inspector)
        return;
    m_inspector = m_saidInspectors[m_record] = inspector;
    remember(keyOf(inspectors, m_record), inspector);
    emit changed();
}

void Habits::setStation(const QString& station) {
    if (station == m_station)
        return;
    m_station = station;
    remember(keyOf(stations, m_record), station);
    emit changed();
}

void Habits::turnTo(const QString& record) {
    if (record.isEmpty() || record == m_record)
        return;
    m_record = record;
    m_mine.clear();
    m_mineOnly = false;
    m_told.clear();
    m_stationsFile.clear();
    if (!m_remembered)
        return emit mineChanged();
    // What was kept before each record had its own is who wrote into the one that there was.
    const QSettings settings;
    m_person = settings.value(keyOf(persons, record), settings.value(QStringLiteral("person"))).toString();
    m_inspector = m_saidInspectors.value(record);
    m_lastInspector = settings.value(keyOf(inspectors, record)).toString();
    m_station = settings.value(keyOf(stations, record)).toString();
    m_told = settings.value(keyOf(toldOf, record)).toStringList();
    m_stationsFile = settings.value(keyOf(stationsFiles, record)).toString();
    m_mine = settings.value(keyOf(mineOf, record)).toStringList();
    m_mineOnly = settings.value(keyOf(mineOnlyIn, record), false).toBool();
    emit changed();
    emit mineChanged();
}

void Habits::setMine(const QString& balloon, bool mine) {
    if (balloon.isEmpty() || mine == isMine(balloon))
        return;
    if (mine)
        m_mine.append(balloon);
    else
        m_mine.removeAll(balloon);
    m_mine.sort();
    remember(keyOf(mineOf, m_record), m_mine);
    emit mineChanged();
}

void Habits::setMineOnly(bool only) {
    if (only == m_mineOnly)
        return;
    m_mineOnly = only;
    remember(keyOf(mineOnlyIn, m_record), only);
    emit mineChanged();
}

Mine Habits::looked() const {
    if (!mineOnly())
        return {};
    std::set<Registration> balloons;
    for (const auto& each : m_mine)
        balloons.emplace(words::outward(each));
    return {std::move(balloons)};
}

void Habits::setTold(QStringList told) {
    constexpr qsizetype most = 20'000; // of a fleet of ten thousand, what was said twice over
    m_told = told.mid(std::max<qsizetype>(0, told.size() - most));
    remember(keyOf(toldOf, m_record), m_told);
}

void Habits::setStationsFile(const QString& file) {
    if (file == m_stationsFile)
        return;
    m_stationsFile = file;
    remember(keyOf(stationsFiles, m_record), file);
    emit changed();
}

void Habits::setDark(bool dark) { keep(m_dark, dark, "dark"); }
void Habits::setHorizonFolded(bool folded) { keep(m_horizonFolded, folded, "horizonFolded"); }
void Habits::setCameraFolder(const QString& folder) { keep(m_cameraFolder, folder, "cameraFolder"); }
void Habits::setTellsLimits(bool tells) { keep(m_tellsLimits, tells, "tellsLimits"); }
void Habits::setGrouping(const QString& grouping) { keep(m_grouping, grouping, "grouping"); }

void Habits::remember(const QString& key, const QVariant& value) const {
    if (m_remembered)
        QSettings().setValue(key, value);
}

}
