// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/shop.h"
#include "problem/faults/release_fault.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>

namespace repair_place_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string quoted(const std::string& text) { return '"' + text + '"'; }

bool isElsewhere(const Shop& shop, const std::string& lines) {
    const auto problems = problemsOf(shop.record(), lines);
    return problems.size() == 1 && problems.front().fault == Fault(ReleaseFault::RepairElsewhere) &&
           isSaid(problems.front());
}

const std::string there = R"(,"gore":5,"row":16)";

}

/// What a reading found is put right in its place (ML.A.403(a); 14 CFR 43.13(b), from memory; our reading).
class RepairPlaceTest : public QObject {
    Q_OBJECT
private slots:
    void aRepairNamesThePanelThatFailed() {
        Shop shop;
        const auto reading = shop.ready(Visit::PartMlInspection).pull(5, R"("value":120)").ids.at(0);
        shop.find("D-1", "grounding", reading);
        QVERIFY(isElsewhere(shop, shop.repair("D-1")));
        QVERIFY(isElsewhere(shop, shop.repair("D-1", R"(,"gore":5)")));
        QVERIFY(isElsewhere(shop, shop.repair("D-1", R"(,"gore":6,"row":16)")));
        QVERIFY(isElsewhere(shop, shop.repair("D-1", R"(,"gore":5,"row":16,"zone":"parachute")")));
        const auto repair = shop.say(shop.repair("D-1", there)).ids.at(0).text();
        QVERIFY(isElsewhere(
            shop, R"({"entry":"entry.corrected","on":"2026-06-01","by":"Ada Rhos","with":{"row":null},"replaces":)" +
                      quoted(repair) + "}"));
    }
    void whatSomebodySawIsRepairedWhereverThatIs() {
        Shop shop;
        shop.ready(Visit::PartMlInspection).find("D-1", "minor");
        QVERIFY(problemsOf(shop.record(), shop.repair("D-1")).empty());
    }
    void theRepairAloneClearsNothing() {
        Shop shop;
        const auto reading = shop.ready(Visit::PartMlInspection).pull(5, R"("value":120)").ids.at(0);
        shop.find("D-1", "grounding", reading);
        shop.say(shop.repair("D-1", there));
        const auto problems = problemsOf(shop.record(), shop.clearing("D-1"));
        QVERIFY(!problems.empty() && problems.front().fault == Fault(ReleaseFault::NotReadAgain));
        shop.pull(5, R"("value":310)");
        QVERIFY(problemsOf(shop.record(), shop.clearing("D-1")).empty());
    }
};

CROWNRING_TEST(RepairPlaceTest, QCoreApplication)

}

#include "repair_place_test.moc"
