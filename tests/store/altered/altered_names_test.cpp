// SPDX-License-Identifier: GPL-3.0-or-later

/// What was altered is told as altered: a name is not "unknown", a flight of a kit is not on another day.

#include "problem/faults/store_fault.h"
#include "said.h"
#include "store/connection/connection.h"
#include "store/scratch.h"
#include "test_class.h"

#include <QtTest>

namespace altered_names_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

const std::string flownInAKit =
    R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"item.entered","on":"2024-01-01","item":"B1","kind":"basket"}
{"entry":"flight.logged","id":"f","on":"2024-02-02","balloon":"QE-ONE","minutes":60,"kit":["E1","B1"]}
{"entry":"flight.logged","id":"g","on":"2024-03-02","balloon":"QE-ONE","minutes":50,"kit":["E1","B1"]}
{"entry":"defect.found","id":"x","on":"2024-02-05","item":"E1","defect":"tear","what":"a tear","severity":"minor"})";

void alter(Scratch& scratch, const char* statement) {
    scratch.record.reset();
    Connection connection(scratch.file(), Access::ReadWrite);
    connection.run(QStringLiteral("PRAGMA foreign_keys = OFF")); // who alters a file is not held by it
    connection.run(QString::fromUtf8(statement));
    scratch.reopen();
}

bool isNamed(const Problem& problem, const char* name) {
    return problem.fault == Fault(StoreFault::NameAltered) && isSaid(problem) &&
           spokenMessage(problem).find(name) != std::string::npos;
}

}

class AlteredNamesTest : public QObject {
    Q_OBJECT
private slots:
    void aNameThatWasAlteredIsNotUnknown() {
        Scratch scratch;
        posted(*scratch.record, flownInAKit);
        QCOMPARE(scratch.record->facts({{}, {ItemId("E8")}}, day("2024-04-01")).error().code(), Code::UnknownReference);
        alter(scratch, "UPDATE name SET text = 'E9' WHERE text = 'E1'");
        QVERIFY(isNamed(scratch.record->facts({{}, {ItemId("E1")}}, day("2024-04-01")).error(), "E9"));
        scratch.reopen();
        QVERIFY(isNamed(scratch.record->history({}, ItemId("E1"), day("2024-04-01"), 10).error(), "E9"));
        scratch.reopen();
        const auto posting =
            problemsOf(*scratch.record, R"({"entry":"item.state","on":"2024-05-01","item":"E1","state":"laid-up"})");
        QVERIFY(posting.size() == 1 && isNamed(posting.front(), "E9"));
        const auto verdict = scratch.record->verify().value();
        QVERIFY(!verdict.intact && verdict.rebuildMends);
        QCOMPARE(verdict.projection, std::string("name"));
        QVERIFY(spoken(*verdict.reason).find("E9") != std::string::npos);
        scratch.reopen();
        QVERIFY(scratch.record->rebuild());
        QVERIFY(scratch.record->verify().value().intact);
        QCOMPARE(scratch.record->facts({{}, {ItemId("E1")}}, day("2024-04-01")).value().size(), std::size_t{1});
    }
    void aNameThatWasTakenAwayIsNotUnknown() {
        for (const auto* gone : {"E1", "B1", "QE-ONE", "tear"}) {
            Scratch scratch;
            posted(*scratch.record, flownInAKit);
            alter(scratch, ("DELETE FROM name WHERE text = '" + std::string(gone) + "'").c_str());
            const auto isMissed = [](const Problem& problem) {
                return problem.fault == Fault(StoreFault::NameMissing) && isSaid(problem);
            };
            const auto facts = scratch.record->facts({{}, {ItemId("E7")}}, day("2024-04-01"));
            QVERIFY2(!facts && isMissed(facts.error()), gone);
            scratch.reopen();
            const auto told = scratch.record->told({Subject::Defect, "other", {}, day("2024-04-01")});
            QVERIFY2(!told && isMissed(told.error()), gone);
            scratch.reopen();
            QVERIFY(!scratch.record->verify().value().intact);
            QVERIFY(scratch.record->rebuild());
            QCOMPARE(scratch.record->facts({{}, {ItemId("E7")}}, day("2024-04-01")).error().code(),
                     Code::UnknownReference);
        }
    }
    void norIsThatOfADefectOrAnInspection() {
        Scratch scratch;
        posted(*scratch.record, flownInAKit);
        alter(scratch, "UPDATE name SET text = 'tears' WHERE text = 'tear'");
        const auto told = scratch.record->told({Subject::Defect, "tear", {}, day("2024-04-01")});
        QVERIFY(!told && isNamed(told.error(), "tears"));
    }
    void whenAKitFlewIsNotAlteredUnseen() {
        for (const char* statement :
             {"UPDATE kit_flight SET at = at + 40000 WHERE entry_id = 'f'", "UPDATE kit_flight SET at = at - 1",
              "UPDATE kit_flight SET at = CASE entry_id WHEN 'f' THEN (SELECT MAX(at) FROM kit_flight) ELSE"
              " (SELECT MIN(at) FROM kit_flight) END WHERE item_no = (SELECT name_no FROM name WHERE text = 'E1')"})
            for (const bool whole : {true, false}) {
                Scratch scratch;
                posted(*scratch.record, flownInAKit);
                const Scope scope = whole ? Scope{} : Scope{{}, {ItemId("E1")}};
                QVERIFY(scratch.record->facts(scope, day("2024-02-10")));
                alter(scratch, statement);
                const auto facts = scratch.record->facts(scope, day("2024-02-10"));
                QVERIFY2(!facts && isDamage(facts.error().fault), statement);
                QVERIFY(!scratch.record->verify().value().intact);
            }
    }
};

CROWNRING_TEST(AlteredNamesTest, QCoreApplication)

}

#include "altered_names_test.moc"
