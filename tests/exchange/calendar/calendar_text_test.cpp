// SPDX-License-Identifier: GPL-3.0-or-later

/// iCalendar after RFC 5545 (read), as a parser reads it that is not ours (python3-icalendar).

#include "exchange/calendar/calendar_text.h"
#include "exchange/calendar/read_calendar.h"
#include "test_class.h"

#include <QtTest>

#include <array>

namespace calendar_text_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

CivilDate dayOf(const char* text) { return CivilDate::parse(text).value(); }
const CivilDate asked = dayOf("2024-01-31");

CalendarEvent annual(const char* first, const char* last) {
    return {calendarUid(std::array<std::string_view, 3>{"due", "ENV-1", "us.annual"}),
            dayOf(first),
            dayOf(last),
            "Annual inspection (QE-OAK, envelope ENV-1)",
            "14 CFR 91.409(a)(1)",
            {"due"}};
}

QJsonObject onlyEvent(const CalendarEvent& event) {
    return readCalendar(calendarText(std::span(&event, 1), "Crownring", asked)).at(0).toObject();
}

constexpr const char* hardText = "Hose; \"A, B\" C\\D of Überlingen – 3 × 10⁻³\nA second line\ta tab";

}

class CalendarTextTest : public QObject {
    Q_OBJECT

private slots:
    /// 3.6.1: DTEND is the day after. 28 and 29 February, the ends of months and of years.
    void aDueIsOfOneWholeDay_data() {
        QTest::addColumn<QString>("due");
        QTest::addColumn<QString>("after");
        QTest::newRow("leap day") << "2024-02-29"
                                  << "2024-03-01";
        QTest::newRow("the day before a leap day") << "2024-02-28"
                                                   << "2024-02-29";
        QTest::newRow("end of February in a common year") << "2025-02-28"
                                                          << "2025-03-01";
        QTest::newRow("end of a month") << "2026-04-30"
                                        << "2026-05-01";
        QTest::newRow("end of the year") << "2026-12-31"
                                         << "2027-01-01";
        QTest::newRow("before 1970") << "1969-12-31"
                                     << "1970-01-01";
    }
    void aDueIsOfOneWholeDay() {
        QFETCH(const QString, due);
        QFETCH(const QString, after);
        const auto event = onlyEvent(annual(due.toUtf8(), due.toUtf8()));
        QCOMPARE(event[QStringLiteral("first")].toString(), due);
        QCOMPARE(event[QStringLiteral("after")].toString(), after);
        QVERIFY(!event[QStringLiteral("busy")].toBool());
    }
    void aVisitTakesItsDaysUp() {
        auto visit = annual("2024-02-26", "2024-03-01");
        visit.isBusy = true;
        const auto event = onlyEvent(visit);
        QCOMPARE(event[QStringLiteral("first")].toString(), QStringLiteral("2024-02-26"));
        QCOMPARE(event[QStringLiteral("after")].toString(), QStringLiteral("2024-03-02"));
        QVERIFY(event[QStringLiteral("busy")].toBool());
    }
    void theLastDayThatLibicalWritesHasADayAfter() {
        const auto last = std::to_string(lastCalendarYear) + "-12-31";
        QCOMPARE(onlyEvent(annual(last.c_str(), last.c_str()))[QStringLiteral("after")].toString(),
                 QStringLiteral("3000-01-01"));
    }

    /// 3.3.11: semicolons, commas, backslashes and ends of lines; 3.1: long lines are folded between characters.
    void whatPeopleWriteComesBackAsItWas() {
        auto event = annual("2024-02-29", "2024-02-29");
        event.summary = hardText;
        for (int i = 0; i < 30; ++i)
            event.description += "Überprüfung; ";
        const auto read = onlyEvent(event);
        QCOMPARE(read[QStringLiteral("summary")].toString(), QString::fromUtf8(hardText).replace(u'\t', u' '));
        QCOMPARE(read[QStringLiteral("description")].toString(), QString::fromStdString(event.description));
    }

    /// 3.8.4.7: what is read again updates what is there.
    void theSameDueKeepsItsUidWhateverItsDay() {
        const auto before = onlyEvent(annual("2024-02-29", "2024-02-29"));
        const auto event = annual("2025-02-28", "2025-02-28");
        const auto after = readCalendar(calendarText(std::span(&event, 1), "", addDays(asked, 366))).at(0).toObject();
        QCOMPARE(after[QStringLiteral("uid")], before[QStringLiteral("uid")]);
        QVERIFY(after[QStringLiteral("sequence")].toInt() > before[QStringLiteral("sequence")].toInt());
        QVERIFY(after[QStringLiteral("stamp")].toString() > before[QStringLiteral("stamp")].toString());
        QCOMPARE(before[QStringLiteral("stamp")].toString(), QStringLiteral("2024-01-31T00:00:00+00:00"));
    }
    void otherPartsGiveAnotherUid() {
        const auto uid = [](std::string_view item, std::string_view requirement) {
            return calendarUid(std::array<std::string_view, 3>{"due", item, requirement});
        };
        QVERIFY(uid("A", "B.C") != uid("A.B", "C"));
        QVERIFY(uid("A%2EB", "C") != uid("A.B", "C"));
        QVERIFY(uid("Ä", "C") != uid("A", "C"));
        QCOMPARE(uid("ENV 1", "us.annual"), std::string("due.ENV%201.us%2Eannual@crownring"));
    }

    void theSameDayGivesTheSameBytes() {
        const auto event = annual("2024-02-29", "2024-02-29");
        QCOMPARE(calendarText(std::span(&event, 1), "A", asked), calendarText(std::span(&event, 1), "A", asked));
    }
    void aRecordWithoutDuesIsACalendarWithoutEvents() {
        QCOMPARE(readCalendar(calendarText({}, "A", asked)).size(), 0);
    }
    void whatIsNoCalendarIsRefusedByTheReader() {
        QVERIFY_THROWS_EXCEPTION(std::runtime_error, readCalendar("BEGIN:VCALENDAR\nEND:VCALENDAR\n"));
    }
};

CROWNRING_TEST(CalendarTextTest)

}

#include "calendar_text_test.moc"
