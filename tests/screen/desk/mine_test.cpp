// SPDX-License-Identifier: GPL-3.0-or-later

/// "Mine": a choice of balloons, kept for each record by itself, by which every list looks.

#include "screen/balloons/balloons_place.h"
#include "screen/demo_house.h"
#include "screen/next/next_place.h"
#include "screen/next/rig_up_check.h"
#include "test_class.h"

#include <QSettings>

using namespace crownring;
using namespace crownring::screen;

class MineTest : public QObject {
    Q_OBJECT

    QTemporaryDir m_settings;

private slots:
    void initTestCase() {
        QCoreApplication::setOrganizationName(QStringLiteral("Crownring tests"));
        QCoreApplication::setApplicationName(QStringLiteral("mine"));
        QSettings::setDefaultFormat(QSettings::IniFormat);
        QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, m_settings.path());
    }
    void cleanup() { QSettings().clear(); }

    void itIsKeptForEachRecordByItself() {
        {
            Habits habits(true);
            habits.turnTo(QStringLiteral("/shed/one.crownring"));
            habits.setMine(QStringLiteral("QE-OVB"), true);
            habits.setMine(QStringLiteral("QE-OVA"), true);
            habits.setMineOnly(true);
        }
        Habits habits(true);
        habits.turnTo(QStringLiteral("/shed/two.crownring"));
        QVERIFY(habits.mine().isEmpty());
        QVERIFY(!habits.mineOnly());
        QVERIFY(!habits.looked().balloons);
        habits.turnTo(QStringLiteral("/shed/one.crownring"));
        QCOMPARE(habits.mine(), (QStringList{"QE-OVA", "QE-OVB"}));
        QVERIFY(habits.mineOnly());
        QCOMPARE(habits.looked().balloons->size(), std::size_t(2));
    }

    void whoCallsNoneTheirOwnSeesAll() {
        Habits habits(false);
        habits.setMineOnly(true);
        QVERIFY(!habits.looked().balloons);
        habits.setMine(QStringLiteral("QE-OVA"), true);
        QVERIFY(habits.looked().balloons);
        habits.setMine(QStringLiteral("QE-OVA"), false);
        QVERIFY(!habits.looked().balloons);
    }

    void everyListLooksByIt() {
        DemoHouse demo;
        QVERIFY(demo.ready());
        In<NextPlace> next(demo.house);
        In<BalloonsPlace> balloons(demo.house);
        In<RigUpCheck> check(demo.house);
        QTRY_VERIFY_WITH_TIMEOUT(next.ready() && balloons.ready(), 30'000);
        const auto all = next.list()->count();
        auto& habits = demo.house.habits;
        habits.setMine(QStringLiteral("QE-OVA"), true);
        habits.setMine(QStringLiteral("QE-OVB"), true);
        habits.setMineOnly(true);
        const auto& sheet = *demo.house.fleet.sheet();
        const auto own = sheet.rowsOf(Registration("QE-OVA")).size() + sheet.rowsOf(Registration("QE-OVB")).size();
        const auto items = sheet.itemsOf(Registration("QE-OVA")).size() + sheet.itemsOf(Registration("QE-OVB")).size();
        QTRY_COMPARE_WITH_TIMEOUT(next.list()->count(), static_cast<int>(own), 30'000);
        QTRY_COMPARE_WITH_TIMEOUT(balloons.balloons()->count(), 2, 30'000);
        QCOMPARE(balloons.items()->count(), static_cast<int>(items));
        QCOMPARE(next.balloons()->count(), 3); // and "every balloon"
        QCOMPARE(check.balloons()->count(), 2);
        next.clearFilters();
        QTRY_COMPARE_WITH_TIMEOUT(next.list()->count(), static_cast<int>(own), 30'000);
        habits.setMineOnly(false);
        QTRY_COMPARE_WITH_TIMEOUT(next.list()->count(), all, 30'000);
        QTRY_COMPARE_WITH_TIMEOUT(balloons.balloons()->count(), 40, 30'000);
    }
};

CROWNRING_TEST(MineTest, QCoreApplication)
#include "mine_test.moc"
