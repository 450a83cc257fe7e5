// SPDX-License-Identifier: GPL-3.0-or-later

/// What happened to a balloon happened to what flew as it on that day: to what is fitted, and to each kit that was
/// given. Common practice, no source: who reports a hard landing of a balloon rarely says of which of its kits.

#include "store/scratch.h"
#include "test_class.h"

#include <QtTest>

namespace events_of_kits_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

const std::string things =
    R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-TWO"}
{"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"item.entered","on":"2024-01-01","item":"B1","kind":"basket"}
{"entry":"item.entered","on":"2024-01-01","item":"B2","kind":"basket"}
{"entry":"item.entered","on":"2024-01-01","item":"B3","kind":"basket"}
{"entry":"item.fitted","on":"2024-01-01","item":"E1","balloon":"QE-ONE"}
{"entry":"item.fitted","on":"2024-01-01","item":"B1","balloon":"QE-ONE"})";
const std::string landing =
    R"({"entry":"event.reported","id":"o","on":"2024-06-01","balloon":"QE-ONE","event":"hard-landing"})";
const std::string flight =
    R"({"entry":"flight.logged","id":"f","on":"2024-06-01","time":"05:00Z","balloon":"QE-ONE","minutes":60,"kit":["E1","B2"]})";
const std::string second =
    R"({"entry":"flight.logged","id":"g","on":"2024-06-01","time":"18:00Z","balloon":"QE-ONE","minutes":60,"kit":["E1","B2"]})";
const std::string elsewhere =
    R"({"entry":"flight.logged","id":"h","on":"2024-06-01","balloon":"QE-TWO","minutes":60,"kit":["B3"]})";
const std::string dayAfter =
    R"({"entry":"flight.logged","id":"n","on":"2024-06-02","balloon":"QE-ONE","minutes":60,"kit":["B3"]})";

const std::string overMidnight =
    R"({"entry":"flight.logged","id":"m","on":"2024-05-31","time":"23:30Z","balloon":"QE-ONE","minutes":60,"kit":["E1","B2"]}
{"entry":"flight.logged","id":"l","on":"2024-05-31","time":"18:00Z","balloon":"QE-ONE","minutes":60,"kit":["E1","B3"]})";
const std::string afterMidnight =
    R"({"entry":"event.reported","id":"o","on":"2024-06-01","time":"00:20Z","balloon":"QE-ONE","event":"hard-landing"})";

const std::string correctedAgain =
    R"({"entry":"entry.corrected","on":"2024-07-02","replaces":"f","with":{"on":"2024-06-01"}})";

const std::string whatIsFitted =
    R"({"entry":"flight.logged","id":"f","on":"2024-06-01","time":"05:00Z","balloon":"QE-ONE","minutes":60})";
const std::string removedAfter =
    R"({"entry":"item.removed","on":"2024-06-01","time":"07:00Z","item":"B1","balloon":"QE-ONE"})";
const std::string removedAloft =
    R"({"entry":"item.removed","on":"2024-06-01","time":"05:30Z","item":"B1","balloon":"QE-ONE"})";
const std::string fittedAfter =
    R"({"entry":"item.fitted","on":"2024-06-01","time":"12:00Z","item":"B3","balloon":"QE-ONE"})";
const std::string landedAt =
    R"({"entry":"event.reported","id":"o","on":"2024-06-01","time":"09:00Z","balloon":"QE-ONE","event":"hard-landing"})";

std::string voided(const char* id) {
    return "{\"entry\":\"entry.voided\",\"on\":\"2024-07-01\",\"reason\":\"another day\",\"voids\":\"" +
           std::string(id) + "\"}";
}

/// "B1 1, B2 0 …": how many events each item went through.
std::string eventsOf(Record& record) {
    std::string told;
    for (const auto* item : {"E1", "B1", "B2", "B3"}) {
        const auto facts = record.facts({{}, {ItemId(item)}}, day("2024-08-01")).value();
        told += std::string(item) + " " + std::to_string(facts.at(0).events.size()) + " ";
    }
    return told;
}

}

class EventsOfKitsTest : public QObject {
    Q_OBJECT
private slots:
    void anEventFallsOnWhatIsFittedAndOnTheKitsOfThatDay() {
        for (const bool eventFirst : {true, false}) {
            const Scratch scratch;
            auto& record = *scratch.record;
            posted(record, things);
            posted(record, eventFirst ? landing : flight);
            posted(record, eventFirst ? flight : landing);
            posted(record, elsewhere + "\n" + dayAfter);
            QCOMPARE(eventsOf(record), "E1 1 B1 1 B2 1 B3 0 ");
            const auto all = record.facts({}, day("2024-08-01")).value();
            QCOMPARE(std::ranges::count_if(all, [](const ItemFacts& item) { return !item.events.empty(); }), 3);
            QVERIFY(record.verify().value().intact);
            // It stands in the history of each item once.
            for (const auto* item : {"E1", "B1", "B2"}) {
                const auto lines = record.history({}, ItemId(item), day("2024-08-01"), 100).value();
                QCOMPARE(std::ranges::count(lines, EntryId("o"), [](const auto& line) { return line.entry.id; }), 1);
            }
        }
    }
    void whatWasAloftOverMidnightSufferedIt() {
        // Took off at 23:30 of the day before, landed hard at 00:20: times are UTC, and no pilot thinks of that.
        for (const bool eventFirst : {true, false}) {
            const Scratch scratch;
            auto& record = *scratch.record;
            posted(record, things);
            posted(record, eventFirst ? afterMidnight : overMidnight);
            posted(record, eventFirst ? overMidnight : afterMidnight);
            QCOMPARE(eventsOf(record), "E1 1 B1 1 B2 1 B3 0 ");
            QVERIFY(record.verify().value().intact);
            letIn(record, R"({"entry":"entry.corrected","on":"2024-07-01","replaces":"m","with":{"minutes":20}})");
            QCOMPARE(eventsOf(record), "E1 1 B1 1 B2 0 B3 0 "); // it landed before midnight
            QVERIFY(record.verify().value().intact);
            posted(record, R"({"entry":"entry.corrected","on":"2024-07-02","replaces":"m","with":{"minutes":60}})");
            QCOMPARE(eventsOf(record), "E1 1 B1 1 B2 1 B3 0 ");
            letIn(record, voided("o"));
            QCOMPARE(eventsOf(record), "E1 0 B1 0 B2 0 B3 0 ");
            QVERIFY(record.verify().value().intact);
        }
    }
    /// What flew suffered it, whatever became of it before somebody reported it.
    void whatWasRemovedBeforeTheReportSufferedIt() {
        std::vector<std::string> lines{whatIsFitted, removedAfter, landedAt};
        std::ranges::sort(lines);
        do {
            const Scratch scratch;
            auto& record = *scratch.record;
            posted(record, things);
            for (const auto& line : lines)
                letIn(record, line);
            QCOMPARE(eventsOf(record), "E1 1 B1 1 B2 0 B3 0 ");
            QVERIFY(record.verify().value().intact);
            letIn(record, voided("f"));
            QCOMPARE(eventsOf(record), "E1 1 B1 0 B2 0 B3 0 "); // then it was on the ground
        } while (std::ranges::next_permutation(lines).found);
    }
    void norIsItMissedByARemovalAloft() {
        const Scratch scratch;
        auto& record = *scratch.record;
        posted(record, things);
        posted(record, whatIsFitted + "\n" + removedAloft + "\n" + landedAt);
        QCOMPARE(eventsOf(record), "E1 1 B1 1 B2 0 B3 0 ");
        posted(record, fittedAfter); // and what came after the flight did not fly
        QCOMPARE(eventsOf(record), "E1 1 B1 1 B2 0 B3 0 ");
    }
    void aVoidedFlightOrEventFallsOnNothing() {
        const Scratch scratch;
        auto& record = *scratch.record;
        posted(record, things);
        posted(record, landing);
        posted(record, flight + "\n" + second);
        posted(record, voided("f"));
        QCOMPARE(eventsOf(record), "E1 1 B1 1 B2 1 B3 0 "); // the second flight had the same kit
        letIn(record, voided("g"));
        QCOMPARE(eventsOf(record), "E1 1 B1 1 B2 0 B3 0 ");
        posted(record, correctedAgain);
        QCOMPARE(eventsOf(record), "E1 1 B1 1 B2 0 B3 0 "); // a void beats a correction
        letIn(record, voided("o"));
        QCOMPARE(eventsOf(record), "E1 0 B1 0 B2 0 B3 0 ");
        QVERIFY(record.verify().value().intact);
    }
};

CROWNRING_TEST(EventsOfKitsTest, QCoreApplication)

}

#include "events_of_kits_test.moc"
