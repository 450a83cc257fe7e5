// SPDX-License-Identifier: GPL-3.0-or-later

/// That what bars flight is put right is said by who may release work that puts it right: ML.A.403(a), ML.A.801(a),
/// (b); 14 CFR 43.3, 43.7, 91.405; our reading.

#include "acts/shop.h"
#include "problem/faults/release_fault.h"
#include "said.h"
#include "test_class.h"

namespace who_clears_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string found(const char* severity) {
    return std::string(
               R"({"entry":"defect.found","on":"2026-05-20","by":"Ole Berg","item":"E1","what":"torn","defect":"D-1","severity":")") +
           severity + R"("})";
}
std::string clearedBy(const char* person, const std::string& more = {}) {
    return std::string(R"({"entry":"defect.cleared","id":"c","on":"2026-05-22","by":")") + person +
           R"(","item":"E1","defect":"D-1","what":"panel replaced")" + more + "}";
}
std::string visit(const char* name, const char* kind) {
    return std::string(R"({"entry":"inspection.opened","on":"2026-05-21","visit":")") + kind + R"(","inspection":")" +
           name + R"(","balloon":"QE-ONE","items":["E1"]})";
}
std::string corrected(const char* by, const char* with) {
    return std::string(R"({"entry":"entry.corrected","on":"2026-05-23","replaces":"c","note":"another","by":")") + by +
           R"(","with":)" + with + "}";
}
const char* const inTheVisit = R"(,"inspection":"V-1")";
const char* const otherDefect =
    R"({"entry":"defect.found","on":"2026-05-20","item":"E1","what":"a lost placard","defect":"D-2","severity":"minor"})";
const char* const clearedMinor =
    R"({"entry":"defect.cleared","id":"m","on":"2026-05-22","item":"E1","defect":"D-2","what":"printed"})";
const char* const otherWords = R"({"what":"panel 4/9 replaced"})";
const char* const itsOwnName = R"({"defect":"D-1","by":"Ada Rhos"})";

bool isTaken(Shop& shop, const std::string& entry) {
    const auto problems = problemsOf(shop.record(), entry);
    for (const auto& each : problems)
        if (each.fault != Fault(ReleaseFault::MayNotClear) || !isSaid(each))
            throw std::runtime_error(words::line(each).toStdString());
    return problems.empty();
}

}

class WhoClearsTest : public QObject {
    Q_OBJECT
private slots:
    void byTheRulesOfTheBalloonAndTheGrade_data() {
        QTest::addColumn<QString>("programme");
        QTest::addColumn<QString>("severity");
        QTest::addColumn<QString>("by");
        QTest::addColumn<bool>("may");
        const auto add = [](const char* programme, const char* severity, const char* by, bool may) {
            QTest::addRow("%s, %s, %s", programme, severity, by) << programme << severity << by << may;
        };
        for (const char* severity : {"grounding", "deferrable", "barring"}) {
            add("part-ml-hot-air", severity, "", false);
            add("part-ml-hot-air", severity, "Nobody Known", false);
            add("part-ml-hot-air", severity, "Kit Moor", false); // a mechanic of the other state
            add("part-ml-hot-air", severity, "Tom Soon", false); // entitled later
            add("part-ml-hot-air", severity, "Ada Rhos", true);
            add("us-14cfr", severity, "Ada Rhos", false);
            add("us-14cfr", severity, "Kit Moor", true);
        }
        // What an owner does without a visit nobody signs.
        add("part-ml-hot-air", "grounding", "Ole Berg", false);
        add("part-ml-hot-air", "deferrable", "Ole Berg", true);
        add("us-14cfr", "grounding", "Pia Lund", false);
        add("part-ml-hot-air", "minor", "", true);
    }
    void byTheRulesOfTheBalloonAndTheGrade() {
        QFETCH(QString, programme);
        QFETCH(QString, severity);
        QFETCH(QString, by);
        QFETCH(bool, may);
        Shop shop;
        shop.adopt(programme.toStdString());
        shop.say(found(severity.toStdString().c_str()));
        QCOMPARE(isTaken(shop, clearedBy(by.toStdString().c_str())), may);
    }
    void anOwnerOfABalloonForHirePutsNothingRight() {
        Shop shop(R"(["for-hire"])");
        shop.say(found("deferrable"));
        QVERIFY(!isTaken(shop, clearedBy("Ole Berg")));
    }
    /// The visit is signed; what somebody called a danger to flight is not lifted before that by anybody.
    void inAVisitAnybodyButOfWhatIsADanger() {
        for (const auto& [severity, by, visitKind, may] :
             {std::tuple{"deferrable", "Sam Help", "part-ml-rectification", true},
              std::tuple{"grounding", "Sam Help", "part-ml-rectification", false},
              std::tuple{"grounding", "Ole Berg", "part-ml-rectification", false},
              std::tuple{"grounding", "Ole Berg", "part-ml-owner-tasks", true},
              std::tuple{"grounding", "Ada Rhos", "part-ml-rectification", true}}) {
            Shop shop;
            shop.say(found(severity));
            shop.say(visit("V-1", visitKind));
            QCOMPARE(isTaken(shop, clearedBy(by, inTheVisit)), may);
        }
    }
    void aVisitThatIsNoneOfTheItemsHelpsNobody() {
        Shop shop;
        shop.wholeAircraft();
        shop.say(found("deferrable"));
        auto ofTheBasket = visit("V-1", "part-ml-rectification");
        ofTheBasket.replace(ofTheBasket.find("[\"E1\"]"), 6, "[\"B1\"]");
        shop.say(ofTheBasket);
        QVERIFY(!isTaken(shop, clearedBy("Sam Help", inTheVisit)));
    }
    void itsCorrectionIsOfWhoMayToo() {
        Shop shop;
        shop.say(found("grounding"));
        shop.say(otherDefect);
        shop.say(clearedBy("Ada Rhos"));
        QVERIFY(isTaken(shop, corrected("", otherWords)));
        shop.say(clearedMinor);
        // What was said of a placard is not made the word on a torn panel.
        for (const char* by : {"", "Sam Help"}) {
            auto moved = corrected(by, itsOwnName);
            moved.replace(moved.find("\"c\""), 3, "\"m\"");
            QVERIFY(!isTaken(shop, moved));
        }
    }
};

CROWNRING_TEST(WhoClearsTest, QCoreApplication)

}

#include "who_clears_test.moc"
