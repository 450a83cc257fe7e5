// SPDX-License-Identifier: GPL-3.0-or-later
#include "civil/civil_date.h"
#include "test_class.h"

#include <QDate>
#include <QtTest>
#include <boost/date_time/gregorian/gregorian_types.hpp>
#include <boost/date_time/gregorian/parsers.hpp>
#include <rapidcheck.h>

#include <chrono>

namespace civil_date_test {

using namespace crownring;

namespace {

// Two calendars that are not ours: the one of the standard library and, where the text matters, Qt's.
std::chrono::sys_days sysDays(CivilDate date) { return std::chrono::sys_days(std::chrono::days(date.dayNumber())); }

// Before main: dates must be right in the initialisers of other sources.
const CivilDate earlyBird = *CivilDate::parse("2024-02-29");

}

class CivilDateTest : public QObject {
    Q_OBJECT
private slots:
    void everyDayFrom1583To2400IsTheDayThatTwoOtherCalendarsHave() {
        std::int32_t number = CivilDate::fromYearMonthDay(1583, 1, 1)->dayNumber();
        const std::int32_t last = CivilDate::fromYearMonthDay(2400, 12, 31)->dayNumber();
        for (; number <= last; ++number) {
            const auto date = CivilDate::fromDayNumber(number);
            const std::chrono::year_month_day oracle(sysDays(date));
            const bool same = date.year() == int(oracle.year()) && unsigned(date.month()) == unsigned(oracle.month()) &&
                              unsigned(date.day()) == unsigned(oracle.day());
            QVERIFY2(same, date.iso().c_str());
            const auto read = CivilDate::parse(date.iso());
            QVERIFY2(read && *read == date, date.iso().c_str());
            const auto iso = QDate(date.year(), date.month(), date.day()).toString(Qt::ISODate).toStdString();
            QVERIFY2(iso == date.iso(), date.iso().c_str());
        }
    }

    // A parser that takes a day that does not exist (SQLite 3.40 takes 2023-02-30) is the trap.
    void everyTextOfADayFrom1900To2200IsTakenExactlyWhenTheDayExists() {
        for (int year = 1900; year <= 2200; ++year)
            for (int month = 0; month <= 13; ++month)
                for (int day = 0; day <= 32; ++day) {
                    const auto text = QString::asprintf("%04d-%02d-%02d", year, month, day).toStdString();
                    const bool exists =
                        std::chrono::year_month_day(std::chrono::year(year), std::chrono::month(unsigned(month)),
                                                    std::chrono::day(unsigned(day)))
                            .ok();
                    QVERIFY2(CivilDate::parse(text).has_value() == exists, text.c_str());
                    QVERIFY2(CivilDate::fromYearMonthDay(year, month, day).has_value() == exists, text.c_str());
                }
    }

    void onlyTheStrictFormIsADate_data() {
        QTest::addColumn<QString>("text");
        for (const auto* text : {"",
                                 "2023-2-3",
                                 "2023-02-3",
                                 "23-02-03",
                                 "20230203",
                                 "20230203x",
                                 "2023/02/03",
                                 "03.02.2023",
                                 "2023-02-03 ",
                                 " 2023-02-03",
                                 "2023-02-03T00:00",
                                 "2023-02-03Z",
                                 "+2023-2-03",
                                 "-023-02-03",
                                 "2023--2-03",
                                 "2023-02-+3",
                                 "now",
                                 "2023-02",
                                 "1582-12-31",
                                 "0000-01-01",
                                 "10000-01-01",
                                 "2023-Feb-03",
                                 "2023-02-30",
                                 "2023-02-29",
                                 "2100-02-29",
                                 "2023-04-31",
                                 "２０２３-02-03"})
            QTest::newRow(*text ? text : "(empty)") << QString::fromUtf8(text);
    }
    void onlyTheStrictFormIsADate() {
        QFETCH(QString, text);
        const auto date = CivilDate::parse(text.toStdString());
        QVERIFY(!date);
        QCOMPARE(date.error().code(), Code::BadDate);
        QCOMPARE(date.error().arguments, Arguments{text.toStdString()});
    }

    // Measured with Boost.Date_Time 1.74: why dates are read here and not there.
    void boostReadsWhatIsNoDateAndWeDoNot() {
        namespace greg = boost::gregorian;
        QVERIFY(greg::from_undelimited_string("20230203x") == greg::date(2023, 2, 3));
        QVERIFY(greg::from_string("2023-2-3") == greg::date(2023, 2, 3));
        QVERIFY(!CivilDate::parse("20230203x"));
        QVERIFY(!CivilDate::parse("2023-2-3"));
    }

    void theEpochAndTheEndsAreThoseOfTheCalendar() {
        QCOMPARE(CivilDate().iso(), std::string("1970-01-01"));
        QCOMPARE(CivilDate::parse("1970-01-01")->dayNumber(), 0);
        QCOMPARE(CivilDate::fromDayNumber(INT64_MIN).iso(), std::string("1583-01-01"));
        QCOMPARE(CivilDate::fromDayNumber(INT64_MAX).iso(), std::string("9999-12-31"));
        using boost::gregorian::date;
        const auto boostNumber = [](int year, unsigned short month, unsigned short day) {
            return std::int32_t(date(static_cast<unsigned short>(year), month, day).day_number()) -
                   std::int32_t(date(1970, 1, 1).day_number());
        };
        QCOMPARE(CivilDate::parse("1583-01-01")->dayNumber(), boostNumber(1583, 1, 1));
        QCOMPARE(CivilDate::parse("9999-12-31")->dayNumber(), boostNumber(9999, 12, 31));
    }

    void datesAreRightBeforeMain() { QCOMPARE(earlyBird.iso(), std::string("2024-02-29")); }

    void daysAreCountedAcrossLeapDays() {
        QCOMPARE(daysBetween(*CivilDate::parse("2024-02-28"), *CivilDate::parse("2024-03-01")).value(),
                 std::int64_t(2));
        QCOMPARE(daysBetween(*CivilDate::parse("2023-02-28"), *CivilDate::parse("2023-03-01")).value(),
                 std::int64_t(1));
        QCOMPARE(daysBetween(*CivilDate::parse("2024-03-01"), *CivilDate::parse("2024-02-28")).value(),
                 std::int64_t(-2));
        // The 90 days of the airworthiness review: worked case 7.C C1 (Part-ML ML.A.901).
        QCOMPARE(addDays(*CivilDate::parse("2025-03-10"), -90).iso(), std::string("2024-12-10"));
    }

    void arithmeticStopsAtTheEnds() {
        const auto last = *CivilDate::parse("9999-12-31");
        const auto first = *CivilDate::parse("1583-01-01");
        QVERIFY(addDays(last, 1) == last);
        QVERIFY(addDays(last, INT64_MAX) == last);
        QVERIFY(addDays(first, -1) == first);
        QVERIFY(addDays(first, INT64_MIN) == first);
        QVERIFY(addMonths(last, 1, DayRule::Same) == last);
        QVERIFY(addMonths(last, INT64_MAX, DayRule::MonthEnd) == last);
        QVERIFY(addMonths(first, -1, DayRule::Same) == first);
        QVERIFY(addMonths(first, INT64_MIN, DayRule::Same) == first);
    }

    void noTextWhateverBringsItDown() {
        QVERIFY(rc::check("any text", [](const std::string& text) {
            if (const auto date = CivilDate::parse(text))
                RC_ASSERT(date->iso() == text);
            if (const auto made = DayOrMonth::parse(text))
                RC_ASSERT(made->iso() == text);
        }));
    }

    // Worked case 7.D D2: a month stamped on a cylinder keeps its precision.
    void aMonthStampedOnACylinderStaysAMonth() {
        const auto stamped = DayOrMonth::parse("2016-05");
        QVERIFY(stamped);
        QCOMPARE(stamped->iso(), std::string("2016-05"));
        QVERIFY(stamped->isMonth());
        QCOMPARE(stamped->lastDay().iso(), std::string("2016-05-31"));
        QVERIFY(*stamped != *DayOrMonth::parse("2016-05-31"));
        QCOMPARE(DayOrMonth::parse("2016-05-01")->iso(), std::string("2016-05-01"));
        QCOMPARE(DayOrMonth::parse("2024-02")->lastDay().iso(), std::string("2024-02-29"));
        // Case D7: "05/06" may be two months; it is refused, as is all else that is no month.
        for (const auto* text : {"05/06", "2016-13", "2016-00", "2016-5", "201605", "2016-05-", "", "2016"})
            QCOMPARE(DayOrMonth::parse(text).error().code(), Code::BadDate);
    }
};

CROWNRING_TEST(CivilDateTest)

}

#include "civil_date_test.moc"
