// SPDX-License-Identifier: GPL-3.0-or-later

/// What supersedes what: by who issued it, and in no ring. From memory: an authority cancels its own directives alone.

#include "directive_answers.h"
#include "problem/faults/directives/directive_fault.h"
#include "problem/faults/release_fault.h"
#include "test_class.h"

namespace superseding_test {

using namespace crownring;
using namespace crownring::testing;
using namespace directives_gate_test;
using Directed = directives_gate_test::Bound;

namespace {

std::string issue(const char* number, const std::string& more, const char* by = "authority",
                  const char* revision = "0") {
    return R"({"entry":"directive.issued","on":"2026-05-01","directive":)"
           "\"" +
           std::string(number) +
           "\",\"revision\":"
           "\"" +
           revision +
           "\""
           R"(,"title":"t","issuer":"Authority of Q","state":"Q","effective":"2026-05-20","source":"invented for tests","applies":{"kinds":["envelope"]},"first":{"before_flight":true},"issued_by":)"
           "\"" +
           by + '"' + more + "}";
}

}

class SupersedingTest : public QObject {
    Q_OBJECT
private slots:
    void noRingIsTaken() {
        Directed record;
        record.shop.say(issue("A", R"(,"supersedes":["B"])"));
        const auto refusedRing = [&](const std::string& lines, std::size_t times = 1) {
            const auto problems = problemsOf(record.shop.record(), lines);
            QCOMPARE(problems.size(), times);
            for (const auto& each : problems)
                QVERIFY2(each.fault == Fault(DirectiveFault::SupersedesInARing) && isSaid(each),
                         qPrintable(words::line(each)));
        };
        refusedRing(issue("B", R"(,"supersedes":["A"])"));
        refusedRing(issue("C", R"(,"supersedes":["C"])"));
        refusedRing(issue("D", R"(,"supersedes":["E"])") + "\n" + issue("E", R"(,"supersedes":["D"])"), 2);
        record.shop.say(issue("B", R"(,"supersedes":["C"])"));
        refusedRing(issue("C", R"(,"supersedes":["A"])"));
        record.shop.say(issue("C", R"(,"supersedes":["AD-1"])")); // a row of them is no ring
    }
    void noneIsDueBeforeItIsEffective() {
        const auto by = [](const char* day) {
            auto text = issue("AD-9", "");
            const std::string atOnce = R"({"before_flight":true})";
            return text.replace(text.find(atOnce), atOnce.size(), R"({"by":")" + std::string(day) + R"("})");
        };
        refused(by("2026-05-19"), DirectiveFault::DueBeforeEffective);
        taken(by("2026-05-20"));
    }
    void onlyWhoIssuedItSupersedesIt() {
        refused(issue("SB", R"(,"supersedes":["AD-1"])", "manufacturer"), DirectiveFault::SupersedesAnothers);
        refused(issue("SB", R"(,"supersedes":["AD-1"],"force":"recommended")"), DirectiveFault::SupersedesMandatory);
        refused(issue("AD-1", "", "manufacturer", "1"), DirectiveFault::OtherIssuer);
        taken(issue("AD-2", R"(,"supersedes":["AD-1"])"));
    }
    void aRevisionThatOnlyRecommendsSaysWhoDecidedIt() {
        refused(issue("AD-1", R"(,"force":"recommended")", "authority", "1"), ReleaseFault::GroundUnsaid);
        refused(issue("AD-1", R"(,"force":"recommended","by":"Nobody Known","note":"so")", "authority", "1"),
                ReleaseFault::MayNotGradeDown);
        taken(issue("AD-1", R"(,"force":"recommended","by":"Ada Rhos","note":"as it is printed")", "authority", "1"));
    }
};

CROWNRING_TEST(SupersedingTest, QCoreApplication)

}

#include "superseding_test.moc"
