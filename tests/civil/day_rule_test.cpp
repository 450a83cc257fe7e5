// SPDX-License-Identifier: GPL-3.0-or-later
#include "civil/civil_date.h"
#include "test_class.h"

#include <QtTest>
#include <boost/date_time/gregorian/gregorian_types.hpp>
#include <rapidcheck.h>

#include <chrono>

namespace day_rule_test {

using namespace crownring;

namespace {

CivilDate date(const char* iso) { return *CivilDate::parse(iso); }

/// The same question put to the standard library's calendar, whose months only add to a year and month.
CivilDate oracle(CivilDate from, int months, DayRule rule) {
    namespace chrono = std::chrono;
    const chrono::year_month_day start{chrono::sys_days(chrono::days(from.dayNumber()))};
    const auto month = chrono::year_month(start.year(), start.month()) + chrono::months(months);
    const chrono::year_month_day last{month / chrono::last};
    const auto day = rule == DayRule::MonthEnd ? last.day() : std::min(start.day(), last.day());
    return CivilDate::fromDayNumber(chrono::sys_days(month / day).time_since_epoch().count());
}

}

class DayRuleTest : public QObject {
    Q_OBJECT
private slots:
    // Boost.Date_Time 1.74, measured: adding months to the last day of a month snaps to the last day, a day or more
    // late.
    void boostSnapsToTheMonthEndAndWeDoNot() {
        namespace greg = boost::gregorian;
        QVERIFY(greg::date(2023, 2, 28) + greg::months(12) == greg::date(2024, 2, 29));
        QVERIFY(greg::date(2024, 4, 30) + greg::months(1) == greg::date(2024, 5, 31));
        QCOMPARE(addMonths(date("2023-02-28"), 12, DayRule::Same).iso(), std::string("2024-02-28"));
        QCOMPARE(addMonths(date("2024-04-30"), 1, DayRule::Same).iso(), std::string("2024-05-30"));
        // A step back and one on; whoever adds up from the first day at once is not led there.
        QVERIFY(greg::date(2024, 3, 30) - greg::months(1) + greg::months(1) == greg::date(2024, 3, 31));
        QCOMPARE(addMonths(date("2024-03-30"), -1 + 1, DayRule::Same).iso(), std::string("2024-03-30"));
        // The other trap of stepping, ours too: from 31 January by way of February the day is lost, from the anchor
        // not.
        QCOMPARE(addMonths(addMonths(date("2024-01-31"), 1, DayRule::Same), 1, DayRule::Same).iso(),
                 std::string("2024-03-29"));
        QCOMPARE(addMonths(date("2024-01-31"), 2, DayRule::Same).iso(), std::string("2024-03-31"));
    }

    // Reg. (EEC, Euratom) 1182/71 Art. 3(2)(c), from memory: a period in months ends on the same date; where the last
    // month has no such day, on its last day.
    void theSameDayOrTheLastOfAShorterMonth_data() {
        QTest::addColumn<QString>("from");
        QTest::addColumn<int>("months");
        QTest::addColumn<QString>("to");
        QTest::newRow("31 January in a common year") << "2023-01-31" << 1 << "2023-02-28";
        QTest::newRow("31 January in a leap year") << "2024-01-31" << 1 << "2024-02-29";
        QTest::newRow("29 February, a year on") << "2024-02-29" << 12 << "2025-02-28";
        QTest::newRow("29 February, four years on") << "2024-02-29" << 48 << "2028-02-29";
        QTest::newRow("29 February before 2100") << "2096-02-29" << 48 << "2100-02-28";
        QTest::newRow("B1: 10 April 2024, annual") << "2024-04-10" << 12 << "2025-04-10";
        QTest::newRow("B1: the tolerance of one month") << "2025-04-10" << 1 << "2025-05-10";
        QTest::newRow("B5: 29 February 2024, annual") << "2024-02-29" << 12 << "2025-02-28";
        QTest::newRow("B5: its tolerance, from the due date") << "2025-02-28" << 1 << "2025-03-28";
        QTest::newRow("B10: 15 January 2024, annual") << "2024-01-15" << 12 << "2025-01-15";
        QTest::newRow("back over a year's end") << "2024-03-31" << -4 << "2023-11-30";
        QTest::newRow("no month at all") << "2024-03-31" << 0 << "2024-03-31";
    }
    void theSameDayOrTheLastOfAShorterMonth() {
        QFETCH(QString, from);
        QFETCH(int, months);
        QFETCH(QString, to);
        QCOMPARE(addMonths(date(from.toUtf8()), months, DayRule::Same).iso(), to.toStdString());
    }

    // 14 CFR 91.409(a) runs in calendar months, to the end of the month (FAA-H-8083-11 ch. 2): worked cases 7.A A1 to
    // A3.
    void calendarMonthsRunToTheMonthEnd_data() {
        QTest::addColumn<QString>("from");
        QTest::addColumn<int>("months");
        QTest::addColumn<QString>("to");
        QTest::newRow("A1: annual on 15 January 2024") << "2024-01-15" << 12 << "2025-01-31";
        QTest::newRow("A2: annual on 1 January 2024") << "2024-01-01" << 12 << "2025-01-31";
        QTest::newRow("A2: annual on 31 January 2024") << "2024-01-31" << 12 << "2025-01-31";
        QTest::newRow("A3: annual on 10 February 2023, leap") << "2023-02-10" << 12 << "2024-02-29";
        QTest::newRow("A11: annual on 20 June 2024") << "2024-06-20" << 12 << "2025-06-30";
        QTest::newRow("D1: tested in May 2016, ten years") << "2016-05-31" << 120 << "2026-05-31";
        QTest::newRow("D4: made in June 2012, twelve years") << "2012-06-30" << 144 << "2024-06-30";
    }
    void calendarMonthsRunToTheMonthEnd() {
        QFETCH(QString, from);
        QFETCH(int, months);
        QFETCH(QString, to);
        QCOMPARE(addMonths(date(from.toUtf8()), months, DayRule::MonthEnd).iso(), to.toStdString());
    }

    void everyMonthEndInEveryKindOfYearUnderBothRules() {
        for (const int year : {1900, 2000, 2023, 2024, 2025, 2096, 2100})
            for (int month = 1; month <= 12; ++month)
                for (int day = 27; day <= 31; ++day) {
                    const auto from = CivilDate::fromYearMonthDay(year, month, day);
                    if (!from)
                        continue;
                    for (int months = -60; months <= 180; ++months)
                        for (const auto rule : {DayRule::Same, DayRule::MonthEnd}) {
                            const auto to = addMonths(*from, months, rule);
                            QVERIFY2(to == oracle(*from, months, rule),
                                     qPrintable(QString::fromStdString(from->iso())));
                        }
                }
    }

    void anyDayAndAnyNumberOfMonths() {
        QVERIFY(rc::check("as the standard library's calendar has it", [] {
            const auto from = CivilDate::fromDayNumber(*rc::gen::inRange(-140'000, 900'000));
            const auto months = *rc::gen::inRange(-1'000, 1'000);
            const auto rule = *rc::gen::element(DayRule::Same, DayRule::MonthEnd);
            const auto expected = oracle(from, months, rule);
            RC_PRE(expected > CivilDate::fromDayNumber(INT64_MIN));
            RC_ASSERT(addMonths(from, months, rule) == expected);
        }));
        QVERIFY(rc::check("a later start never ends earlier", [] {
            const auto from = CivilDate::fromDayNumber(*rc::gen::inRange(0, 90'000));
            const auto later = addDays(from, *rc::gen::inRange(0, 40));
            const auto months = *rc::gen::inRange(0, 200);
            const auto rule = *rc::gen::element(DayRule::Same, DayRule::MonthEnd);
            RC_ASSERT(addMonths(from, months, rule) <= addMonths(later, months, rule));
        }));
    }
};

CROWNRING_TEST(DayRuleTest)

}

#include "day_rule_test.moc"
