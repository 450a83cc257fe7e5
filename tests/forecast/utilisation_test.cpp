// SPDX-License-Identifier: GPL-3.0-or-later

/// What a log says of what comes. The bounds are by hand: a flight of an hour every fourth day is 91 h a year.

#include "forecast/flown_logs.h"
#include "test_class.h"

#include <QtTest>

#include <algorithm>
#include <cmath>

namespace utilisation_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

/// Nothing is known of it yet.
UseLog entered(CivilDate tomorrow) { return {tomorrow, addDays(tomorrow, -1), {}}; }

bool isNear(double value, double wished, double by) { return std::abs(value - wished) < by; }

}

class UtilisationTest : public QObject {
    Q_OBJECT

private slots:
    void evenFlyingGoesOn() {
        const auto log = flownLog("2021-01-01", "2025-12-31", everyFourthDay);
        const auto ahead = aheadOf(log, patternOf({log}));
        QVERIFY(isNear(hours(ahead.upTo(dayOf("2026-12-31"), UseClock::Minutes)), 91.25, 2));
        QVERIFY(isNear(ahead.upTo(dayOf("2026-12-31"), UseClock::Landings).mean(), 91.25, 2));
        QVERIFY(isNear(hours(ahead.between(dayOf("2026-07-01"), dayOf("2026-07-31"), UseClock::Minutes)), 7.75, 0.5));
    }

    void nothingIsExpectedInMonthsThatNobodyFlies() {
        const auto log = flownLog("2021-01-01", "2025-12-31", inSummer);
        const auto ahead = aheadOf(log, patternOf({log}));
        QVERIFY(hours(ahead.between(dayOf("2026-01-01"), dayOf("2026-01-31"), UseClock::Minutes)) < 0.4);
        QVERIFY(isNear(hours(ahead.between(dayOf("2026-07-01"), dayOf("2026-07-31"), UseClock::Minutes)), 7.75, 0.7));
        // In winter a year's half goes by and hardly anything is flown.
        QVERIFY(hours(ahead.upTo(dayOf("2026-04-30"), UseClock::Minutes)) < 1.5);
    }

    void whatChangedItsHabitsIsForetoldByTheNewOnes() {
        const auto log = flownLog("2021-01-01", "2025-12-31", [](CivilDate day) {
            return day < dayOf("2023-07-01") ? everyFourthDay(day) * 3 : everyFourthDay(day);
        });
        const double year = hours(aheadOf(log, patternOf({log})).upTo(dayOf("2026-12-31"), UseClock::Minutes));
        QVERIFY2(isNear(year, 91, 15), qPrintable(QString::number(year))); // the mean of its log is 183
    }

    /// Its own four months, January to April, say nothing of a summer; the fleet's do.
    void aNewOneFliesThroughTheYearAsItsFleetDoes() {
        const auto old = flownLog("2021-01-01", "2025-04-30", inSummer);
        const auto late = flownLog("2024-07-01", "2025-04-30", inSummer);
        const auto fleet = patternOf({old, old, old, late});
        const auto ahead = aheadOf(late, fleet);
        QVERIFY(isNear(hours(ahead.between(dayOf("2025-06-01"), dayOf("2025-06-30"), UseClock::Minutes)), 7.5, 1.5));
        QVERIFY(hours(ahead.between(dayOf("2025-12-01"), dayOf("2025-12-31"), UseClock::Minutes)) < 0.4);
    }

    void whatWasNeverFlownIsExpectedToFlyAsItsFleetWithinWideBounds() {
        const auto old = flownLog("2021-01-01", "2025-12-31", everyFourthDay);
        const auto fleet = patternOf({old, old, old});
        const auto own = aheadOf(old, fleet).upTo(dayOf("2026-12-31"), UseClock::Minutes);
        const auto unflown = entered(dayOf("2026-01-01"));
        const auto told = aheadOf(unflown, fleet).upTo(dayOf("2026-12-31"), UseClock::Minutes);
        QVERIFY(isNear(hours(told), 91, 12));
        const auto width = [](const UseDistribution& use) { return use.quantile(0.9) - use.quantile(0.1); };
        QVERIFY(width(told) > 2 * width(own));
    }

    /// An item that is new on a balloon is flown as that balloon is.
    void aStatedLevelTakesThePlaceOfTheFleets() {
        const auto old = flownLog("2021-01-01", "2025-12-31", everyFourthDay);
        const auto unflown = inMonths(entered(dayOf("2026-01-01")));
        const auto fleet = patternOf({old, old, old});
        QVERIFY(isNear(utilisationOf(unflown, fleet).level(), 0.25, 0.03));
        QVERIFY(isNear(utilisationOf(unflown, fleet, 1.0).level(), 1.0, 0.1));
    }

    void weeksWithoutAFlightWidenTheBand() {
        const auto even = flownLog("2021-01-01", "2025-12-31", everyFourthDay);
        // As many flights, all in the first week of each second month.
        const auto bursts = flownLog("2021-01-01", "2025-12-31", [](CivilDate day) {
            return day.month() % 2 == 0 && day.day() <= 7 ? 2 + (day.day() == 1 ? 1 : 0) : 0;
        });
        const auto bandOfMarch = [](const UseLog& log) {
            auto fleet = patternOf({log});
            fleet.season.fill(1);
            auto use = utilisationOf(inMonths(log), fleet);
            use.season.fill(1);
            const UseAhead ahead(use, addDays(log.last, 1));
            return useBandOf(ahead.between(dayOf("2026-03-01"), dayOf("2026-03-31"), UseClock::Minutes));
        };
        QVERIFY(bandOfMarch(bursts).p90 > bandOfMarch(even).p90 * 1.5);
        QCOMPARE(bandOfMarch(bursts).p10, 0.0);
        QVERIFY(bandOfMarch(even).p10 > 3 * 60);
    }

    void theFurtherAheadTheWiderTheBand() {
        const auto log = flownLog("2021-01-01", "2025-12-31", everyFourthDay);
        const auto ahead = aheadOf(log, patternOf({log}));
        const auto spread = [&](const char* first, const char* last) {
            const auto band = useBandOf(ahead.between(dayOf(first), dayOf(last), UseClock::Minutes));
            return (band.p90 - band.p10) / band.p50;
        };
        QVERIFY(spread("2028-06-01", "2028-06-30") > spread("2026-06-01", "2026-06-30"));
    }

    void monthsAddUpToTheirYear() {
        const auto log = flownLog("2021-01-01", "2025-12-31", inSummer);
        const auto ahead = aheadOf(log, patternOf({log}));
        double months = 0;
        for (const auto& span : spansBetween(dayOf("2026-01-01"), dayOf("2026-12-31")))
            months += hours(ahead.between(span.first, addDays(span.first, span.days - 1), UseClock::Minutes));
        QVERIFY(isNear(months, hours(ahead.upTo(dayOf("2026-12-31"), UseClock::Minutes)), 1e-6));
    }

    void aFleetThatFlewNothingIsToldWithinWideBounds() {
        const auto fleet = fleetPattern({});
        const auto ahead = aheadOf(entered(dayOf("2026-01-01")), fleet);
        const auto band = useBandOf(ahead.upTo(dayOf("2026-12-31"), UseClock::Minutes));
        QVERIFY(band.p10 < 60 * 10 && band.p90 > 60 * 30);
    }

    /// Cut as the calendar is: leap years, centuries, a first month that has begun.
    void spansAreCutAtTheEndsOfMonths_data() {
        QTest::addColumn<QString>("from");
        QTest::addColumn<QString>("to");
        QTest::newRow("a leap year") << "2024-01-31"
                                     << "2024-03-01";
        QTest::newRow("a common year") << "2025-02-28"
                                       << "2026-01-01";
        QTest::newRow("a century") << "2100-02-01"
                                   << "2101-03-31";
        QTest::newRow("four centuries") << "1999-12-15"
                                        << "2000-03-02";
        QTest::newRow("before 1970") << "1967-11-30"
                                     << "1970-01-01";
        QTest::newRow("a day") << "2026-12-31"
                               << "2026-12-31";
        QTest::newRow("to the end") << "9999-10-01"
                                    << "9999-12-31";
    }
    void spansAreCutAtTheEndsOfMonths() {
        QFETCH(const QString, from);
        QFETCH(const QString, to);
        auto next = dayOf(from.toUtf8());
        const auto last = dayOf(to.toUtf8());
        const auto spans = spansBetween(next, last);
        for (const auto& span : spans) {
            QCOMPARE(span.first, next);
            QCOMPARE(span.month + 1, span.first.month());
            const auto end = addDays(span.first, span.days - 1);
            QCOMPARE(end, std::min(endOfMonth(span.first), last));
            next = addDays(end, 1);
        }
        QCOMPARE(addDays(spans.back().first, spans.back().days - 1), last);
        QVERIFY(spansBetween(last, addDays(last, -1)).empty());
    }

    void flightsOfOneDayAreFlights() {
        const auto months = inMonths(flownLog("2025-01-15", "2025-02-10", [](CivilDate) { return 2; }));
        QCOMPARE(months.months.size(), std::size_t{2});
        QCOMPARE(months.months[0].month, 0);
        QCOMPARE(months.months[0].days, 17.0);
        QCOMPARE(months.months[0].flights, 34.0);
        QCOMPARE(months.months[0].weeks, 2);
        QCOMPARE(months.months[0].weekSquares, 2 * 14.0 * 14.0);
        QCOMPARE(months.sums.sum[0] / months.sums.flights, 60.0);
    }
};

CROWNRING_TEST(UtilisationTest)

}

#include "utilisation_test.moc"
