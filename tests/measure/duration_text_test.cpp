// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/duration_text.h"
#include "test_class.h"

#include <QtTest>
#include <rapidcheck.h>

namespace duration_text_test {

using namespace crownring;

namespace {

/// The minutes that a text means, -1 when it is refused.
qint64 minutesIn(const char* text, BareNumber bare = BareNumber::Minutes) {
    const auto minutes = parseDuration(text, bare);
    return minutes ? minutes->value() : -1;
}

}

class DurationTextTest : public QObject {
    Q_OBJECT
private slots:
    // 100 h = 6,000 min, 10 h = 600 min, 0.1 h = 6 min: arithmetic. The written forms are common practice, no source.
    void readsWhatPeopleWrite_data() {
        QTest::addColumn<QString>("text");
        QTest::addColumn<qint64>("minutes");
        const auto row = [](const char* text, qint64 minutes) { QTest::newRow(text) << text << minutes; };
        row("1:35", 95);
        row("0:05", 5);
        row("1:35 h", 95);
        row("01:35", 95);
        row("412:30", 24750);
        row("95", 95);
        row("95 min", 95);
        row("95min", 95);
        row("95 minutes", 95);
        row("1 minute", 1);
        row("95 mins", 95);
        row("95'", 95);
        row("95 m", 95);
        row("95.0 min", 95);
        row("1 h 35 min", 95);
        row("1h35", 95);
        row("1h35m", 95);
        row("1 hour 35 minutes", 95);
        row("2 hrs 5 min", 125);
        row("1 h", 60);
        row("1 hr", 60);
        row("2 hours", 120);
        row("1.5 h", 90);
        row("1,5 h", 90);
        row("9.4 h", 564);
        row("100 h", 6000);
        row("0.1 h", 6);
        row("0.583 h", 35);
        row("1.5833 h", 95);
        row("  1:35\t", 95);
        row("0", 0);
    }
    void readsWhatPeopleWrite() {
        QFETCH(QString, text);
        QFETCH(qint64, minutes);
        QCOMPARE(minutesIn(text.toUtf8().constData()), minutes);
    }

    void refusesWhatMayMeanSomethingElse_data() {
        QTest::addColumn<QString>("text");
        for (const auto* text : {"",
                                 " ",
                                 "-5",
                                 "-1:30",
                                 "+5",
                                 "1:60",
                                 "1:5:3",
                                 ":30",
                                 "1:",
                                 "1:35 min",
                                 "1.5 min",
                                 "1.5:30",
                                 "h",
                                 "min",
                                 "1e3",
                                 "1.5.2",
                                 "1,234.5",
                                 "0x10",
                                 "nan",
                                 "inf",
                                 "one hour",
                                 "1,500 h",
                                 "1.500 h",
                                 "12,000",
                                 "1.",
                                 ".5 h",
                                 "1 h 60 min",
                                 "1 h 35 h",
                                 "99999999999999999999",
                                 "10000000001",
                                 "166666667 h",
                                 "166666666:41",
                                 "1\xC2\xBD h"})
            QTest::newRow(*text ? text : "(empty)") << QString::fromUtf8(text);
    }
    void refusesWhatMayMeanSomethingElse() {
        QFETCH(QString, text);
        const auto result = parseDuration(text.toStdString());
        QVERIFY(!result);
        QCOMPARE(result.error().code(), Code::BadQuantity);
        QCOMPARE(result.error().arguments, Arguments{text.toStdString()});
    }

    void aBareNumberMeansWhatTheCallerSays() {
        QCOMPARE(minutesIn("2", BareNumber::Minutes), 2);
        QCOMPARE(minutesIn("2", BareNumber::Hours), 120);
        QCOMPARE(minutesIn("1,5", BareNumber::Hours), 90);
        QCOMPARE(minutesIn("1,5", BareNumber::Minutes), -1);
        QCOMPARE(minutesIn("30 min", BareNumber::Hours), 30);
        QCOMPARE(minutesIn("1:30", BareNumber::Hours), 90);
    }

    void halfMinutesRoundUpHoweverADoubleStandsForThem() {
        QCOMPARE(minutesIn("0.025 h"), 2);    // 1.5 min
        QCOMPARE(minutesIn("8.175 h"), -1);   // three decimals behind a whole number may be thousands
        QCOMPARE(minutesIn("8.1750 h"), 491); // 490.5 min
        QCOMPARE(minutesIn("0.0083 h"), 0);
        QCOMPARE(minutesIn("0.0084 h"), 1);
        QCOMPARE(minutesIn("1.58333333333333333 h"), 95);
    }

    void theLargestFigureIsStillRead() {
        QCOMPARE(minutesIn("10000000000"), largestCount);
        QCOMPARE(minutesIn("166666666:40"), largestCount);
    }

    void writesHoursAndMinutes() {
        QCOMPARE(hoursAndMinutes(Minutes(564)), std::string("9:24"));
        QCOMPARE(hoursAndMinutes(Minutes(5)), std::string("0:05"));
        QCOMPARE(hoursAndMinutes(Minutes(0)), std::string("0:00"));
        QCOMPARE(hoursAndMinutes(Minutes(-30)), std::string("-0:30"));
        QCOMPARE(hoursAndMinutes(Minutes(-95)), std::string("-1:35"));
    }

    void writesDecimalHoursRoundedHalfAwayFromZero() {
        QCOMPARE(decimalHours(Minutes(564)), std::string("9.4"));
        QCOMPARE(decimalHours(Minutes(3)), std::string("0.1"));
        QCOMPARE(decimalHours(Minutes(2)), std::string("0.0"));
        QCOMPARE(decimalHours(Minutes(-2)), std::string("0.0"));
        QCOMPARE(decimalHours(Minutes(-3)), std::string("-0.1"));
        QCOMPARE(decimalHours(Minutes(57)), std::string("1.0"));
    }

    void whatIsWrittenIsReadBack() {
        QVERIFY(rc::check("h:mm", [] {
            const Minutes minutes(*rc::gen::inRange<std::int64_t>(0, 10'000'000));
            RC_ASSERT(parseDuration(hoursAndMinutes(minutes)) == minutes);
        }));
        QVERIFY(rc::check("decimal hours, to three minutes", [] {
            const Minutes minutes(*rc::gen::inRange<std::int64_t>(0, 10'000'000));
            const auto read = parseDuration(decimalHours(minutes) + " h");
            RC_ASSERT(read.has_value());
            RC_ASSERT(std::abs((*read - minutes).value()) <= 3);
        }));
    }

    void noTextWhateverBringsItDown() {
        QVERIFY(rc::check("any text", [](const std::string& text) {
            const auto minutes = parseDuration(text);
            RC_ASSERT(!minutes || (minutes->value() >= 0 && minutes->value() <= largestCount));
        }));
    }
};

CROWNRING_TEST(DurationTextTest)

}

#include "duration_text_test.moc"
