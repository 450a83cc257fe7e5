// SPDX-License-Identifier: GPL-3.0-or-later
#include "screen/next/rig_up_check.h"
#include "screen/next/small_shed.h"
#include "test_class.h"

#include <QTest>

using namespace crownring;
using namespace crownring::screen;

namespace {

QString reasonOf(RigUpCheck& check, const QString& title) {
    for (int row = 0; row < check.reasons()->count(); ++row)
        if (check.reasons()->data(check.reasons()->index(row), ReasonModel::TitleRole).toString().contains(title))
            return check.reasons()->data(check.reasons()->index(row), ReasonModel::SaysRole).toString();
    return {};
}

/// As it is read: a number keeps to its unit on the screen.
QString read(QString text) { return text.replace(QChar::Nbsp, u' '); }

QString noteOf(RigUpCheck& check, const QString& title, int role) {
    for (int row = 0; row < check.notes()->count(); ++row)
        if (check.notes()->data(check.notes()->index(row), ReasonModel::TitleRole).toString().contains(title))
            return read(check.notes()->data(check.notes()->index(row), role).toString());
    return {};
}

QStringList names(RigUpCheck& check) {
    QStringList names;
    for (const auto& choice : check.items()->choices())
        names += choice.value;
    return names;
}

}

class RigUpCheckTest : public QObject {
    Q_OBJECT
private slots:
    void moreThanIsLeftSaysWhichLimitIsReachedAndWhen() {
        Shed shed;
        QVERIFY2(shed.ready(), qPrintable(shed.house.desk.trouble()));
        In<RigUpCheck> check(shed.house);
        check.setBalloon(QStringLiteral("QE-ONE"));
        check.setDuration(QStringLiteral("9:00"));
        QTRY_VERIFY_WITH_TIMEOUT(check.answered(), 30'000);
        QVERIFY(check.mayFly());
        QCOMPARE(check.notes()->count(), 0);
        check.setDuration(QStringLiteral("21:00"));
        QTRY_VERIFY_WITH_TIMEOUT(check.answered(), 30'000);
        QVERIFY(!check.mayFly());
        QCOMPARE(read(reasonOf(check, QStringLiteral("E1"))),
                 QStringLiteral("21:00 h planned: the limit at 100:00 h is reached 10:00 h into the flight. Its "
                                "tolerance too is used up, 20:00 h into it."));
    }

    void aToleranceForPositioningCountsOnlyThen() {
        Shed shed("positioning");
        QVERIFY2(shed.ready(), qPrintable(shed.house.desk.trouble()));
        In<RigUpCheck> check(shed.house);
        check.setBalloon(QStringLiteral("QE-ONE"));
        check.setDuration(QStringLiteral("11:00"));
        QTRY_VERIFY_WITH_TIMEOUT(check.answered(), 30'000);
        QVERIFY(!check.mayFly());
        QCOMPARE(read(reasonOf(check, QStringLiteral("E1"))),
                 QStringLiteral("11:00 h planned: the limit at 100:00 h is reached 10:00 h into the flight. Its "
                                "tolerance, up to 20:00 h into it, only serves to reach the place of the inspection."));
        check.setPositioning(true);
        QTRY_VERIFY_WITH_TIMEOUT(check.answered(), 30'000);
        QVERIFY(check.mayFly());
        QVERIFY2(noteOf(check, QStringLiteral("E1"), ReasonModel::MendRole).contains(QStringLiteral("Only because")),
                 qPrintable(noteOf(check, QStringLiteral("E1"), ReasonModel::MendRole)));
    }

    void flyingIntoAToleranceIsSaidUpToItsEnd() {
        Shed shed;
        QVERIFY2(shed.ready(), qPrintable(shed.house.desk.trouble()));
        In<RigUpCheck> check(shed.house);
        check.setBalloon(QStringLiteral("QE-ONE"));
        check.setDuration(QStringLiteral("11:00"));
        QTRY_VERIFY_WITH_TIMEOUT(check.answered(), 30'000);
        QVERIFY(check.mayFly());
        QCOMPARE(noteOf(check, QStringLiteral("E1"), ReasonModel::SaysRole),
                 QStringLiteral("11:00 h planned: the limit at 100:00 h is reached 10:00 h into the flight, the rest "
                                "flies in its tolerance, up to 110:00 h."));
    }

    void aKitThatIsNoBalloonIsIncomplete() {
        Shed shed;
        QVERIFY2(shed.ready(), qPrintable(shed.house.desk.trouble()));
        In<RigUpCheck> check(shed.house);
        check.setBalloon(QStringLiteral("QE-ONE"));
        check.toggle(QStringLiteral("K1"));
        QTRY_VERIFY_WITH_TIMEOUT(check.answered(), 30'000);
        QVERIFY(!check.mayFly());
        QCOMPARE(reasonOf(check, QStringLiteral("Basket")), QStringLiteral("This kit is no whole balloon."));
    }

    void whatIsSearchedForStandsOnTop() {
        Shed shed;
        QVERIFY2(shed.ready(), qPrintable(shed.house.desk.trouble()));
        In<RigUpCheck> check(shed.house);
        check.toggle(QStringLiteral("E1"));
        check.setWords(QStringLiteral("cyl"));
        QCOMPARE(names(check), QStringList({QStringLiteral("C1"), QStringLiteral("C2"), QStringLiteral("E1")}));
        check.setWords({});
        QCOMPARE(names(check).first(), QStringLiteral("E1"));
        QCOMPARE(check.leftOut(), 0);
    }
};

CROWNRING_TEST(RigUpCheckTest, QCoreApplication)
#include "rig_up_check_test.moc"
