// SPDX-License-Identifier: GPL-3.0-or-later

/// Directives through the record: whom they bind by what is fitted, what was answered, and how they stand in the due
/// list. What no tolerance and no deferral means: 14 CFR 39, ML.A.301(c) (from memory).

#include "answers/balloon_lines.h"
#include "answers/check_rig_up.h"
#include "answers/directives/told.h"
#include "answers/due.h"
#include "answers/touched.h"
#include "fleet_of_directives.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>

namespace directives_told_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

struct Told {
    std::string standing, why;
    Truth applies = Truth::No;
    std::optional<LimitState> next;
    std::size_t done = 0;
};

struct Fleet {
    Fleet() { posted(*scratch.record, twoBurners); }
    Fleet& say(const std::string& lines) {
        posted(*scratch.record, lines);
        return *this;
    }
    /// How a directive stands on an item; nothing where it has no row.
    [[nodiscard]] std::optional<Told> on(const char* on, const char* item, const char* number = "AD-1",
                                         const char* revision = "0") const {
        const auto facts = scratch.record->facts({}, day(on)).value();
        const auto rows = directiveRows(*scratch.record, facts, {day(on), {}, {}, true}).value();
        for (const auto& row : rows)
            if (row.item->id == ItemId(item) && row.directive.directive == DirectiveId(number) &&
                row.directive.revision == revision)
                return Told{std::string(standingOf(row)), spoken(whyOf(row)), row.applicability.applies, row.state.next,
                            row.done.size()};
        return {};
    }
    [[nodiscard]] std::string standing(const char* day, const char* item, const char* number = "AD-1") const {
        const auto told = on(day, item, number);
        return told ? told->standing : "";
    }
    /// Its row in the due list; "" where there is none.
    [[nodiscard]] std::string due(const char* on, const char* item, const char* number = "AD-1") const {
        const auto list = crownring::due(*scratch.record, {std::nullopt, {ItemId(item)}}, day(on), Outside::LeftOut);
        for (const auto& row : list.value().rows)
            if (directiveOf(row.requirement->id) == DirectiveId(number))
                return std::string(standingText(row.state.standing));
        return "";
    }
    Scratch scratch;
};

}

class DirectivesToldTest : public QObject {
    Q_OBJECT
private slots:
    void whoIsBoundWhoNotAndWhoIsUnknown() {
        Fleet fleet;
        fleet.say(issued("AD-1", R"({"kinds":["envelope"],"types":["t 77"],"serials":[{"from":"100","to":"200"}]})"));
        QCOMPARE(fleet.standing("2025-03-01", "E1"), std::string("lapsed"));
        const auto other = fleet.on("2025-03-01", "E2"); // "A-201" is written otherwise than 100 and 200
        QVERIFY(other->applies == Truth::Unknown && other->standing == "unproven");
        QVERIFY2(other->why.find("written otherwise") != std::string::npos, other->why.c_str());
        QVERIFY(!fleet.on("2025-03-01", "R1")); // of another kind: no row
        fleet.say(issued("AD-2", R"({"kinds":["burner"],"serials":[{"to":"8"}]})"));
        QCOMPARE(fleet.standing("2025-03-01", "R1", "AD-2"), std::string("not-bound"));
        QCOMPARE(fleet.standing("2025-03-01", "R2", "AD-2"), std::string("unproven")); // no serial number
        QCOMPARE(fleet.due("2025-03-01", "R1", "AD-2"), std::string());
    }
    void aPartThatNobodyListedIsUnknownAndGroundsAsUnproven() {
        Fleet fleet;
        fleet.say(issued("AD-1", burnersWithValve));
        QCOMPARE(fleet.due("2025-03-01", "R1"), std::string("unproven"));
        fleet.say(valveIn("R1", "X-2", "77")).say(valveIn("R2", "X-1", "78"));
        QCOMPARE(fleet.due("2025-03-01", "R1"), std::string("lapsed"));
        QCOMPARE(fleet.standing("2025-03-01", "R2"), std::string("not-bound"));
        QVERIFY(fleet.on("2025-03-01", "R2")->why.find("no such part") != std::string::npos);
    }
    void anEnvelopeIsBoundByTheValveOfItsBurner() {
        Fleet fleet;
        fleet.say(valveIn("R1", "X-2", "77")).say(valveIn("R2", "X-1", "78")).say(issued("AD-1", envelopesWithValve));
        QCOMPARE(fleet.standing("2025-03-01", "E1"), std::string("lapsed"));
        QCOMPARE(fleet.standing("2025-03-01", "E2"), std::string("not-bound"));
        fleet.say(R"({"entry":"item.fitted","on":"2025-04-01","balloon":"QE-TWO","item":"R1"})");
        QCOMPARE(fleet.standing("2025-04-01", "E2"), std::string("lapsed"));
        QCOMPARE(fleet.standing("2025-04-01", "E1"), std::string("unproven"));  // it will get some burner
        QCOMPARE(fleet.standing("2025-03-31", "E2"), std::string("not-bound")); // as it was then
    }
    void aValveThatWasReplacedIsOfATypeThatNobodyStated() {
        Fleet fleet;
        fleet.say(valveIn("R1", "X-1", "77")).say(issued("AD-1", burnersWithValve));
        QCOMPARE(fleet.standing("2025-03-01", "R1"), std::string("not-bound"));
        fleet.say(
            R"({"entry":"part.replaced","on":"2025-03-05","item":"R1","part":"Pilot valve","removed_serial":"77","fitted_serial":"90","release_document":"Form 1"})");
        QCOMPARE(fleet.standing("2025-03-05", "R1"), std::string("unproven"));
        fleet.say(valveIn("R1", "X-2", "90", "2025-03-06"));
        QCOMPARE(fleet.standing("2025-03-06", "R1"), std::string("lapsed"));
    }
    void complianceSaysNothingOfAPartThatCameInLater() {
        Fleet fleet;
        fleet.say(valveIn("R1", "X-2", "77")).say(issued("AD-1", burnersWithValve));
        fleet.say(complied("AD-1", "R1", "2025-03-02"));
        QCOMPARE(fleet.due("2025-03-02", "R1"), std::string("closed"));
        fleet.say(valveIn("R1", "X-2", "77", "2025-03-04")); // listed again, the same
        QCOMPARE(fleet.due("2025-03-04", "R1"), std::string("closed"));
        fleet.say(valveIn("R1", "X-2", "78", "2025-03-05"));
        QCOMPARE(fleet.due("2025-03-05", "R1"), std::string("lapsed"));
    }
    void whatIsUnknownIsAnsweredAndWhatIsKnownIsNot() {
        Fleet fleet;
        fleet.say(issued("AD-1", burnersWithValve)).say(excused("AD-1", "R1", "2025-03-02"));
        const auto told = fleet.on("2025-03-02", "R1");
        QCOMPARE(told->standing, std::string("not-bound"));
        QVERIFY2(told->why.find("another valve") != std::string::npos &&
                     told->why.find("Ada Rhos") != std::string::npos,
                 told->why.c_str());
        QCOMPARE(fleet.due("2025-03-01", "R1"), std::string("unproven")); // before it was said
        fleet.say(valveIn("R1", "X-2", "77", "2025-03-03"));              // what is found out later decides
        QCOMPARE(fleet.due("2025-03-03", "R1"), std::string("lapsed"));
    }
    void complianceInAdvanceCounts() {
        Fleet fleet;
        fleet.say(issued("AD-1", R"({"kinds":["envelope"]})")).say(complied("AD-1", "E1", "2025-02-10"));
        QCOMPARE(fleet.standing("2025-02-10", "E1"), std::string("upcoming"));
        QCOMPARE(fleet.due("2025-02-28", "E1"), std::string());
        QCOMPARE(fleet.due("2025-03-01", "E1"), std::string("closed"));
        QCOMPARE(fleet.due("2025-03-01", "E2"), std::string("lapsed"));
    }
    void hoursCountFromTheEffectiveDayAndFromEachCompliance() {
        Fleet fleet;
        fleet.say(issued("AD-1", R"({"kinds":["envelope"]})", R"(,"first":{"minutes":600},"repeat":{"minutes":300})"));
        fleet.say(R"({"entry":"flight.logged","on":"2025-02-01","balloon":"QE-ONE","minutes":100}
{"entry":"flight.logged","on":"2025-03-02","balloon":"QE-ONE","minutes":599})");
        const auto first = fleet.on("2025-03-02", "E1");
        QCOMPARE(first->next->usage()->due, ClockCount(700));
        QCOMPARE(first->next->usage()->left, ClockCount(1));
        QCOMPARE(first->standing, std::string("nearing"));
        fleet.say(R"({"entry":"flight.logged","on":"2025-03-03","balloon":"QE-ONE","minutes":1})");
        QCOMPARE(fleet.due("2025-03-03", "E1"), std::string("lapsed")); // used up, and no tolerance
        // It was done at ten; the flight of the afternoon is after it.
        fleet.say(complied("AD-1", "E1", "2025-03-04", R"(,"time":"10:00Z")"));
        fleet.say(R"({"entry":"flight.logged","on":"2025-03-04","balloon":"QE-ONE","minutes":50})");
        const auto again = fleet.on("2025-03-04", "E1");
        QCOMPARE(again->next->usage()->due, ClockCount(1000));
        QCOMPARE(again->next->usage()->left, ClockCount(250));
    }
    void aTerminatingActionEndsIt() {
        Fleet fleet;
        fleet.say(issued("AD-1", R"({"kinds":["envelope"]})",
                         R"(,"first":{"by":"2025-03-31"},"repeat":{"months":1},"terminating":"a new load ring")"));
        fleet.say(complied("AD-1", "E1", "2025-03-10"));
        QCOMPARE(fleet.on("2025-03-11", "E1")->next->calendar()->due, day("2025-04-10"));
        QCOMPARE(fleet.due("2025-04-11", "E1"), std::string("lapsed"));
        fleet.say(complied("AD-1", "E1", "2025-04-12", R"(,"terminating":true)"));
        QCOMPARE(fleet.due("2026-04-12", "E1"), std::string("closed"));
    }
    void aSupersededOneKeepsItsHistory() {
        Fleet fleet;
        fleet.say(issued("AD-1", R"({"kinds":["envelope"]})")).say(complied("AD-1", "E1", "2025-03-02"));
        fleet.say(issued("AD-2", R"({"kinds":["envelope"]})",
                         R"(,"first":{"before_flight":true},"supersedes":["AD-1"])", "2025-05-01"));
        QCOMPARE(fleet.standing("2025-04-30", "E1"), std::string("closed"));
        const auto former = fleet.on("2025-05-01", "E1");
        QCOMPARE(former->standing, std::string("superseded"));
        QCOMPARE(former->done, std::size_t{1});
        QVERIFY(!fleet.on("2025-05-01", "E2")); // nothing was answered there
        QCOMPARE(fleet.due("2025-05-01", "E1", "AD-2"), std::string("lapsed"));
        QCOMPARE(fleet.due("2025-05-01", "E1"), std::string());
    }
    void aRevisionCreditsWhatItSaysItDoes() {
        Fleet fleet;
        fleet.say(issued("AD-1", R"({"kinds":["envelope"]})")).say(complied("AD-1", "E1", "2025-03-02"));
        fleet.say(issued("AD-1", R"({"kinds":["envelope"]})", R"(,"first":{"before_flight":true})", "2025-04-01", "1"));
        QCOMPARE(fleet.on("2025-04-01", "E1", "AD-1", "1")->standing, std::string("lapsed"));
        QCOMPARE(fleet.on("2025-04-01", "E1", "AD-1", "0")->standing, std::string("superseded"));
        fleet.say(issued("AD-1", R"({"kinds":["envelope"]})", R"(,"first":{"before_flight":true},"credits":["0"])",
                         "2025-05-01", "2"));
        QCOMPARE(fleet.on("2025-05-01", "E1", "AD-1", "2")->standing, std::string("closed"));
    }
    void anOverdueOneGroundsAndARecommendedOneNever() {
        Fleet fleet;
        posted(
            *fleet.scratch.record,
            R"({"entry":"programme.adopted","on":"2024-01-01","programme":"plain","balloons":["QE-ONE"],"document":{"programme":"plain","revision":"1","title":"Plain","source":"invented for tests","requirements":[{"id":"plain.look","title":"Look at it","source":"invented for tests","kinds":["envelope","basket","burner","cylinder"],"action":"inspect","limits":[{"clock":"months","every":36}],"starts_from":"entered"}]}})");
        const std::vector<ItemId> kit{ItemId("E1"), ItemId("R1"), ItemId("B1"), ItemId("C1")};
        const auto mayFly = [&](const PlannedFlight& flight) {
            return checkRigUp(*fleet.scratch.record, kit, day("2025-03-02"), flight).value().verdict.mayFly;
        };
        const auto line = [&] {
            return balloonLines(*fleet.scratch.record, Registration("QE-ONE"), day("2025-03-02"))
                .value()
                .lines.front()
                .standing();
        };
        QVERIFY(mayFly({}));
        fleet.say(
            issued("SB-1", R"({"kinds":["burner"]})", R"(,"force":"recommended","first":{"before_flight":true})"));
        QCOMPARE(fleet.due("2025-03-02", "R1", "SB-1"), std::string("lapsed"));
        QVERIFY(mayFly({}));
        QCOMPARE(line(), Standing::Clear);
        fleet.say(issued("AD-1", R"({"kinds":["burner"]})"));
        QVERIFY(!mayFly({}));
        QVERIFY(!mayFly({.positioning = true}));
        QVERIFY(!mayFly({.checkFlight = true}));
        QCOMPARE(line(), Standing::Lapsed);
        fleet.say(complied("AD-1", "R1", "2025-03-02"));
        QVERIFY(mayFly({}));
    }
    void aKitIsAskedAsItWouldFly() {
        Fleet fleet;
        fleet.say(valveIn("R1", "X-1", "77")).say(valveIn("R2", "X-2", "78")).say(issued("AD-1", envelopesWithValve));
        const auto lapsedWith = [&](const char* burner) {
            const auto answer =
                checkRigUp(*fleet.scratch.record, {ItemId("E1"), ItemId(burner)}, day("2025-03-02"), {});
            return std::ranges::any_of(answer.value().due.rows, [](const DueRow& row) {
                return directiveOf(row.requirement->id) && row.state.standing == Standing::Lapsed;
            });
        };
        QVERIFY(!lapsedWith("R1"));
        QVERIFY(lapsedWith("R2"));
    }
    void anAnswerForABalloonIsForAllThatIsOnIt() {
        Fleet fleet;
        fleet.say(issued("AD-1", R"({"kinds":["envelope","burner"]})"));
        fleet.say(
            R"({"entry":"directive.answered","on":"2025-03-02","by":"Ada Rhos","capacity":"independent-certifying-staff","directive":"AD-1","revision":"0","balloon":"QE-ONE","answer":"done","method":"paragraph 1"})");
        QCOMPARE(fleet.due("2025-03-02", "E1"), std::string("closed"));
        QCOMPARE(fleet.due("2025-03-02", "R1"), std::string("closed"));
        QCOMPARE(fleet.due("2025-03-02", "R2"), std::string("lapsed"));
    }
    void whatCameOnToABalloonAfterTheAnswerIsNotAnswered() {
        Fleet fleet;
        fleet.say(issued("AD-1", R"({"kinds":["envelope","burner"]})"));
        fleet.say(
            R"({"entry":"directive.answered","on":"2025-03-02","by":"Ada Rhos","capacity":"independent-certifying-staff","directive":"AD-1","revision":"0","balloon":"QE-ONE","answer":"done","method":"paragraph 1"}
{"entry":"item.removed","on":"2025-03-01","balloon":"QE-TWO","item":"R2"}
{"entry":"item.fitted","on":"2025-03-02","time":"20:00Z","balloon":"QE-ONE","item":"R2"})");
        QCOMPARE(fleet.due("2025-03-02", "R1"), std::string("closed"));
        QCOMPARE(fleet.due("2025-03-02", "R2"), std::string("lapsed"));
    }
    void aWordOfNobodyInParticularExcusesNothing() {
        Fleet fleet;
        fleet.say(issued("AD-1", burnersWithValve));
        letIn(
            *fleet.scratch.record,
            R"({"entry":"directive.answered","on":"2025-03-02","by":"Sam Help","directive":"AD-1","revision":"0","item":"R1","answer":"not-applicable","why":"I say so"})");
        QCOMPARE(fleet.standing("2025-03-02", "R1"), std::string("unproven"));
    }
    void twoEntriesThatContradictEachOtherAreUnknown() {
        Fleet fleet;
        fleet.say(issued("AD-1", R"({"kinds":["burner"],"serials":[{"from":"9","to":"9"}]})"));
        QCOMPARE(fleet.standing("2025-03-02", "R1"), std::string("lapsed"));
        letIn(
            *fleet.scratch.record,
            R"({"entry":"item.entered","on":"2023-01-01","item":"R1","kind":"burner","type":"Twin B","serial":"10"})");
        const auto told = fleet.on("2025-03-02", "R1");
        QCOMPARE(told->standing, std::string("unproven"));
        QVERIFY2(told->why.find("contradict") != std::string::npos, told->why.c_str());
    }
    void aPartThatIsNearlyCalledSoIsUnknown() {
        Fleet fleet;
        fleet.say(issued("AD-1", burnersWithValve));
        fleet.say(
            R"({"entry":"parts.listed","on":"2024-01-01","item":"R1","whole":true,"parts":[{"part":"pilotvalve","type":"X-2","whole":true}]})");
        fleet.say(valveIn("R2", "X-02", "78"));
        for (const char* burner : {"R1", "R2"}) {
            const auto told = fleet.on("2025-03-02", burner);
            QCOMPARE(told->standing, std::string("unproven"));
            QVERIFY2(told->why.find("nearly") != std::string::npos, told->why.c_str());
        }
    }
    void anAnswerTouchesItsItemAndADirectiveEverything() {
        Fleet fleet;
        auto& record = *fleet.scratch.record;
        auto before = latestNumber(record).value();
        fleet.say(issued("AD-1", R"({"kinds":["envelope"]})"));
        QVERIFY(touchedSince(record, record, before).value().everything);
        before = latestNumber(record).value();
        fleet.say(complied("AD-1", "E1", "2025-03-02"));
        const auto touched = touchedSince(record, record, before).value();
        QVERIFY(!touched.everything && touched.items == std::set<ItemId>{ItemId("E1")});
    }
};

CROWNRING_TEST(DirectivesToldTest, QCoreApplication)

}

#include "directives_told_test.moc"
