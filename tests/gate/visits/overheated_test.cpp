// SPDX-License-Identifier: GPL-3.0-or-later

/// A cylinder that was overheated is condemned for good (49 CFR 180.203, read; 180.205(i), from memory), and every
/// answer says so: nobody has to write the word.

#include "answers/balloon_lines.h"
#include "answers/check_rig_up.h"
#include "answers/due.h"
#include "answers/parts/pool.h"
#include "answers/whole_balloon.h"
#include "problem/faults/components/part_fault.h"
#include "said.h"
#include "store/scratch.h"
#include "test_class.h"

#include <QtTest>

#include <algorithm>

namespace overheated_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* fireOnIt =
    R"({"entry":"event.reported","on":"2024-03-01","item":"C1","event":"fire","temp_c":350,"id":"hot"})";
constexpr const char* fireOnTheBalloon =
    R"({"entry":"event.reported","on":"2024-03-01","balloon":"QE-ONE","event":"fire","temp_c":350})";
constexpr const char* inspectedSince =
    R"({"entry":"requirement.done","on":"2024-03-02","item":"C1","requirement":"plain.look"})";
constexpr const char* fittedElsewhere = R"({"entry":"item.fitted","on":"2024-03-03","item":"C1","balloon":"QE-TWO"})";
constexpr const char* fittedBefore = R"({"entry":"item.fitted","on":"2024-02-20","item":"C1","balloon":"QE-TWO"})";
constexpr const char* backWithForm =
    R"({"entry":"item.state","on":"2024-03-04","item":"C1","state":"in-service","release":{"form":"easa-form-1","number":"Q 1"}})";
constexpr const char* laidUp = R"({"entry":"item.state","on":"2024-03-05","item":"C1","state":"laid-up"})";
constexpr const char* ofSteel =
    R"({"entry":"item.entered","on":"2024-01-01","item":"C3","kind":"cylinder","vessel":{"material":"steel"}})";
constexpr const char* ofAluminiumToo =
    R"({"entry":"item.entered","on":"2024-01-02","item":"C3","kind":"cylinder","vessel":{"material":"aluminium"}})";
constexpr const char* hotSteel =
    R"({"entry":"event.reported","on":"2024-03-01","item":"C3","event":"fire","temp_c":342})";

/// Hot enough for aluminium, and not for steel.
constexpr const char* alsoAluminium =
    R"({"entry":"item.entered","id":"c4","on":"2024-01-01","by":"Sam Help","item":"C4","kind":"cylinder","vessel":{"material":"aluminium"}}
{"entry":"person.entitled","on":"2020-01-01","person":"Ada Rhos","capacity":"independent-certifying-staff","licence":"QE.66.1"}
{"entry":"event.reported","on":"2024-03-01","item":"C4","event":"fire","temp_c":250})";
constexpr const char* ofSteelAfterAll =
    R"({"entry":"item.entered","on":"2023-12-01","item":"C4","kind":"cylinder","vessel":{"material":"steel"}})";
std::string takenOut(const char* by) {
    return std::string(R"({"entry":"entry.voided","on":"2024-03-05","voids":"c4","reason":"not ours","by":")") + by +
           R"("})";
}
std::string corrected(const char* with, const char* by, const char* why = "misread") {
    return std::string(R"({"entry":"entry.corrected","on":"2024-03-05","replaces":"c4","by":")") + by +
           R"(","note":")" + why + R"(","with":)" + with + "}";
}

std::vector<ItemId> kit() { return {ItemId("E1"), ItemId("B1"), ItemId("R1"), ItemId("C1")}; }

ItemFacts factsOf(Record& record, const char* item, const char* on) {
    return record.facts({std::nullopt, {ItemId(item)}}, day(on)).value().front();
}

std::string refused(Record& record, const char* lines) {
    const auto problems = problemsOf(record, lines);
    return problems.empty() ? "" : std::string(rowOf(problems.front().fault).name);
}

/// Of each answer: that C1 is condemned on the day.
void expectCondemned(Record& record, const char* on) {
    const auto facts = factsOf(record, "C1", on);
    QVERIFY(facts.out && facts.out->state == ServiceState::Condemned);
    QCOMPARE(spoken(reasonOf(*facts.out)), std::string("overheated on 2024-03-01, at 350 °C: condemned for good"));
    const auto all = record.facts({}, day(on)).value();
    QCOMPARE(std::ranges::find(all, ItemId("C1"), &ItemFacts::id)->out, facts.out);
    const auto rig = checkRigUp(record, kit(), day(on), {}).value();
    QVERIFY(!rig.verdict.mayFly);
    QVERIFY(rig.verdict.reasons.front().kind == RigUpReason::Kind::OutOfService);
    QVERIFY(balloonLines(record, Registration("QE-ONE"), day(on)).value().lines.front().standing() ==
            Standing::Unproven);
    const auto list = due(record, {}, day(on)).value();
    QVERIFY(std::ranges::none_of(list.rows, [](const DueRow& row) { return row.item->id == ItemId("C1"); }));
    const auto items = pool(record, {ItemKind::Cylinder, {}}, day(on)).value();
    const auto item = *std::ranges::find_if(items, [](const auto& each) { return each.facts.id == ItemId("C1"); });
    QVERIFY(item.condemned && !item.fillable);
    QVERIFY(item.airworthy.standing == Standing::Spent && !item.airworthy.until);
}

}

class OverheatedTest : public QObject {
    Q_OBJECT
private slots:
    void whoeverReportsItTheCylinderIsOutForGood() {
        for (const char* fire : {fireOnIt, fireOnTheBalloon}) {
            const Scratch shed;
            posted(*shed.record, aWholeBalloon);
            QVERIFY(checkRigUp(*shed.record, kit(), day("2024-03-01"), {}).value().verdict.mayFly);
            posted(*shed.record, fire);
            QVERIFY(!factsOf(*shed.record, "C1", "2024-02-29").out);
            expectCondemned(*shed.record, "2024-03-01");
            posted(*shed.record, inspectedSince);
            expectCondemned(*shed.record, "2024-03-02");
        }
    }
    void itIsNotFittedAndDoesNotComeBack() {
        const Scratch shed;
        posted(*shed.record, aWholeBalloon);
        posted(*shed.record, fireOnIt);
        QCOMPARE(refused(*shed.record, fittedElsewhere), std::string("condemned"));
        QCOMPARE(refused(*shed.record, backWithForm), std::string("condemned"));
        posted(*shed.record, laidUp); // a word that says less changes nothing
        expectCondemned(*shed.record, "2024-03-06");
    }
    /// Order of arrival does not matter (02).
    void whereItWasBeforeIsWrittenAllTheSame() {
        const Scratch shed;
        posted(*shed.record, aWholeBalloon);
        posted(*shed.record, fireOnIt);
        QCOMPARE(refused(*shed.record, fittedBefore), std::string());
    }
    void whatItsOwnEntriesDoNotAgreeOnIsNotTakenForTheStrongerOne() {
        const Scratch shed;
        posted(*shed.record, aWholeBalloon);
        posted(*shed.record, ofSteel);
        posted(*shed.record, hotSteel);
        QVERIFY(!factsOf(*shed.record, "C3", "2024-03-02").out);
        posted(*shed.record, ofAluminiumToo);
        QVERIFY(factsOf(*shed.record, "C3", "2024-03-02").out);
    }
    /// Who decides of a defect decides whether it was of another material, and says why (02: a correction never changes
    /// a refusal into a release).
    void itIsNotSaidToBeOfSteelAfterwards() {
        const Scratch shed;
        posted(*shed.record, aWholeBalloon);
        posted(*shed.record, alsoAluminium);
        QVERIFY(factsOf(*shed.record, "C4", "2024-03-06").out);
        for (const char* with : {R"({"vessel":{"material":"steel"}})", R"({"kind":"other","vessel":null})"}) {
            QCOMPARE(refused(*shed.record, corrected(with, "").c_str()), std::string("ground-unsaid"));
            QCOMPARE(refused(*shed.record, corrected(with, "Ada Rhos", " ").c_str()), std::string("ground-unsaid"));
            QCOMPARE(refused(*shed.record, corrected(with, "Nobody Known").c_str()), std::string("may-not-grade-down"));
        }
        QCOMPARE(refused(*shed.record, takenOut("Nobody Known").c_str()), std::string("may-not-grade-down"));
        QCOMPARE(refused(*shed.record, corrected(R"({"vessel":null})", "").c_str()), std::string()); // it stays
        QCOMPARE(refused(*shed.record, ofSteelAfterAll), std::string("ground-unsaid"));
        posted(*shed.record, corrected(R"({"vessel":{"material":"steel"}})", "Ada Rhos"));
        QVERIFY(!factsOf(*shed.record, "C4", "2024-03-06").out);
    }
};

CROWNRING_TEST(OverheatedTest, QCoreApplication)

}

#include "overheated_test.moc"
