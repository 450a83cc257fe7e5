// SPDX-License-Identifier: GPL-3.0-or-later
/// Two programs write in turn on one record: what one of them remembers holds only until the other has written.
#include "problem/faults/store_fault.h"
#include "said.h"
#include "scratch.h"
#include "store/connection/connection.h"
#include "test_class.h"

#include <QtTest>

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* shed = R"({"entry":"item.entered","id":"a","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"balloon.entered","id":"b","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.fitted","id":"c","on":"2024-01-01","balloon":"QE-ONE","item":"E1"})";

std::string flight(const char* id, const char* on, int minutes) {
    return R"({"entry":"flight.logged","id":")" + std::string(id) + R"(","on":")" + on +
           R"(","balloon":"QE-ONE","minutes":)" + std::to_string(minutes) + "}";
}

std::int64_t minutesOf(Record& record, const char* item = "E1") {
    return record.facts({std::nullopt, {ItemId(item)}}, day("2024-12-31")).value().front().clock.minutes->value();
}

/// As the second program has it: a connection of its own on the same file.
std::unique_ptr<Record> second(const Scratch& scratch) {
    return openRecord(scratch.file(), OpenMode::Existing, WriterId("second")).value();
}

/// What a program did to the record that did not look whether another had written.
void loseAHundredMinutes(const Scratch& scratch) {
    const Connection other(scratch.file(), Access::ReadWrite);
    other.run("UPDATE flight SET minutes_to = minutes_to - 100 WHERE entry_id = 'f3'");
}

}

class TwoProgramsTest : public QObject {
    Q_OBJECT
private slots:
    void everyMinuteCountsWhoeverLoggedIt() {
        Scratch app;
        posted(*app.record, shed);
        const auto ctl = second(app);
        posted(*app.record, flight("f1", "2024-02-01", 60));
        posted(*ctl, flight("f2", "2024-02-02", 100));
        posted(*app.record, flight("f3", "2024-02-03", 10));
        QCOMPARE(minutesOf(*app.record), 170);
        QCOMPARE(minutesOf(*ctl), 170);
        QVERIFY(app.record->verify().value().intact);
        posted(*ctl, flight("f4", "2024-02-04", 1));
        posted(*app.record, flight("f5", "2024-02-05", 2));
        QCOMPARE(minutesOf(*ctl), 173);
        app.reopen();
        QCOMPARE(minutesOf(*app.record), 173);
    }
    void aBatchThatWasRefusedIsNotRemembered() {
        Scratch app;
        posted(*app.record, shed);
        posted(*app.record, flight("f1", "2024-02-01", 60));
        // The first of the two is taken in and taken back.
        QVERIFY(
            !problemsOf(*app.record, flight("f2", "2024-02-02", 100) + "\n" + flight("f1", "2024-02-03", 10)).empty());
        posted(*app.record, flight("f3", "2024-02-03", 10));
        QCOMPARE(minutesOf(*app.record), 70);
    }
    void whatAnotherEnteredIsKnown() {
        Scratch app;
        posted(*app.record, shed);
        const auto ctl = second(app);
        static_cast<void>(app.record->facts({}, day("2024-12-31")).value()); // every name is remembered now
        posted(*ctl, R"({"entry":"item.entered","on":"2024-01-01","item":"B1","kind":"basket"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"B1"})");
        posted(*app.record, R"({"entry":"item.entered","on":"2024-01-01","item":"R1","kind":"burner"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"R1"})");
        posted(*ctl, flight("f1", "2024-02-01", 60));
        for (auto* record : {app.record.get(), ctl.get()}) {
            for (const char* item : {"E1", "B1", "R1"})
                QCOMPARE(minutesOf(*record, item), 60);
            QCOMPARE(record->facts({}, day("2024-12-31")).value().size(), std::size_t{3});
        }
    }
    void whatAnotherRebuiltIsReadAnew() {
        Scratch app;
        posted(*app.record, shed);
        posted(*app.record, flight("f1", "2024-02-01", 60));
        posted(*app.record, flight("f2", "2024-02-02", 100));
        const auto ctl = second(app);
        posted(*ctl, R"({"entry":"entry.voided","on":"2024-02-03","voids":"f2","reason":"never flown"})");
        QVERIFY(ctl->rebuild());
        posted(*app.record, flight("f3", "2024-02-03", 10));
        QCOMPARE(minutesOf(*app.record), 70);
        QVERIFY(app.record->rebuild());
        posted(*ctl, flight("f4", "2024-02-04", 5));
        QCOMPARE(minutesOf(*ctl), 75);
    }
    void totalsThatDoNotAddUpAreFoundAndMended() {
        Scratch app;
        posted(*app.record, shed);
        posted(*app.record, flight("f1", "2024-02-01", 60) + "\n" + flight("f2", "2024-02-02", 100) + "\n" +
                                flight("f3", "2024-02-03", 10));
        loseAHundredMinutes(app);
        QCOMPARE(minutesOf(*app.record), 170); // what it flew in all is kept and proven by itself
        const auto refused =
            problemsOf(*app.record, flight("f4", "2024-02-04", 5)); // else it would count on from there
        QCOMPARE(refused.size(), 1U);
        QVERIFY(refused.front().fault == Fault(StoreFault::SubjectNotIntact));
        const auto verdict = app.record->verify().value();
        QVERIFY(!verdict.intact);
        QVERIFY(verdict.rebuildMends);
        QVERIFY(!verdict.firstBad); // every entry is what was written
        QVERIFY(verdict.reason);
        QVERIFY2(spoken(*verdict.reason).find("QE-ONE") != std::string::npos, spoken(*verdict.reason).c_str());
        QVERIFY(!app.record->backUpTo(app.beside("before"))); // a backup is intact or is none
        QVERIFY(app.record->rebuild());
        QCOMPARE(minutesOf(*app.record), 170);
        QVERIFY(app.record->verify().value().intact);
    }
};

CROWNRING_TEST(TwoProgramsTest, QCoreApplication)
#include "two_programs_test.moc"
