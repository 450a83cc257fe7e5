// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/check_rig_up.h"
#include "answers/due.h"
#include "said.h"
#include "store/scratch.h"
#include "test_class.h"

#include <QtTest>

#include <algorithm>

namespace fabric_standing_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

/// All of it is invented.
std::string shed(const char* retires = "") {
    return std::string(
               R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope","type":"T-77","made":"2023-05"}
{"entry":"type.described","on":"2024-01-01","type":"T-77","kind":"envelope","manual":"Manual 77","revision":"4","gores":24,"rows":11}
{"entry":"limit.stated","on":"2024-01-01","type":"T-77","kind":"envelope","quantity":"grab-strength","unit":"N","least":130,"jaw_mm":25,"source":"Manual 77, 6.3")") +
           retires + "}";
}

std::string pull(const char* on, const char* found, int row = 11, const char* id = nullptr) {
    return std::string(R"({"entry":"reading.taken","on":")") + on +
           R"(","item":"E1","quantity":"grab-strength","unit":"N",)" + found + R"(,"gore":3,"jaw_mm":25,"row":)" +
           std::to_string(row) + (id ? std::string(R"(,"id":")") + id + "\"}" : "}");
}

/// A visit that somebody carried out.
const char* const visit =
    R"({"entry":"tester.calibrated","on":"2024-01-01","tester":"F-1","until":"2024-12-31"}
{"entry":"person.entitled","on":"2024-01-01","person":"Ada Rhos","capacity":"independent-certifying-staff","licence":"QE.66.1"}
{"entry":"inspection.opened","on":"2024-05-01","inspection":"V","visit":"part-ml-rectification","items":["E1"]})";
std::string inVisit(std::string line, const char* more = R"(,"tester":"F-1")") {
    return line.insert(line.size() - 1, std::string(R"(,"inspection":"V")") + more);
}
/// How its release came about is for the tests of the gate.
void release(Record& record, const char* outcome = "released") {
    letIn(
        record,
        R"({"entry":"inspection.closed","on":"2024-06-01","time":"20:00Z","inspection":"V","signatory":"Ada Rhos","capacity":"independent-certifying-staff","licence":"QE.66.1","statement":"released","outcome":")" +
            std::string(outcome) + R"("})");
}
const char* const newPanel =
    R"({"entry":"repair.made","on":"2024-05-20","item":"E1","method":"panel replaced","gore":3,"row":11})";
const char* const patched =
    R"({"entry":"repair.made","on":"2024-05-20","item":"E1","method":"patch","gore":3,"row":11,"width_mm":1,"height_mm":1})";

struct Row {
    Standing standing = Standing::Clear;
    std::string note;
    Action action = Action::Test;
    bool there = false;
};

Row fabricRow(Books& books, const char* on) {
    const auto list = due(books, {}, day(on)).value();
    const auto found = std::ranges::find_if(
        list.rows, [](const DueRow& row) { return row.requirement->id.text() == "fabric/grab-strength"; });
    if (found == list.rows.end())
        return {};
    return {found->state.standing, spoken(found->requirement->note), found->requirement->action, true};
}

const char* const torn =
    R"({"entry":"defect.found","on":"2024-05-01","defect":"D1","item":"E1","what":"tore at 120 N","severity":"barring","reading":"torn"})";
const char* const cleared =
    R"({"entry":"defect.cleared","on":"2024-05-10","by":"Ada Rhos","defect":"D1","item":"E1","what":"panel replaced"})";
const char* const repaired =
    R"({"entry":"repair.made","on":"2024-05-10","item":"E1","method":"panel replaced","gore":3,"row":11,"defect":"D1"})";
const char* const repairedNowhere =
    R"({"entry":"repair.made","on":"2024-05-10","item":"E1","method":"panel replaced","defect":"D1"})";

}

/// Standings of fabric come from readings against the manual's bounds, and from nothing else.
class FabricStandingTest : public QObject {
    Q_OBJECT
private slots:
    /// A vent's panel at the gore and row of a weak one of the body says nothing of that.
    void aReadingInAVentAnswersNoneOfTheBody() {
        Scratch scratch;
        posted(*scratch.record, shed() + "\n" + pull("2024-05-01", R"("value":120)"));
        auto inVent = pull("2024-06-01", R"("value":300)");
        inVent.insert(inVent.size() - 1, R"(,"zone":"parachute")");
        posted(*scratch.record, inVent);
        QCOMPARE(fabricRow(*scratch.record, "2024-06-02").standing, Standing::Lapsed);
        posted(*scratch.record, visit);
        posted(*scratch.record, inVisit(pull("2024-06-01", R"("value":300)")));
        release(*scratch.record);
        QCOMPARE(fabricRow(*scratch.record, "2024-06-02").standing, Standing::Clear);
    }
    /// ML.A.403(a), ML.A.801(a); 14 CFR 43.13(b), 91.407(a) (from memory); our reading.
    void onlyAReleasedRetestOrANewPanelLiftsWhatFailed() {
        const auto later = pull("2024-05-20", R"("value":300)");
        for (const auto& nothing : {later, inVisit(later, ""), inVisit(later, R"(,"tester":"F-9")"),
                                    std::string(newPanel), std::string(patched), inVisit(patched, "")}) {
            Scratch scratch;
            posted(*scratch.record, shed() + "\n" + visit);
            posted(*scratch.record, pull("2024-05-01", R"("value":120)"));
            posted(*scratch.record, nothing);
            release(*scratch.record);
            QCOMPARE(fabricRow(*scratch.record, "2024-06-02").standing, Standing::Lapsed);
        }
        for (const auto& shown : {inVisit(later), inVisit(newPanel, "")}) {
            Scratch scratch;
            posted(*scratch.record, shed() + "\n" + visit);
            posted(*scratch.record, pull("2024-05-01", R"("value":120)"));
            posted(*scratch.record, pull("2024-05-01", R"("value":180)", 5));
            posted(*scratch.record, shown);
            QCOMPARE(fabricRow(*scratch.record, "2024-06-02").standing, Standing::Lapsed);
            release(*scratch.record);
            QCOMPARE(fabricRow(*scratch.record, "2024-05-31").standing, Standing::Lapsed);
            QCOMPARE(fabricRow(*scratch.record, "2024-06-02").standing, Standing::Clear);
            letIn(
                *scratch.record,
                R"({"entry":"release.revoked","on":"2024-06-03","inspection":"V","by":"Ada Rhos","reason":"a bent gauge"})");
            QCOMPARE(fabricRow(*scratch.record, "2024-06-04").standing, Standing::Lapsed);
        }
    }
    void aWeakVentGroundsByItsOwnLimit() {
        Scratch scratch;
        posted(*scratch.record, shed() + R"(
{"entry":"limit.stated","on":"2024-01-01","type":"T-77","kind":"envelope","quantity":"grab-strength","unit":"N","least":80,"jaw_mm":25,"zone":"parachute","source":"Manual 77, 6.4"})");
        auto weak = pull("2024-05-01", R"("value":70)");
        weak.insert(weak.size() - 1, R"(,"zone":"parachute")");
        posted(*scratch.record, pull("2024-05-01", R"("value":300)") + "\n" + weak);
        const auto row = fabricRow(*scratch.record, "2024-06-02");
        QCOMPARE(row.standing, Standing::Lapsed);
        QVERIFY2(row.note.find("parachute") != std::string::npos, row.note.c_str());
        QVERIFY((*scratch.record).rebuild());
        QCOMPARE(fabricRow(*scratch.record, "2024-06-02").standing, Standing::Lapsed);
    }
    void nothingReadNoRow() {
        Scratch scratch;
        posted(*scratch.record, shed());
        QVERIFY(!fabricRow(*scratch.record, "2024-06-01").there);
    }
    void withinNearAndBeyond() {
        Scratch scratch;
        posted(*scratch.record, shed());
        posted(*scratch.record, pull("2024-05-01", R"("value":200)"));
        QCOMPARE(fabricRow(*scratch.record, "2024-06-01").standing, Standing::Clear);
        posted(*scratch.record, pull("2024-07-01", R"("value":140)", 10));
        QCOMPARE(fabricRow(*scratch.record, "2024-08-01").standing, Standing::Nearing);
        posted(*scratch.record, pull("2024-09-01", R"("value":120)", 9));
        const auto row = fabricRow(*scratch.record, "2024-10-01");
        QCOMPARE(row.standing, Standing::Lapsed);
        QVERIFY2(row.note.find("120 N, gore 3, row 9; at least 130 N") != std::string::npos, row.note.c_str());
        QCOMPARE(fabricRow(*scratch.record, "2024-08-01").standing, Standing::Nearing); // the past stays as it was
        const auto flight = checkRigUp(*scratch.record, {ItemId("E1")}, day("2024-10-01"), {}).value();
        QVERIFY(std::ranges::any_of(flight.verdict.reasons, [](const RigUpReason& reason) {
            return reason.row && reason.row->requirement->id.text() == "fabric/grab-strength";
        }));
    }
    void aBoundThatDecidesNothingIsNeverClear() {
        Scratch scratch;
        posted(*scratch.record, shed());
        posted(*scratch.record, pull("2024-05-01", R"("held_at":100)"));
        QCOMPARE(fabricRow(*scratch.record, "2024-06-01").standing, Standing::Unproven);
        posted(*scratch.record, pull("2024-05-02", R"("held_at":130)"));
        QCOMPARE(fabricRow(*scratch.record, "2024-06-01").standing, Standing::Clear);
    }
    void aNewPanelHasNoReading() {
        Scratch scratch;
        posted(*scratch.record, shed());
        posted(*scratch.record, pull("2024-05-01", R"("value":120)"));
        posted(*scratch.record, pull("2024-05-01", R"("value":180)", 5));
        QCOMPARE(fabricRow(*scratch.record, "2024-06-01").standing, Standing::Lapsed);
        posted(*scratch.record, visit);
        posted(*scratch.record, inVisit(newPanel, ""));
        release(*scratch.record);
        QCOMPARE(fabricRow(*scratch.record, "2024-06-01").standing, Standing::Clear);
        QCOMPARE(fabricRow(*scratch.record, "2024-05-10").standing, Standing::Lapsed);
    }
    void aClearedDefectSettlesItsReading() {
        Scratch scratch;
        posted(*scratch.record, shed());
        posted(*scratch.record, pull("2024-05-01", R"("value":120)", 11, "torn"));
        posted(
            *scratch.record,
            R"({"entry":"defect.found","on":"2024-05-01","defect":"D1","item":"E1","what":"tore at 120 N","severity":"barring","reading":"torn"})");
        QCOMPARE(fabricRow(*scratch.record, "2024-06-01").standing, Standing::Lapsed);
        posted(
            *scratch.record,
            R"({"entry":"part.replaced","on":"2024-05-10","item":"E1","part":"panel","release_document":"own","defect":"D1"})");
        QVERIFY(!postText(*scratch.record, *scratch.record, cleared, "office")); // nothing was read there since
        posted(*scratch.record, pull("2024-05-10", R"("value":180)"));
        QVERIFY(!postText(*scratch.record, *scratch.record, cleared, "office")); // nobody answers for that
        posted(*scratch.record, visit);
        posted(*scratch.record, inVisit(pull("2024-05-10", R"("value":180)")));
        posted(*scratch.record, cleared);
        release(*scratch.record);
        QCOMPARE(fabricRow(*scratch.record, "2024-06-01").standing, Standing::Clear);
    }
    void whatIsPutRightInWordsAloneStands() {
        Scratch scratch;
        posted(*scratch.record, shed());
        posted(*scratch.record, pull("2024-05-01", R"("value":180)", 5));
        posted(*scratch.record, pull("2024-05-01", R"("value":120)", 11, "torn"));
        posted(*scratch.record, torn);
        QVERIFY(!postText(*scratch.record, *scratch.record, cleared, "office"));
        QCOMPARE(fabricRow(*scratch.record, "2024-06-01").standing, Standing::Lapsed);
        posted(*scratch.record, repaired);
        QVERIFY(!postText(*scratch.record, *scratch.record, cleared, "office"));
        posted(*scratch.record, pull("2024-05-10", R"("value":125)"));
        QVERIFY(!postText(*scratch.record, *scratch.record, cleared, "office")); // it fails again
        posted(*scratch.record, pull("2024-05-10", R"("value":180)"));
        QVERIFY(!postText(*scratch.record, *scratch.record, cleared, "office")); // nobody answers for that
        posted(*scratch.record, visit);
        posted(*scratch.record, inVisit(pull("2024-05-10", R"("value":180)")));
        posted(*scratch.record, cleared);
        release(*scratch.record);
        QCOMPARE(fabricRow(*scratch.record, "2024-06-01").standing, Standing::Clear);
    }
    /// Records from before the gate asked: what is said of no panel leaves the fabric unproven.
    void aRepairWithoutAPlacePutsNoPanelRight() {
        for (const auto& [repair, standing] :
             {std::pair(repairedNowhere, Standing::Unproven), std::pair(repaired, Standing::Clear)}) {
            Scratch scratch;
            posted(*scratch.record, shed());
            posted(*scratch.record, pull("2024-05-01", R"("value":180)", 5));
            posted(*scratch.record, pull("2024-05-01", R"("value":120)", 11, "torn"));
            posted(*scratch.record, torn);
            letIn(*scratch.record, repair);
            letIn(*scratch.record, cleared);
            QCOMPARE(fabricRow(*scratch.record, "2024-06-01").standing, standing);
        }
    }
    void whereTheManualRetiresTheEnvelopeNoRepairBringsItBack() {
        Scratch scratch;
        posted(*scratch.record, shed(R"(,"retires":"item")"));
        posted(*scratch.record, pull("2024-05-01", R"("value":120)"));
        posted(*scratch.record,
               R"({"entry":"repair.made","on":"2024-05-20","item":"E1","method":"panel replaced","gore":3,"row":11})");
        posted(*scratch.record, pull("2024-05-21", R"("value":300)"));
        const auto row = fabricRow(*scratch.record, "2024-06-01");
        QCOMPARE(row.standing, Standing::Spent);
        QCOMPARE(row.action, Action::Retire);
    }
    void anotherTestDecidesNothing() {
        Scratch scratch;
        posted(*scratch.record, shed());
        posted(
            *scratch.record,
            R"({"entry":"reading.taken","on":"2024-05-01","item":"E1","quantity":"grab-strength","unit":"N","value":90,"jaw_mm":50})");
        QVERIFY(!fabricRow(*scratch.record, "2024-06-01").there);
    }
    /// The strength test itself is called for by heat, mildew and fuel use: a manufacturer's instructions for continued
    /// airworthiness (FAA-approved, 2001, read) ask for it then, whatever age and hours are.
    void theTestIsCalledForByHeatMildewAndFuelUse() {
        for (const char* event : {"over-temperature", "mildew", "increased-fuel-use"}) {
            Scratch scratch;
            posted(*scratch.record, shed());
            posted(*scratch.record,
                   R"({"entry":"programme.adopted","on":"2024-01-01","programme":"fabric-strength","items":["E1"]})");
            posted(*scratch.record,
                   std::string(R"({"entry":"event.reported","on":"2024-02-01","item":"E1","event":")") + event + "\"}");
            const auto standing = [&](const char* on) {
                const auto list = due(*scratch.record, {}, day(on)).value();
                const auto row = std::ranges::find_if(list.rows, [](const DueRow& each) {
                    return each.requirement->id.text() == "fabric.strength-test";
                });
                return row->state.standing;
            };
            QCOMPARE(standing("2024-01-15"), Standing::Clear); // younger than two years and 150 hours
            QCOMPARE(standing("2024-02-02"), Standing::Lapsed);
            posted(
                *scratch.record,
                R"({"entry":"requirement.done","on":"2024-02-10","item":"E1","requirement":"fabric.strength-test"})");
            QCOMPARE(standing("2024-02-11"), Standing::Clear);
        }
    }
};

CROWNRING_TEST(FabricStandingTest, QCoreApplication)

}

#include "fabric_standing_test.moc"
