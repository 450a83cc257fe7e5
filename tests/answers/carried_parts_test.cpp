// SPDX-License-Identifier: GPL-3.0-or-later

/// Parts of items, through a real record. That a part's time in service is its own, wherever it was fitted:
/// regulations.md 7.F (component swap); ML.A.305 and 14 CFR 91.417(a)(2), from memory.

#include "answers/check_rig_up.h"
#include "answers/due.h"
#include "answers/kit_at.h"
#include "answers/touched.h"
#include "store/scratch.h"
#include "test_class.h"
#include "whole_balloon.h"

#include <QtTest>

#include <algorithm>

namespace carried_parts_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* twoBurners = R"({"entry":"item.entered","on":"2024-01-01","item":"R2","kind":"burner"}
{"entry":"item.entered","on":"2024-01-01","item":"COIL","kind":"other","brought_forward":{"minutes":600}}
{"entry":"item.fitted","on":"2024-01-01","item":"R2","balloon":"QE-TWO"})";

const std::vector<std::string> swaps{
    R"({"entry":"item.fitted","on":"2024-03-01","item":"COIL","to":"R1"})",
    R"({"entry":"flight.logged","on":"2024-03-02","balloon":"QE-ONE","minutes":60})",
    R"({"entry":"flight.logged","on":"2024-03-02","balloon":"QE-TWO","minutes":7})",
    R"({"entry":"item.removed","on":"2024-03-10","item":"COIL","from":"R1","time":"23:59Z"})",
    R"({"entry":"item.fitted","on":"2024-03-10","item":"COIL","to":"R2","time":"23:59Z"})",
    R"({"entry":"flight.logged","on":"2024-03-11","balloon":"QE-TWO","minutes":30})",
    R"({"entry":"flight.logged","on":"2024-03-11","balloon":"QE-ONE","minutes":500})",
    R"({"entry":"flight.logged","on":"2024-03-12","balloon":"QE-ONE","minutes":11,"kit":["E1","B1","R2","C1"]})",
    R"({"entry":"item.fitted","on":"2024-03-20","item":"R2","balloon":"QE-ONE"})",
    R"({"entry":"flight.logged","on":"2024-03-21","balloon":"QE-ONE","minutes":2})"};

constexpr const char* valveOnC1 =
    R"({"entry":"item.entered","on":"2024-01-01","item":"VALVE","kind":"other","made":"2015-05"}
{"entry":"item.fitted","on":"2024-03-01","item":"VALVE","to":"C1"}
{"entry":"programme.adopted","on":"2024-01-01","programme":"relief-valve-life","items":["VALVE"]})";

constexpr const char* fireBeforeItWasFitted =
    R"({"entry":"event.reported","on":"2024-02-20","item":"C1","event":"fire"})";
constexpr const char* fireAtItsCarrier = R"({"entry":"event.reported","on":"2024-03-05","item":"C1","event":"fire"})";
constexpr const char* draggedWithTheBalloon =
    R"({"entry":"event.reported","on":"2024-03-06","balloon":"QE-ONE","event":"dragged"})";
constexpr const char* carrierMovesOn = R"({"entry":"item.fitted","on":"2025-06-02","item":"C1","balloon":"QE-TWO"})";
constexpr const char* valveQuarantined =
    R"({"entry":"item.state","on":"2024-03-05","item":"VALVE","state":"quarantined"})";
constexpr const char* carrierAway =
    R"({"entry":"item.state","on":"2024-03-05","item":"C1","state":"away","to":"Test House"})";
constexpr const char* fireAgain = R"({"entry":"event.reported","on":"2024-03-05","item":"C1","event":"fire"})";

const std::vector<ItemId> kit{ItemId("E1"), ItemId("B1"), ItemId("R1"), ItemId("C1")};

std::int64_t minutesOf(Record& record, const char* item, const char* on) {
    return record.facts({std::nullopt, {ItemId(item)}}, day(on)).value().front().clock.minutes->value();
}

bool standsAgainst(const RigUpAnswer& answer, RigUpReason::Kind kind, const char* item) {
    return std::ranges::any_of(answer.verdict.reasons, [&](const RigUpReason& reason) {
        const auto* of = reason.item ? reason.item : reason.row ? reason.row->item : nullptr;
        return reason.kind == kind && of && of->id == ItemId(item);
    });
}

}

class CarriedPartsTest : public QObject {
    Q_OBJECT
private slots:
    void aPartSwappedBetweenTwoBurnersKeepsItsOwnHoursInAnyOrderOfArrival() {
        auto order = swaps;
        for (std::size_t turn = 0; turn < swaps.size(); ++turn) {
            Scratch scratch;
            posted(*scratch.record, aWholeBalloon);
            posted(*scratch.record, twoBurners);
            for (const auto& line : order)
                posted(*scratch.record, line);
            // 600 brought forward, 60 under R1; then under R2: 30 on QE-TWO, 11 in a kit, 2 on QE-ONE.
            QCOMPARE(minutesOf(*scratch.record, "COIL", "2024-03-09"), 660);
            QCOMPARE(minutesOf(*scratch.record, "COIL", "2024-03-11"), 690);
            QCOMPARE(minutesOf(*scratch.record, "COIL", "2024-03-12"), 701);
            QCOMPARE(minutesOf(*scratch.record, "COIL", "2024-03-31"), 703);
            const auto coil =
                scratch.record->facts({std::nullopt, {ItemId("COIL")}}, day("2024-03-31")).value().front();
            QVERIFY(coil.carrier == ItemId("R2") && coil.balloon == Registration("QE-ONE"));
            QVERIFY(scratch.record->rebuild());
            QCOMPARE(minutesOf(*scratch.record, "COIL", "2024-03-31"), 703);
            std::rotate(order.begin(), order.begin() + 3, order.end());
            std::reverse(order.begin(), order.begin() + 4);
        }
    }
    void whatHappenedToItsCarrierHappenedToIt() {
        Scratch scratch;
        posted(*scratch.record, aWholeBalloon);
        posted(*scratch.record, valveOnC1);
        const auto eventsOf = [&](const char* item) {
            return scratch.record->facts({std::nullopt, {ItemId(item)}}, day("2024-06-01"))
                .value()
                .front()
                .events.size();
        };
        posted(*scratch.record, fireBeforeItWasFitted);
        QCOMPARE(eventsOf("VALVE"), std::size_t{0}); // before it was fitted
        posted(*scratch.record, fireAtItsCarrier);
        posted(*scratch.record, draggedWithTheBalloon);
        QCOMPARE(eventsOf("VALVE"), std::size_t{2});
    }
    void itsRowsCountForTheBalloonThatItsCarrierIsOn() {
        Scratch scratch;
        posted(*scratch.record, aWholeBalloon);
        posted(*scratch.record, valveOnC1);
        const auto spent = [&](const char* balloon, const char* on) {
            const auto list = due(*scratch.record, {Registration(balloon), {}}, day(on)).value();
            return std::ranges::any_of(list.rows, [](const DueRow& row) {
                return row.item->id == ItemId("VALVE") && row.state.standing == Standing::Spent;
            });
        };
        QVERIFY(!spent("QE-ONE", "2025-05-31"));
        QVERIFY(spent("QE-ONE", "2025-06-01"));
        posted(*scratch.record, carrierMovesOn);
        QVERIFY(!spent("QE-ONE", "2025-06-02"));
        QVERIFY(spent("QE-TWO", "2025-06-02"));
    }
    void aRigUpAsksThePartsOfWhatFlies() {
        Scratch scratch;
        posted(*scratch.record, aWholeBalloon);
        posted(*scratch.record, valveOnC1);
        QVERIFY(checkRigUp(*scratch.record, kit, day("2024-04-01"), {}).value().verdict.mayFly);
        const auto later = checkRigUp(*scratch.record, kit, day("2025-06-01"), {}).value();
        QVERIFY(!later.verdict.mayFly);
        QVERIFY(standsAgainst(later, RigUpReason::Kind::Standing, "VALVE"));
    }
    void aQuarantinedValveIsNotRiggedUp() {
        Scratch scratch;
        posted(*scratch.record, aWholeBalloon);
        posted(*scratch.record, valveOnC1);
        // As an earlier program let it in: the gate takes it off first.
        letIn(*scratch.record, valveQuarantined);
        const auto answer = checkRigUp(*scratch.record, kit, day("2024-04-01"), {}).value();
        QVERIFY(!answer.verdict.mayFly);
        QVERIFY(standsAgainst(answer, RigUpReason::Kind::OutOfService, "VALVE"));
    }
    void aPartOfWhatIsAwayIsAwayWithIt() {
        Scratch scratch;
        posted(*scratch.record, aWholeBalloon);
        posted(*scratch.record, valveOnC1);
        posted(*scratch.record, carrierAway);
        const auto valve = scratch.record->facts({std::nullopt, {ItemId("VALVE")}}, day("2024-03-06")).value().front();
        QVERIFY(valve.out && valve.out->part == ItemId("C1"));
    }
    void partsAreNoPartOfAKit() {
        Scratch scratch;
        posted(*scratch.record, aWholeBalloon);
        posted(*scratch.record, valveOnC1);
        const auto aboard =
            kitAt(*scratch.record, Registration("QE-ONE"), {Moment::startOf(day("2024-04-01")), EntryId("x")});
        QCOMPARE(aboard.value().size(), kit.size());
    }
    void whatTouchesTheCarrierTouchesItsParts() {
        Scratch scratch;
        posted(*scratch.record, aWholeBalloon);
        posted(*scratch.record, valveOnC1);
        const auto before = latestNumber(*scratch.record).value();
        posted(*scratch.record, fireAgain);
        const auto touched = touchedSince(*scratch.record, *scratch.record, before).value();
        QVERIFY(!touched.everything && touched.items.contains(ItemId("VALVE")));
    }
};

CROWNRING_TEST(CarriedPartsTest, QCoreApplication)

}

#include "carried_parts_test.moc"
