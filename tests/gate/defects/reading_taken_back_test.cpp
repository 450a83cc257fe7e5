// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/signing_attempt.h"
#include "problem/faults/release_fault.h"
#include "test_class.h"

namespace reading_taken_back_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string quoted(const std::string& text) { return '"' + text + '"'; }

const std::string pullOnWarp =
    R"({"entry":"reading.taken","item":"E1","quantity":"grab-strength","unit":"N","gore":3,"direction":"warp","row":9)";

/// The manual has 133.4 N held at least.
std::string pulled(double newtons, const std::string& on, const std::string& by = "Sam Help") {
    return pullOnWarp + R"(,"value":)" + std::to_string(newtons) + R"(,"on":)" + quoted(on) + R"(,"by":)" + quoted(by) +
           R"(})";
}
/// With a gauge in calibration, in a visit that was released.
std::string pulledAgain(double newtons) {
    return pulled(newtons, "2026-05-22").insert(1, R"("inspection":"V","tester":"F-1",)");
}
const std::string visit =
    R"({"entry":"inspection.opened","on":"2026-05-22","inspection":"V","visit":"part-ml-rectification","items":["E1"]})";
const std::string released =
    R"({"entry":"inspection.closed","on":"2026-05-23","inspection":"V","outcome":"released","signatory":"Ada Rhos","capacity":"independent-certifying-staff","licence":"QE.66.1","statement":"released"})";
std::string again(const EntryId& id, const std::string& with, const std::string& by = "",
                  const std::string& note = "read off wrongly") {
    return R"({"entry":"entry.corrected","on":"2026-05-25","replaces":)" + quoted(id.text()) + R"(,"by":)" +
           quoted(by) + R"(,"note":)" + quoted(note) + R"(,"with":)" + with + "}";
}
std::string takenBack(const EntryId& id, const std::string& by = "") {
    return R"({"entry":"entry.voided","on":"2026-05-25","reason":"another panel","voids":)" + quoted(id.text()) +
           R"(,"by":)" + quoted(by) + R"(})";
}
const std::string others = R"({"entry":"event.reported","on":"2020-05-20","item":"E1","event":"mildew"}
{"entry":"event.reported","on":"2020-05-21","item":"E1","event":"mildew"})";

void refused(Shop& shop, const std::string& entry, ReleaseFault fault) {
    const auto problems = problemsOf(shop.record(), entry);
    QCOMPARE(problems.size(), std::size_t{1});
    QCOMPARE(problems.front().fault, Fault(fault));
    QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
}

bool isGrounded(const Shop& shop) {
    const auto list = due(shop.record(), {std::nullopt, {ItemId("E1")}}, day("2026-07-01")).value();
    return std::ranges::any_of(
        list.rows, [](const DueRow& row) { return isOfTheRecord(row) && row.state.standing <= Standing::Lapsed; });
}

/// A weak panel, found by a pull, read again after its repair, and cleared.
struct Cleared {
    Shop shop;
    EntryId failed, reread, clearing;

    Cleared() {
        failed = shop.say(pulled(98, "2026-05-20")).ids.at(0);
        shop.say(
            R"({"entry":"defect.found","on":"2026-05-20","item":"E1","what":"weak","defect":"D-1","severity":"grounding","reading":)" +
            quoted(failed.text()) + "}");
        shop.say(visit);
        reread = shop.say(pulledAgain(300)).ids.at(0);
        clearing =
            shop.say(
                    R"({"entry":"defect.cleared","on":"2026-05-22","by":"Ada Rhos","item":"E1","defect":"D-1","what":"panel replaced"})")
                .ids.at(0);
        shop.say(others);
    }
    /// Signed, it grounds no more; then no word of it is taken back.
    Cleared& signedFor() {
        letIn(shop.record(), released);
        return *this;
    }
};

}

/// A reading beyond the manual's limit grounds, whatever its finder called it; who decides that it is none is who
/// decides of a defect: ML.A.403(a), (b) (from memory but for its AMC), 14 CFR 43.11(b), 91.405; our reading.
class ReadingTakenBackTest : public QObject {
    Q_OBJECT
private slots:
    void aFailingReadingIsTakenBackByWhoMayDecide_data() {
        QTest::addColumn<QString>("by");
        QTest::addColumn<bool>("may");
        QTest::newRow("certifying staff") << "Ada Rhos" << true;
        QTest::newRow("a mechanic") << "Kit Moor" << true;
        QTest::newRow("a pilot-owner, what another read") << "Ole Berg" << false;
        QTest::newRow("a stranger") << "Nobody Known" << false;
        QTest::newRow("who took it, when others wrote since") << "Sam Help" << false;
    }
    void aFailingReadingIsTakenBackByWhoMayDecide() {
        QFETCH(QString, by);
        QFETCH(bool, may);
        const auto person = by.toStdString();
        for (const auto& with : {R"({"value":300})", R"({"gore":4})", R"({"on":"2026-06-20"})",
                                 R"({"direction":"weft"})", R"({"quantity":"strip-strength"})"}) {
            Shop shop;
            const auto id = shop.say(pulled(98, "2026-05-20")).ids.at(0);
            QVERIFY(isGrounded(shop));
            shop.say(others);
            if (may)
                QVERIFY2(problemsOf(shop.record(), again(id, with, person)).empty(), with);
            else
                refused(shop, again(id, with, person), ReleaseFault::MayNotGradeDown);
            if (!may)
                refused(shop, takenBack(id, person), ReleaseFault::MayNotGradeDown);
        }
        Shop shop;
        const auto id = shop.say(pulled(98, "2026-05-20")).ids.at(0);
        shop.say(others);
        QCOMPARE(problemsOf(shop.record(), takenBack(id, person)).empty(), may);
    }
    void byWhomAndWhyIsSaid() {
        Shop shop;
        const auto id = shop.say(pulled(98, "2026-05-20")).ids.at(0);
        shop.say(others);
        refused(shop, again(id, R"({"value":300})"), ReleaseFault::ReadingUnsaid);
        refused(shop, again(id, R"({"value":300})", "Ada Rhos", " "), ReleaseFault::ReadingUnsaid);
        refused(shop, takenBack(id), ReleaseFault::ReadingUnsaid);
        QVERIFY(isGrounded(shop));
    }
    void whatGroundsAllTheSameIsCorrectedByAnybody() {
        Shop shop;
        const auto id = shop.say(pulled(98, "2026-05-20")).ids.at(0);
        shop.say(others);
        shop.say(again(id, R"({"value":89})"));
        shop.say(again(id, R"({"tester":"F-1"})"));
        QVERIFY(isGrounded(shop));
    }
    void norByWayOfAnAmendmentOfAnAmendment() {
        Shop shop;
        const auto id = shop.say(pulled(300, "2026-05-20")).ids.at(0);
        const auto worse = shop.say(again(id, R"({"value":98})")).ids.at(0); // anybody says that it is worse
        QVERIFY(isGrounded(shop));
        shop.say(others);
        refused(shop, takenBack(worse, "Nobody Known"), ReleaseFault::MayNotGradeDown);
        refused(shop, again(worse, R"({"with":{"value":299}})", "Nobody Known"), ReleaseFault::MayNotGradeDown);
        refused(shop, again(id, R"({"value":299})", "Nobody Known"), ReleaseFault::MayNotGradeDown);
        // Nor in one batch that grades it down in two steps.
        const auto both = problemsOf(shop.record(), again(id, R"({"value":97})") + "\n" +
                                                        again(id, R"({"value":297})", "Nobody Known"));
        QVERIFY(std::ranges::any_of(both, [](const Problem& each) { return each.where.line == 2; }));
        shop.say(takenBack(worse, "Ada Rhos"));
        QVERIFY(!isGrounded(shop));
    }
    void atOnceOnesOwnSlipIsTakenBack() {
        Shop shop;
        const auto id = shop.say(pulled(98, "2026-05-20")).ids.at(0);
        refused(shop, takenBack(id, "Another"), ReleaseFault::MayNotGradeDown);
        shop.say(again(id, R"({"value":298})", "Sam Help"));
        QVERIFY(!isGrounded(shop));
    }
    /// ML.A.403(a); 14 CFR 43.13(b) (from memory): nothing else shows that the defect is put right.
    void theReadingOnWhichAClearingRestsStays() {
        for (const auto* with :
             {R"({"gore":4})", R"({"on":"2026-05-19"})", R"({"item":"B1"})", R"({"quantity":"strip-strength"})"}) {
            Cleared cleared;
            cleared.shop.wholeAircraft();
            refused(cleared.shop, again(cleared.reread, with, "Ada Rhos"), ReleaseFault::ClearingRestsOnIt);
            refused(cleared.shop, takenBack(cleared.reread, "Ada Rhos"), ReleaseFault::ClearingRestsOnIt);
        }
    }
    void whatTheSecondReadingReallyWasGroundsByItself() {
        Cleared cleared;
        cleared.signedFor();
        QVERIFY(!isGrounded(cleared.shop));
        cleared.shop.say(again(cleared.reread, R"({"value":99})", "Ada Rhos"));
        QVERIFY(isGrounded(cleared.shop));
    }
    void withItsClearingOrAfterAnotherItIsTakenBack() {
        Cleared both;
        both.shop.say(takenBack(both.clearing, "Ada Rhos") + "\n" + takenBack(both.reread, "Ada Rhos"));
        QVERIFY(isGrounded(both.shop));
        Cleared third;
        third.shop.say(pulledAgain(305));
        third.shop.say(takenBack(third.reread, "Ada Rhos"));
        third.signedFor();
        QVERIFY(!isGrounded(third.shop));
    }
};

CROWNRING_TEST(ReadingTakenBackTest, QCoreApplication)

}

#include "reading_taken_back_test.moc"
