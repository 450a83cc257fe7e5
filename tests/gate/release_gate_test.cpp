// SPDX-License-Identifier: GPL-3.0-or-later
#include "signing_attempt.h"
#include "test_class.h"

namespace release_gate_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

Signing in(Signing by, CivilDate on) {
    by.on = on;
    return by;
}
Signing withList(Signing by) {
    by.outcome = Outcome::Discrepancies;
    return by;
}

}

/// Each reason for which a release is refused, provoked and then answered, through the real record.
class ReleaseGateTest : public QObject {
    Q_OBJECT
private slots:
    void whatIsCompleteIsReleased() {
        Shop shop;
        expectReleased(shop.ready(Visit::PartMlInspection), Shop::signing());
    }
    void aLineThatIsOpen() {
        // 14 CFR 43.15(c)(1) and ML.A.801(a) (both from memory): a checklist of at least the scope is worked through.
        for (const char* answer : {"done", "not-applicable"}) {
            Shop shop;
            shop.open(Visit::PartMlInspection).carriedOut({"envelope.crown-ring"}).measured();
            expectRefused(shop, Shop::signing(), "line-open", "AMC1 ML.A.302(d)");
            const auto refusal = shop.draft(Shop::signing()).refusals.at(0);
            QCOMPARE(refusal.line, std::string("envelope.crown-ring"));
            QCOMPARE(refusal.item, std::optional(ItemId("E1")));
            shop.settle("envelope.crown-ring", answer);
            expectReleased(shop, Shop::signing());
        }
    }
    void aLineThatWasTakenBack() {
        Shop shop;
        shop.ready(Visit::PartMlInspection).settle("envelope.crown-ring", "open");
        expectRefused(shop, Shop::signing(), "line-open", "AMC1 ML.A.302(d)");
    }
    void nothingWasLookedAt() {
        Shop shop;
        shop.say(
            R"({"entry":"inspection.opened","on":"2026-06-01","inspection":"bare","visit":"part-ml-inspection","items":["E1"]})");
        shop.inspection = InspectionId("bare");
        // The tell-tale is asked by the type's instructions: a manufacturer's checklist, read; no law.
        QCOMPARE(shop.refused(Shop::signing()), (QStringList{"line-open", "content"}));
        QVERIFY(!shop.sign(Shop::signing()));
    }
    void everyLineIsNotApplicable() {
        // Settled, each with its reason, and still nobody looked at anything: neither a release nor a list may say so.
        for (const auto visit : {Visit::PartMlInspection, Visit::UsAnnual}) {
            Shop shop;
            shop.open(visit).measured();
            shop.find("D-1", "minor");
            shop.notApplied();
            const auto by = visit == Visit::UsAnnual ? Shop::signing("Ines Holt", Capacity::InspectionAuthorization)
                                                     : Shop::signing();
            for (const auto& signing : {by, withList(by)}) {
                const auto refused = shop.sign(signing);
                QVERIFY(!refused);
                QVERIFY(std::ranges::any_of(refused.error(), [](const Problem& problem) {
                    return problem.fault == Fault(ReleaseFault::NothingLookedAt) && isSaid(problem);
                }));
            }
        }
    }
    void anItemOfWhichNoLineIsDoneWasNotInspected() {
        // 14 CFR 43.11(a)(4), (a)(5), read: "this aircraft has been inspected".
        Shop shop;
        shop.wholeAircraft().ready(Visit::UsAnnual);
        shop.find("D-1", "minor");
        shop.notApplied(ItemId("B1"));
        auto by = Shop::signing("Ines Holt", Capacity::InspectionAuthorization);
        for (const auto& signing : {by, withList(by)}) {
            const auto refused = shop.sign(signing);
            QVERIFY(!refused);
            QVERIFY(std::ranges::any_of(refused.error(), [](const Problem& problem) {
                return problem.fault == Fault(ReleaseFault::NothingLookedAtOn) && isSaid(problem);
            }));
        }
    }
    void tooFewReadings() {
        Shop shop;
        shop.open(Visit::PartMlInspection).carriedOut().tellTale(110, 116);
        expectRefused(shop, Shop::signing(), "no-reading", "Manual 77, 6.3");
        shop.pull(3);
        shop.pull(3); // again in the same place: still one place
        expectRefused(shop, Shop::signing(), "no-reading", "Manual 77, 6.3");
        QVERIFY(words::message(shop.draft(Shop::signing()).refusals.at(0)).contains("1 of 2"));
        shop.pull(9);
        expectReleased(shop, Shop::signing());
    }
    void aReadingThatFails() {
        // A failing reading is a discrepancy: 14 CFR 43.11(a)(5), 43.15(c)(1); ML.A.801(a) (the last two from memory).
        Shop shop;
        shop.ready(Visit::PartMlInspection).pull(5, R"("value":120)");
        expectRefused(shop, Shop::signing(), "fails", "43.15(c)(1)");
        shop.say(R"({"entry":"repair.made","on":"2026-06-01","item":"E1","method":"panel replaced","gore":5,"row":16)" +
                 shop.about() + "}");
        expectRefused(shop, Shop::signing(), "fails", "43.15(c)(1)");
        shop.pull(5, R"("value":310)");
        expectReleased(shop, Shop::signing());
    }
    void aReadingThatFailsAndIsWrittenDown() {
        Shop shop;
        const auto reading = shop.ready(Visit::PartMlInspection).pull(5, R"("value":120)").ids.at(0);
        shop.find("D-1", "barring", reading);
        expectRefused(shop, Shop::signing(), "defect", "ML.A.403(a)");
        shop.say(shop.repair("D-1", R"(,"gore":5,"row":16)"));
        // A repair in words shows nothing: the panel is pulled again first.
        QVERIFY(!postText(shop.record(), shop.record(), shop.clearing("D-1"), "bench"));
        shop.pull(5, R"("value":310)");
        shop.say(shop.clearing("D-1"));
        expectReleased(shop, Shop::signing());
    }
    void aReadingThatFailsIsNotPassedOverAsMinor() {
        Shop shop;
        const auto reading = shop.ready(Visit::PartMlInspection).pull(5, R"("value":120)").ids.at(0);
        shop.find("D-1", "minor", reading);
        expectRefused(shop, Shop::signing(), "defect", "ML.A.403(a)"); // it grounds, whatever its finder called it
        shop.say(shop.repair("D-1", R"(,"gore":5,"row":16)"));
        // A repair in words shows nothing: the panel is pulled again first.
        QVERIFY(!postText(shop.record(), shop.record(), shop.clearing("D-1"), "bench"));
        shop.pull(5, R"("value":310)");
        shop.say(shop.clearing("D-1"));
        expectReleased(shop, Shop::signing());
    }
    void theTellTaleBeyondItsLimit() {
        // "275°F or higher dot has been activated" counts as exceeded (a manufacturer's instructions, 2001, read).
        Shop shop;
        shop.ready(Visit::PartMlInspection).tellTale(127, 132);
        expectRefused(shop, Shop::signing(), "fails", "ML.A.801(a)");
    }
    void aLoadHeldBelowTheLimitDecidesNothing() {
        Shop shop;
        shop.ready(Visit::PartMlInspection).pull(5, R"("held_at":100)");
        expectRefused(shop, Shop::signing(), "undecided", "43.15(c)(1)");
        shop.pull(5, R"("held_at":134)");
        expectReleased(shop, Shop::signing());
    }
    void aReadingAtAnotherPressureDecidesNothing() {
        // ISO 9237, ASTM D737: the pressure across the fabric is part of an air permeability.
        Shop shop;
        shop.say(
            R"({"entry":"limit.stated","on":"2016-05-01","type":"T-77","kind":"envelope","quantity":"air-permeability","unit":"mm/s","most":60,"pressure_pa":125,"source":"Manual 77, 6.4"})");
        const auto breathe = [&](int pressure) {
            shop.say(
                R"({"entry":"reading.taken","on":"2026-06-01","item":"E1","quantity":"air-permeability","unit":"mm/s","value":20,"gore":3,"row":16,"tester":"F-1","pressure_pa":)" +
                std::to_string(pressure) + shop.about() + "}");
        };
        shop.ready(Visit::PartMlInspection);
        expectRefused(shop, Shop::signing(), "no-reading", "Manual 77, 6.4");
        breathe(100); // it decides nothing, and the one that is asked for is still missing
        QCOMPARE(shop.refused(Shop::signing()), (QStringList{"no-reading", "undecided"}));
        breathe(125);
        expectReleased(shop, Shop::signing());
    }
    void anImpossibleReading() {
        // The plausible range: see core/bench/quantity.cpp.
        Shop shop;
        const auto reading = shop.ready(Visit::PartMlInspection).pull(5, R"("value":300)").ids.at(0).text();
        letIn(shop.record(),
              R"({"entry":"entry.corrected","on":"2026-06-01","replaces":")" + reading + R"(","with":{"value":1334}})");
        expectRefused(shop, Shop::signing(), "doubtful", "");
        shop.say(R"({"entry":"entry.corrected","on":"2026-06-01","replaces":")" + reading +
                 R"(","with":{"value":1334,"confirmed":true}})");
        expectReleased(shop, Shop::signing());
    }
    void aTesterThatIsNotNamed() {
        // ML.A.402(b)(4) (from memory): tools and equipment are controlled and calibrated.
        Shop shop;
        const auto reading = shop.ready(Visit::PartMlInspection).pull(5, R"("value":300)", "").ids.at(0).text();
        expectRefused(shop, Shop::signing(), "tester", "ML.A.402(b)(4)");
        shop.say(R"({"entry":"entry.corrected","on":"2026-06-01","replaces":")" + reading +
                 R"(","with":{"tester":"F-1"}})");
        expectReleased(shop, Shop::signing());
    }
    void aTesterOutOfCalibration() {
        Shop shop;
        shop.ready(Visit::PartMlInspection).pull(5, R"("value":300)", R"(,"tester":"F-2")");
        expectRefused(shop, Shop::signing(), "tester", "ML.A.402(b)(4)");
        // What was in calibration only after the reading proves nothing for it.
        shop.say(R"({"entry":"tester.calibrated","on":"2026-06-02","tester":"F-2","until":"2027-05-31"})");
        expectRefused(shop, Shop::signing(), "tester", "ML.A.402(b)(4)");
        shop.say(R"({"entry":"tester.calibrated","on":"2026-06-01","tester":"F-2","until":"2026-06-01"})");
        expectReleased(shop, Shop::signing());
    }
    void aBarringDefect() {
        // ML.A.403(a) (from memory): rectified before further flight. 14 CFR 43.11(a)(5) (read).
        Shop shop;
        shop.ready(Visit::PartMlInspection).find("D-1", "barring");
        expectRefused(shop, Shop::signing(), "defect", "ML.A.403(a)");
        shop.say(shop.clearing("D-1"));
        expectReleased(shop, Shop::signing());
    }
    void aBarringDefectInTheUnitedStates() {
        Shop shop;
        shop.ready(Visit::UsAnnual).find("D-1", "barring");
        const auto ines = Shop::signing("Ines Holt", Capacity::InspectionAuthorization);
        expectRefused(shop, ines, "defect", "43.11(a)(5)");
        // 43.11(a)(5), (b) (read): then the list of discrepancies is signed and given to the owner.
        expectReleased(shop, withList(ines));
        QCOMPARE(shop.now().closed->body.statement,
                 std::string("I certify that of this aircraft the following alone (envelope E1, serial number 101) has "
                             "been inspected in accordance with annual inspection and a list of discrepancies and "
                             "unairworthy items dated 2026-06-02 has been provided for the "
                             "aircraft owner or operator."));
        const auto facts = shop.record().facts({}, day("2026-06-02")).value();
        QVERIFY(facts.front().done.empty()); // nothing is accomplished by it
    }
    void aDefectFoundElsewhereBarsAsWell() {
        // By a pilot, in another inspection or in none: the item's standing is one.
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        shop.say(
            R"({"entry":"defect.found","on":"2026-06-02","item":"E1","defect":"D-9","what":"burnt load tape","severity":"barring"})");
        expectRefused(shop, Shop::signing(), "defect", "ML.A.403(a)");
    }
    void aMinorDefectIsNoBar() {
        Shop shop;
        shop.ready(Visit::PartMlInspection).find("D-1", "minor");
        expectReleased(shop, Shop::signing());
    }
    void aListOfDiscrepanciesWithoutOne() {
        // 43.11(b) (read): "must give the owner or lessee a signed and dated list of those discrepancies".
        Shop shop;
        shop.ready(Visit::UsAnnual);
        const auto ines = withList(Shop::signing("Ines Holt", Capacity::InspectionAuthorization));
        QCOMPARE(shop.refused(ines), (QStringList{"no-defect", "content"}));
        QVERIFY(!shop.sign(ines));
        shop.find("D-1", "minor");
        expectReleased(shop, ines);
    }
    void beforeItWasOpened() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        QCOMPARE(shop.refused(in(Shop::signing(), day("2026-05-31"))), QStringList{"order"});
        QVERIFY(!shop.sign(in(Shop::signing(), day("2026-05-31"))));
        expectReleased(shop, in(Shop::signing(), day("2026-06-01")));
    }
    void aSecondTime() {
        Shop shop;
        expectReleased(shop.ready(Visit::PartMlInspection), Shop::signing());
        expectClosed(shop);
    }
    void whatIsAbandonedNeedsNothing() {
        Shop shop;
        shop.open(Visit::PartMlInspection).find("D-1", "barring");
        auto by = Shop::signing();
        by.outcome = Outcome::Abandoned;
        expectReleased(shop, by);
        QVERIFY(shop.record().facts({}, day("2026-06-02")).value().front().done.empty());
        expectClosed(shop);
    }

private:
    static void expectClosed(Shop& shop) {
        QCOMPARE(shop.refused(Shop::signing()), QStringList{"closed"});
        const auto before = shop.entries();
        const auto again = shop.sign(Shop::signing());
        QVERIFY(!again);
        QCOMPARE(again.error().front().code(), Code::NotReleasable);
        QCOMPARE(shop.entries(), before);
    }
};

CROWNRING_TEST(ReleaseGateTest, QCoreApplication)

}

#include "release_gate_test.moc"
