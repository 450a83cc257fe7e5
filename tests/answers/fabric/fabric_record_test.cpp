// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/fabric/record.h"
#include "said.h"
#include "store/scratch.h"
#include "test_class.h"

#include <QtTest>

#include <algorithm>
#include <cmath>

namespace fabric_record_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

/// Two envelopes of one type and one of another. All of it is invented.
constexpr const char* shed = R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope","type":"T-77"}
{"entry":"item.entered","on":"2024-01-01","item":"E2","kind":"envelope","type":"T-77","brought_forward":{"minutes":6000}}
{"entry":"item.entered","on":"2024-01-01","item":"E3","kind":"envelope","type":"T-50"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"type.described","on":"2024-01-01","type":"T-77","kind":"envelope","manual":"Manual 77","revision":"4","gores":24,"rows":11}
{"entry":"limit.stated","on":"2024-01-01","type":"T-77","kind":"envelope","quantity":"grab-strength","unit":"N","least":130,"jaw_mm":25,"source":"Manual 77, 6.3"}
{"entry":"flight.logged","on":"2024-05-10","balloon":"QE-ONE","minutes":600}
{"entry":"flight.logged","on":"2024-06-10","balloon":"QE-ONE","minutes":1200}
{"entry":"flight.logged","on":"2025-06-20","balloon":"QE-ONE","minutes":600})";

std::string pull(const char* on, const char* item, const char* more) {
    return std::string(R"({"entry":"reading.taken","on":")") + on + R"(","item":")" + item +
           R"(","quantity":"grab-strength",)" + more + "}";
}

FabricRecord grabRecord(Books& books, const char* on = "2025-01-01") {
    const auto channels = channelsOf(typeBook(books, day(on)).value(), "T-77");
    return fabricRecord(books, channels.at(0), day(on)).value();
}

const SetReading* readingOf(const FabricRecord& record, double load) {
    const auto found = std::ranges::find_if(record.fleet.readings, [&](const SetReading& reading) {
        return std::abs(std::exp(reading.observed.low) - load) < 1e-6;
    });
    return found == record.fleet.readings.end() ? nullptr : &*found;
}

}

/// From the record to what the fabric room computes with.
class FabricRecordTest : public QObject {
    Q_OBJECT
private slots:
    void hoursRowAndBoundOfEachPull() {
        Scratch scratch;
        posted(*scratch.record, shed);
        posted(*scratch.record, pull("2024-05-20", "E1", R"("unit":"N","held_at":150,"gore":3,"row":11,"jaw_mm":25)"));
        posted(*scratch.record, pull("2024-07-01", "E1", R"("unit":"N","value":140,"gore":3,"row":1,"jaw_mm":25)"));
        posted(*scratch.record, pull("2024-07-01", "E2", R"("unit":"lbf","value":40,"jaw_mm":25.4)"));
        const auto record = grabRecord(*scratch.record);
        QCOMPARE(record.envelopes.size(), std::size_t{2});
        QCOMPARE(record.envelopes[0].limit.value(), 130.0);
        QCOMPARE(record.envelopes[0].id, ItemId("E1"));
        QCOMPARE(record.envelopes[1].id, ItemId("E2"));
        QCOMPARE(record.numberOf(ItemId("E3")), std::size_t{2});
        QCOMPARE(record.fleet.readings.size(), std::size_t{3});
        const auto* held = readingOf(record, 150);
        QVERIFY(held != nullptr);
        QCOMPARE(held->hours, 10.0);
        QCOMPARE(held->row, 1.0);
        QCOMPARE(held->observed.seen, Seen::AtLeast);
        const auto* broke = readingOf(record, 140);
        QCOMPARE(broke->hours, 30.0);
        QCOMPARE(broke->row, 0.0);
        QCOMPARE(broke->observed.seen, Seen::Exactly);
        const auto* pounds = readingOf(record, 40 * 4.4482216152605); // 1 lbf, exactly (NIST SP 811)
        QVERIFY(pounds != nullptr);
        QCOMPARE(pounds->hours, 100.0);
        QCOMPARE(pounds->row, 1.0); // no row is stated
        QCOMPARE(record.sets[0].use.hours, 30.0);
        QCOMPARE(record.sets[1].use.hours, 100.0);
    }
    void newFabricStartsANewClockForItsPanel() {
        Scratch scratch;
        posted(*scratch.record, shed);
        posted(
            *scratch.record,
            R"({"entry":"repair.made","on":"2024-05-31","item":"E1","method":"panel replaced","gore":3,"row":11,"lot":"L-9"})");
        posted(*scratch.record, pull("2024-07-01", "E1", R"("unit":"N","value":300,"gore":3,"row":11,"jaw_mm":25)"));
        posted(*scratch.record, pull("2024-07-01", "E1", R"("unit":"N","value":200,"gore":4,"row":11,"jaw_mm":25)"));
        posted(*scratch.record, pull("2024-05-20", "E1", R"("unit":"N","value":190,"gore":3,"row":11,"jaw_mm":25)"));
        const auto record = grabRecord(*scratch.record);
        const auto* patched = readingOf(record, 300);
        const auto* beside = readingOf(record, 200);
        const auto* before = readingOf(record, 190);
        QCOMPARE(patched->hours, 20.0);
        QCOMPARE(beside->hours, 30.0);
        QCOMPARE(before->set, beside->set);
        QVERIFY(patched->set != beside->set);
        QCOMPARE(record.lots[record.fleet.lotOfSet[patched->set]], std::string("L-9"));
        QCOMPARE(record.sets[patched->set].use.hours, 20.0);
    }
    void pullsOfAnotherTestAreLeftOutAndCounted() {
        // ASTM D5034 grab and D5035 strip, and other widths, are other tests: never converted (see bench/series.h).
        Scratch scratch;
        posted(*scratch.record, shed);
        posted(*scratch.record, pull("2024-07-01", "E1", R"("unit":"N","value":200,"row":11,"jaw_mm":50)"));
        posted(
            *scratch.record,
            R"({"entry":"reading.taken","on":"2024-07-01","item":"E1","quantity":"strip-strength","unit":"N","value":500})");
        const auto record = grabRecord(*scratch.record);
        QCOMPARE(record.fleet.readings.size(), std::size_t{0});
        QCOMPARE(record.leftOut.size(), std::size_t{1});
        QVERIFY(spoken(record.leftOut[0].why).find("50 mm") != std::string::npos);
    }
    void whatIsImpossibleIsLeftOutUnlessSomebodyStandsByIt() {
        Scratch scratch;
        posted(*scratch.record, shed);
        letIn(*scratch.record, pull("2024-07-01", "E1", R"("unit":"N","value":200000,"row":11,"jaw_mm":25)"));
        letIn(*scratch.record, pull("2024-07-02", "E1", R"("unit":"N","value":0,"row":11,"jaw_mm":25)"));
        posted(*scratch.record,
               pull("2024-07-03", "E1", R"("unit":"N","value":1300,"row":11,"jaw_mm":25,"confirmed":true)"));
        const auto record = grabRecord(*scratch.record);
        QCOMPARE(record.leftOut.size(), std::size_t{2});
        QCOMPARE(record.fleet.readings.size(), std::size_t{1});
        QVERIFY(readingOf(record, 1300) != nullptr);
    }
    void lotsAreOfTheirPanels() {
        Scratch scratch;
        posted(*scratch.record, shed);
        posted(*scratch.record,
               R"({"entry":"fabric.stated","on":"2024-01-01","item":"E1","lot":"A","fabric":"K-30","first_row":6}
{"entry":"fabric.stated","on":"2024-01-01","item":"E1","lot":"B","last_row":5}
{"entry":"fabric.stated","on":"2024-01-01","item":"E2","lot":"A"}
{"entry":"repair.made","on":"2024-05-31","item":"E1","method":"panel replaced","gore":3,"row":11,"lot":"B"})");
        posted(*scratch.record, pull("2024-05-20", "E1", R"("unit":"N","value":190,"gore":3,"row":11,"jaw_mm":25)"));
        posted(*scratch.record, pull("2024-07-01", "E1", R"("unit":"N","value":300,"gore":3,"row":11,"jaw_mm":25)"));
        posted(*scratch.record, pull("2024-07-01", "E1", R"("unit":"N","value":210,"gore":3,"row":5,"jaw_mm":25)"));
        posted(*scratch.record, pull("2024-07-01", "E2", R"("unit":"N","value":220,"gore":1,"row":1,"jaw_mm":25)"));
        const auto record = grabRecord(*scratch.record);
        const auto lotOf = [&](double load) { return record.lots[record.sets[readingOf(record, load)->set].lot]; };
        QCOMPARE(lotOf(190), std::string("A"));
        QCOMPARE(lotOf(300), std::string("B"));
        QCOMPARE(lotOf(210), std::string("B"));
        QCOMPARE(lotOf(220), std::string("A"));
        QCOMPARE(record.fabrics, std::vector<std::string>{"K-30"}); // told once of lot A, so of E2 and the repair too
        QVERIFY(readingOf(record, 300)->set != readingOf(record, 210)->set);
        QCOMPARE(readingOf(record, 300)->hours, 20.0);
        QCOMPARE(record.sets[readingOf(record, 210)->set].use.row, 0.4); // the fifth of eleven rows is its highest
        QCOMPARE(record.lots[record.sets[record.setAt(0, {3, 11})].lot], std::string("B"));
        QCOMPARE(record.lots[record.sets[record.setAt(0, {4, 11})].lot], std::string("A"));
    }
    void permeabilityIsFollowedTurned() {
        Scratch scratch;
        posted(*scratch.record, shed);
        posted(
            *scratch.record,
            R"({"entry":"limit.stated","on":"2024-01-01","type":"T-77","kind":"envelope","quantity":"air-permeability","unit":"mm/s","most":40,"pressure_pa":100,"source":"Manual 77, 6.4"}
{"entry":"reading.taken","on":"2024-07-01","item":"E1","quantity":"air-permeability","unit":"mm/s","value":8,"row":11,"pressure_pa":100}
{"entry":"reading.taken","on":"2024-07-01","item":"E1","quantity":"air-permeability","unit":"mm/s","value":10,"row":11,"pressure_pa":125})");
        const auto channels = channelsOf(*scratch.record, ItemId("E1"), day("2025-01-01")).value();
        QCOMPARE(channels.size(), std::size_t{2});
        QVERIFY(!channels[0].rises && channels[1].rises);
        const auto record = fabricRecord(*scratch.record, channels[1], day("2025-01-01")).value();
        QCOMPARE(record.fleet.readings.size(), std::size_t{1}); // another pressure is another series (ISO 9237)
        QCOMPARE(record.leftOut.size(), std::size_t{1});
        QCOMPARE(record.fleet.readings[0].observed.low, std::log(1.0 / 8));
        QCOMPARE(record.lnLimit(0), std::log(1.0 / 40));
        QCOMPARE(channels[1].turned(Band{0.1, 0.2, 0.5}).high, 10.0);
    }
    void heatCountsAsDoseWhereItsLengthIsKnown() {
        Scratch scratch;
        posted(*scratch.record, shed);
        posted(
            *scratch.record,
            R"({"entry":"event.reported","on":"2024-05-20","item":"E1","event":"over-temperature","temp_c":125,"minutes":15}
{"entry":"event.reported","on":"2024-05-21","balloon":"QE-ONE","event":"over-temperature","temp_c":140,"minutes":6}
{"entry":"event.reported","on":"2024-05-22","item":"E1","event":"over-temperature"})");
        posted(*scratch.record, pull("2024-05-20", "E1", R"("unit":"N","value":190,"row":11,"jaw_mm":25)"));
        const auto record = grabRecord(*scratch.record);
        // 15 min at 125 degC and 6 min at 140 degC are 4.2 h at 100 degC with 100 kJ/mol (Arrhenius; derived).
        QVERIFY(std::abs(record.sets[0].use.dose - 4.2) < 0.05);
        QVERIFY(record.sets[0].use.dosePerHour > 0);
    }
    void anotherFleetIsAskedInVain() {
        Scratch scratch;
        posted(*scratch.record, shed);
        const auto channels = channelsOf(*scratch.record, ItemId("E3"), day("2025-01-01"));
        QVERIFY(!channels.has_value());
        QCOMPARE(channels.error().code(), Code::UnknownReference);
        QVERIFY(spokenMend(channels.error()).find("limit.stated") != std::string::npos);
        QCOMPARE(channelsOf(*scratch.record, ItemId("E9"), day("2025-01-01")).error().code(), Code::UnknownReference);
    }
    void thePaceIsThatOfTheLastTwoYearsByMonth() {
        Scratch scratch;
        posted(*scratch.record, shed);
        const auto pace = paceOfItem(*scratch.record, ItemId("E1"), day("2026-03-15")).value();
        // March 2024 to February 2026: June saw 20 h and 10 h, May 10 h and none.
        QCOMPARE(pace[5], 15.0);
        QCOMPARE(pace[4], 5.0);
        QCOMPARE(pace[6], 0.0);
    }
};

CROWNRING_TEST(FabricRecordTest, QCoreApplication)

}

#include "fabric_record_test.moc"
