// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/outlook/pace.h"
#include "test_class.h"

#include <QtTest>

#include <cmath>
#include <vector>

namespace pace_test {

using namespace crownring;

class PaceTest : public QObject {
    Q_OBJECT
private slots:
    void twoYearsMakeAMean() {
        std::vector<double> hours(24, 0);
        hours[0] = 10; // November
        hours[12] = 20;
        const auto pace = paceOf(hours, 11);
        QCOMPARE(pace[10], 15.0);
        QCOMPARE(pace[0], 0.0);
    }

    void aMonthNotSeenIsLikeTheRest() {
        const auto pace = paceOf(std::vector<double>{4, 8}, 6);
        QCOMPARE(pace[5], 4.0);
        QCOMPARE(pace[6], 8.0);
        QCOMPARE(pace[0], 6.0);
        QCOMPARE(paceOf({}, 1)[3], 0.0);
    }

    /// 10 hours a month from May to September only. From the middle of August: 5 + 10 by the end of September, then
    /// May.
    void winterStandsStill() {
        const YearlyPace pace{0, 0, 0, 0, 10, 10, 10, 10, 10, 0, 0, 0};
        QCOMPARE(reachedAt({2026, 8, 0.5}, 5, pace).value(), (PointOfMonth{2026, 8, 1}));
        QCOMPARE(reachedAt({2026, 8, 0.5}, 15, pace).value(), (PointOfMonth{2026, 9, 1}));
        const auto next = reachedAt({2026, 8, 0.5}, 17.5, pace).value();
        QCOMPARE(next.year, 2027);
        QCOMPARE(next.month, 5);
        QVERIFY(std::abs(next.gone - 0.25) < 1e-12);
        QCOMPARE(reachedAt({2026, 8, 0.5}, 0, pace).value(), (PointOfMonth{2026, 8, 0.5}));
    }

    void whatDoesNotFlyNeverGetsThere() {
        QVERIFY(!reachedAt({2026, 1, 0}, 1, {}));
        const YearlyPace hardly{0.01};
        QVERIFY(!reachedAt({2026, 1, 0}, 2, hardly));
        QVERIFY(reachedAt({2026, 1, 0}, 0.9, hardly).has_value());
    }
};

CROWNRING_TEST(PaceTest)

}

#include "pace_test.moc"
