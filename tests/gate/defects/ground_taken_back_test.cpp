// SPDX-License-Identifier: GPL-3.0-or-later

/// What happened to a balloon, and what its manual bounds, is taken back by whom the rules let decide of a defect
/// (ML.A.403(a), (b); 14 CFR 43.11(b), 91.405; a reading of ours), who says so and why.

#include "acts/shop.h"
#include "problem/faults/release_fault.h"
#include "said.h"
#include "test_class.h"

namespace ground_taken_back_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

/// A balloon that landed hard, and a manual; words of others came since.
struct Grounded {
    Shop shop;
    Grounded() {
        shop.say(
            R"({"entry":"event.reported","on":"2026-05-20","id":"landing","by":"Sam Help","balloon":"QE-ONE","event":"hard-landing"}
{"entry":"limit.stated","on":"2026-05-20","id":"bound","by":"Sam Help","type":"T-77","kind":"envelope","quantity":"grab-strength","unit":"N","least":140,"places":2,"source":"Manual 77, 6.3"}
{"entry":"event.reported","on":"2020-05-20","item":"E1","event":"mildew"}
{"entry":"event.reported","on":"2020-05-21","item":"E1","event":"mildew"}
{"entry":"event.reported","on":"2020-05-22","item":"E1","event":"mildew"})");
    }
};

std::string taken(const char* id, const char* by) {
    return std::string(R"({"entry":"entry.voided","on":"2026-05-25","voids":")") + id + R"(","by":")" + by +
           R"(","reason":"another balloon"})";
}
std::string corrected(const char* id, const char* with, const char* by, const char* why = "misread") {
    return std::string(R"({"entry":"entry.corrected","on":"2026-05-25","replaces":")") + id + R"(","by":")" + by +
           R"(","note":")" + why + R"(","with":)" + with + "}";
}

void refused(const std::string& entry, ReleaseFault fault) {
    Grounded record;
    const auto problems = problemsOf(record.shop.record(), entry);
    QCOMPARE(problems.size(), std::size_t{1});
    QVERIFY2(problems.front().fault == Fault(fault), qPrintable(words::line(problems.front())));
    QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
}

}

class GroundTakenBackTest : public QObject {
    Q_OBJECT
private slots:
    void nobodyTakesBackWhatHappened() {
        refused(taken("landing", ""), ReleaseFault::GroundUnsaid);
        refused(taken("landing", "Nobody Known"), ReleaseFault::MayNotGradeDown);
        for (const char* with : {R"({"event":"nothing"})", R"({"on":"2020-01-01"})", R"({"balloon":null,"item":"E1"})"})
            refused(corrected("landing", with, "Nobody Known"), ReleaseFault::MayNotGradeDown);
        refused(corrected("landing", R"({"on":"2020-01-01"})", "Ada Rhos", " "), ReleaseFault::GroundUnsaid);
    }
    void norWhatTheManualBounds() {
        refused(taken("bound", ""), ReleaseFault::GroundUnsaid);
        refused(taken("bound", "Nobody Known"), ReleaseFault::MayNotGradeDown);
        for (const char* with : {R"({"least":80})", R"({"jaw_mm":50})", R"({"on":"2028-01-01"})"})
            refused(corrected("bound", with, "Nobody Known"), ReleaseFault::MayNotGradeDown);
    }
    void whoMayDecideDoes() {
        Grounded record;
        QCOMPARE(problemsOf(record.shop.record(), taken("landing", "Ada Rhos")).size(), std::size_t{0});
        QCOMPARE(problemsOf(record.shop.record(), corrected("bound", R"({"least":133.4})", "Ada Rhos")).size(),
                 std::size_t{0});
    }
    void aSlipIsTakenBackAtOnce() {
        Shop shop;
        const auto id = shop.say(R"({"entry":"event.reported","on":"2026-05-20","by":"Sam Help","balloon":"QE-ONE",)"
                                 R"("event":"hard-landing"})")
                            .ids.at(0);
        QCOMPARE(problemsOf(shop.record(), taken(id.text().c_str(), "Sam Help")).size(), std::size_t{0});
    }
};

CROWNRING_TEST(GroundTakenBackTest, QCoreApplication)

}

#include "ground_taken_back_test.moc"
