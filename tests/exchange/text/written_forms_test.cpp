// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/text/settled_form.h"
#include "exchange/text/written_date.h"
#include "exchange/text/written_quantity.h"
#include "exchange/text/written_time.h"
#include "test_class.h"

#include <QtTest>

namespace written_forms_test {

using namespace crownring;

namespace {

constexpr auto dmy = DateOrder::DayMonthYear;
constexpr auto mdy = DateOrder::MonthDayYear;
constexpr auto ymd = DateOrder::YearMonthDay;

QString iso(const QString& text, DateOrder order) {
    const auto date = readDate(text.toStdString(), order);
    return date ? QString::fromStdString(date->iso()) : QString();
}

std::optional<DateOrder> settled(const std::vector<std::string>& cells) {
    return settledForm(cells, std::vector{dmy, mdy, ymd}, readDate).form;
}

}

class WrittenFormsTest : public QObject {
    Q_OBJECT
private slots:
    void datesThatMeanOneThing_data() {
        QTest::addColumn<QString>("means");
        const auto row = [](const char* text, const char* means) { QTest::newRow(text) << means; };
        row("2025-12-31", "2025-12-31"); // ISO 8601, extended and basic
        row("20251231", "2025-12-31");
        row("2025/12/31", "2025-12-31");
        row("2025. 12. 31.", "2025-12-31");
        row("31.12.2025", "2025-12-31");
        row("1.2.2025", "2025-02-01");
        row("31.12.25", "2025-12-31");
        row("1.2.99", "1999-02-01"); // POSIX strptime %y, from memory: 69 to 99 are of the last century
        row("1.2.68", "2068-02-01");
        row("1.2.69", "1969-02-01");
        row("31 Dec 2025", "2025-12-31");
        row("31-DEC-2025", "2025-12-31");
        row("Dec 31, 2025", "2025-12-31");
        row("31. Dezember 2025", "2025-12-31");
        row("1. März 2025", "2025-03-01");
        row("1 août 2025", "2025-08-01");
        row("3 de enero de 2025", "2025-01-03");
        row("29 feb 2024", "2024-02-29");
    }
    void datesThatMeanOneThing() {
        QFETCH(QString, means);
        for (const auto order : {dmy, mdy, ymd})
            QCOMPARE(iso(QTest::currentDataTag(), order), means);
    }

    void datesThatFollowTheColumn() {
        QCOMPARE(iso("03/04/2025", dmy), QString("2025-04-03"));
        QCOMPARE(iso("03/04/2025", mdy), QString("2025-03-04"));
        QCOMPARE(iso("03/04/2025", ymd), QString());
        QCOMPARE(iso("12/31/2025", dmy), QString());
        QCOMPARE(iso("25/12/31", ymd), QString("2025-12-31"));
    }

    void noDates_data() {
        QTest::addColumn<int>("unused");
        for (const auto* text :
             {"", "30.02.2025", "31.11.2025", "2025-13-01", "2023-02-29", "45291", "2025-12", "31.12.025", "31.12-2025",
              "1,2,2025", "31 Foo 2025", "0.0.0000", "31.12.2025.4", "99999999", "Dec 31 25"})
            QTest::newRow(*text ? text : "empty") << 0;
    }
    void noDates() {
        for (const auto order : {dmy, mdy, ymd})
            QVERIFY(iso(QTest::currentDataTag(), order).isEmpty());
    }

    void oneDateBeyondTheTwelfthSettlesTheColumn() {
        QCOMPARE(settled({"03/04/2025", "31/12/2025"}), std::optional(dmy));
        QCOMPARE(settled({"03/04/2025", "12/31/2025"}), std::optional(mdy));
        QCOMPARE(settled({"03/04/2025", "05/06/2025"}), std::optional<DateOrder>());
        QVERIFY(settled({"05/05/2025", "2025-06-07"}).has_value()); // alike in every order
        QCOMPARE(settled({"03/04/2025", "12/31/2025", "rubbish", "32/32/2025"}), std::optional(mdy));
    }

    void twoOrdersInOneColumnContradict() {
        const std::vector<std::string> cells = {"31/12/2025", "12/31/2025"};
        const auto form = settledForm(cells, std::vector{dmy, mdy, ymd}, readDate);
        QVERIFY(form.contradicts);
        QVERIFY(!form.form);
    }

    void durations_data() {
        QTest::addColumn<int>("minutes");
        QTest::addColumn<int>("hours");
        QTest::addColumn<int>("hoursPointMinutes");
        const auto row = [](const char* text, int minutes, int hours, int point) {
            QTest::newRow(text) << minutes << hours << point;
        };
        row("1:35", 95, 95, 95);
        row("1:35:40", 96, 96, 96);
        row("0:55:29", 55, 55, 55);
        row("95 min", 95, 95, 95);
        row("1 h 35", 95, 95, 95);
        row("1 Std. 35 Min.", 95, 95, 95);
        row("1h35min", 95, 95, 95);
        row("1,5 heures", 90, 90, 90);
        row("2 hours", 120, 120, 120);
        row("95", 95, 95 * 60, 95 * 60);
        row("1.35", -1, 81, 95);
        row("1,35", -1, 81, 95);
        row("1.5", -1, 90, -1);
        row("1.75", -1, 105, -1);
        row("2", 2, 120, 120);
        row("1:75", -1, -1, -1);
        row("1:7O", -1, -1, -1);
        row("-5", -1, -1, -1);
        row("1.234,5", -1, -1, -1);
        row("about an hour", -1, -1, -1);
        row("10081", -1, -1, -1); // beyond seven days
        row("10080", 10080, -1, -1);
    }
    void durations() {
        QFETCH(int, minutes);
        QFETCH(int, hours);
        QFETCH(int, hoursPointMinutes);
        const auto read = [](BareDuration bare) {
            const auto value = readDuration(QTest::currentDataTag(), bare);
            return value ? static_cast<int>(value->value()) : -1;
        };
        QCOMPARE(read(BareDuration::Minutes), minutes);
        QCOMPARE(read(BareDuration::Hours), hours);
        QCOMPARE(read(BareDuration::HoursPointMinutes), hoursPointMinutes);
    }

    void times_data() {
        QTest::addColumn<int>("minutes");
        QTest::addColumn<int>("offset"); // 9999: not stated
        const auto row = [](const char* text, int minutes, int offset) { QTest::newRow(text) << minutes << offset; };
        row("7:34", 454, 9999);
        row("07:34:59", 454, 9999);
        row("0734", 454, 9999);
        row("0734Z", 454, 0);
        row("07:34 UTC", 454, 0);
        row("07:34:00.123Z", 454, 0); // RFC 3339
        row("09:34+02:00", 574, 120);
        row("09:34 -0330", 574, -210);
        row("7.34 Uhr", 454, 9999);
        row("7h34", 454, 9999);
        row("7:34 pm", 1174, 9999);
        row("12:00 AM", 0, 9999);
        row("12:00 p.m.", 720, 9999);
        row("24:00", -1, 0);
        row("7:60", -1, 0);
        row("7", -1, 0);
        row("13:00 pm", -1, 0);
        row("Ovel Green", -1, 0);
        row("07:34 CET", -1, 0);
    }
    void times() {
        QFETCH(int, minutes);
        QFETCH(int, offset);
        const auto time = readTime(QTest::currentDataTag());
        QCOMPARE(time ? time->seconds / 60 : -1, minutes);
        if (time)
            QCOMPARE(time->offsetMinutes.value_or(9999), offset);
    }

    void temperatures() {
        const auto c = TemperatureUnit::Celsius;
        const auto f = TemperatureUnit::Fahrenheit;
        QCOMPARE(readCelsius("95,5", c), std::optional(Celsius(95.5)));
        QCOMPARE(readCelsius("212", f), std::optional(Celsius(100.0))); // water boils
        QCOMPARE(readCelsius("212 °F", c), std::optional(Celsius(100.0)));
        QCOMPARE(readCelsius("100°C", f), std::optional(Celsius(100.0)));
        QCOMPARE(readCelsius("-40 F", c), std::optional(Celsius(-40.0))); // where both scales meet
        QVERIFY(!readCelsius("hot", c));
        QVERIFY(!readCelsius("1.2.3", c));
        QVERIFY(!readCelsius("100 K", c));
    }

    void yesAndNo() {
        for (const auto* yes : {"yes", "X", "ja", "Oui", "sí", "1", "TRUE"})
            QCOMPARE(readYesNo(yes), std::optional(true));
        for (const auto* no : {"no", "nein", "Non", "0", "-"})
            QCOMPARE(readYesNo(no), std::optional(false));
        QVERIFY(!readYesNo("perhaps"));
    }
};

CROWNRING_TEST(WrittenFormsTest)

}

#include "written_forms_test.moc"
