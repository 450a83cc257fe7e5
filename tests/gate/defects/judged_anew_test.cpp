// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/signing_attempt.h"
#include "problem/faults/release_fault.h"
#include "test_class.h"

namespace judged_anew_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

/// A panel that read 98 N where the manual has 133.4 N at least; words of others came since.
const std::string failing =
    R"({"entry":"reading.taken","id":"weak","on":"2026-05-20","by":"Sam Help","item":"E1","quantity":"grab-strength","unit":"N","value":98,"direction":"warp","gore":3,"row":9}
{"entry":"type.described","on":"2016-05-01","type":"T-9","kind":"envelope","manual":"Manual 9","revision":"1","gores":24,"rows":18}
{"entry":"event.reported","on":"2020-05-20","item":"E1","event":"mildew"}
{"entry":"event.reported","on":"2020-05-21","item":"E1","event":"mildew"})";

std::string quoted(const std::string& text) { return '"' + text + '"'; }
std::string said(const std::string& entry, const std::string& by, const std::string& why) {
    return entry + R"(,"by":)" + quoted(by) + R"(,"note":)" + quoted(why) + "}";
}
std::string limit(const char* on) {
    return R"({"entry":"limit.stated","type":"T-77","kind":"envelope","quantity":"grab-strength","unit":"N","least":80,"places":2,"source":"Manual 77, revision 5","on":)" +
           quoted(on);
}
std::string ofType(Shop& shop, const std::string& type) {
    const auto lines = shop.record().lines({.text = "E1", .kind = "item.entered", .before = {}, .limit = 10}).value();
    return R"({"entry":"entry.corrected","on":"2026-05-25","replaces":)" + quoted(lines.front().entry.id.text()) +
           R"(,"with":{"type":)" + type + "}";
}

const char* const readLater =
    R"({"entry":"reading.taken","on":"2026-06-20","item":"E1","quantity":"grab-strength","unit":"N","value":98,"direction":"warp","gore":4,"row":9})";
const char* const defectOfIt =
    R"({"entry":"defect.found","on":"2026-05-20","item":"E1","what":"weak","defect":"D-1","severity":"grounding","reading":"weak"})";
const char* const clearedInWords =
    R"({"entry":"defect.cleared","on":"2026-06-22","by":"Ada Rhos","item":"E1","defect":"D-1","what":"within limits now"})";
const char* const enteredAgain =
    R"({"entry":"item.entered","on":"2015-01-01","item":"E1","kind":"envelope","type":"T-9"})";
const char* const lostPlacard =
    R"({"entry":"defect.found","on":"2026-05-20","item":"E1","what":"a lost placard","defect":"D-1","severity":"minor"})";
const std::string anotherType = quoted("T-9");
std::string taken(const char* by, const char* on) {
    return R"({"entry":"entry.voided","reason":"another panel","voids":"weak","by":)" + quoted(by) + R"(,"on":)" +
           quoted(on) + "}";
}
std::string deferred(const char* by) {
    return R"({"entry":"defect.deferred","on":"2026-05-21","item":"E1","defect":"D-1","reason":"ordered","until":"2026-07-31","agreed_by":)" +
           quoted(by) + "}";
}

void refused(Shop& shop, const std::string& entry, ReleaseFault fault) {
    const auto problems = problemsOf(shop.record(), entry);
    QCOMPARE(problems.size(), std::size_t{1});
    QVERIFY2(problems.front().fault == Fault(fault), qPrintable(words::line(problems.front())));
    QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
}

bool isGrounded(const Shop& shop) {
    const auto list = due(shop.record(), {std::nullopt, {ItemId("E1")}}, day("2026-07-01")).value();
    return std::ranges::any_of(
        list.rows, [](const DueRow& row) { return isOfTheRecord(row) && row.state.standing <= Standing::Lapsed; });
}

}

/// A reading is judged as it was taken, and what it found stays until it is rectified: ML.A.403(a), (b) (from memory
/// but for its AMC), 14 CFR 43.11(b), 91.405; our reading.
class JudgedAnewTest : public QObject {
    Q_OBJECT
private slots:
    void aLaterLimitLiftsNothing() {
        for (const bool limitFirst : {true, false}) {
            Shop shop;
            shop.say(limitFirst ? said(limit("2026-06-01"), "Nobody Known", "") : failing);
            shop.say(limitFirst ? failing : said(limit("2026-06-01"), "Nobody Known", ""));
            QVERIFY(isGrounded(shop));
            // What is read from then on is held against it.
            shop.say(readLater);
            const auto one = due(shop.record(), {std::nullopt, {ItemId("E1")}}, day("2026-07-01")).value();
            QCOMPARE(std::ranges::count_if(one.rows, [](const DueRow& row) { return isOfTheRecord(row); }), 1);
        }
    }
    void aLimitThatWasInForceThenIsStatedByWhoMayDecide() {
        Shop shop;
        shop.say(failing);
        refused(shop, said(limit("2026-05-20"), "", "revision 5"), ReleaseFault::ReadingUnsaid);
        refused(shop, said(limit("2026-05-20"), "Ada Rhos", " "), ReleaseFault::ReadingUnsaid);
        refused(shop, said(limit("2026-05-20"), "Nobody Known", "revision 5"), ReleaseFault::MayNotGradeDown);
        QVERIFY(isGrounded(shop));
        shop.say(said(limit("2026-05-20"), "Ada Rhos", "revision 5"));
        QVERIFY(!isGrounded(shop));
    }
    void noClearingInWordsByALaterLimit() {
        Shop shop;
        shop.say(failing);
        shop.say(defectOfIt);
        shop.say(said(limit("2026-06-01"), "Nobody Known", ""));
        refused(shop, clearedInWords, ReleaseFault::NotReadAgain);
    }
    void anotherTypeIsSaidByWhoMayDecide() {
        for (const auto& type : {anotherType, std::string("null")}) {
            Shop shop;
            shop.say(failing);
            refused(shop, said(ofType(shop, type), "", "misread"), ReleaseFault::ReadingUnsaid);
            refused(shop, said(ofType(shop, type), "Ada Rhos", " "), ReleaseFault::ReadingUnsaid);
            refused(shop, said(ofType(shop, type), "Sam Help", "misread"), ReleaseFault::MayNotGradeDown);
            QVERIFY(isGrounded(shop));
            shop.say(said(ofType(shop, type), "Ada Rhos", "misread"));
            QVERIFY(!isGrounded(shop));
        }
    }
    void norIsTheItemEnteredASecondTime() {
        Shop shop;
        shop.say(failing);
        refused(shop, enteredAgain, ReleaseFault::ReadingUnsaid);
    }
    void whereNothingFailedAnybodyCorrectsTheType() {
        Shop shop;
        shop.say(said(ofType(shop, anotherType), "", ""));
        QVERIFY(!isGrounded(shop));
    }
    /// Who decides of what flies under the rules of one state holds a capacity of that state (ML.A.403(b); 14 CFR
    /// 43.7; our reading).
    void whoDecidesIsAskedByTheRulesOfTheBalloon() {
        for (const auto& [programme, may, mayNot] :
             {std::tuple{"part-ml-hot-air", "Ada Rhos", "Kit Moor"}, std::tuple{"us-14cfr", "Kit Moor", "Ada Rhos"}}) {
            Shop shop;
            shop.adopt(programme);
            shop.say(failing);
            refused(shop, taken(mayNot, "2026-05-25"), ReleaseFault::MayNotGradeDown);
            // Nor is the day of it chosen so that nothing was adopted, or the item was on no balloon.
            refused(shop, taken(mayNot, "2021-05-25"), ReleaseFault::MayNotGradeDown);
            shop.say(taken(may, "2026-05-25"));
            QVERIFY(!isGrounded(shop));
        }
    }
    void norDoesAMechanicAgreeToADeferralUnderPartMl() {
        Shop shop;
        shop.adopt("part-ml-hot-air");
        shop.say(lostPlacard);
        refused(shop, deferred("Kit Moor"), ReleaseFault::MayNotDefer);
        shop.say(deferred("Ada Rhos"));
    }
};

CROWNRING_TEST(JudgedAnewTest, QCoreApplication)

}

#include "judged_anew_test.moc"
