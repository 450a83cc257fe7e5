// SPDX-License-Identifier: GPL-3.0-or-later

/// Who answers a directive, and what is no answer. Who may: the table for other work (ML.A.801, 14 CFR 43.9, from
/// memory).

#include "directive_answers.h"
#include "problem/faults/directives/directive_fault.h"
#include "problem/faults/release_fault.h"
#include "test_class.h"

namespace directives_gate_test {

class DirectivesGateTest : public QObject {
    Q_OBJECT
private slots:
    void complianceIsSignedByWhoMay() {
        taken(answered(done(R"("by":"Ada Rhos","capacity":"independent-certifying-staff")")));
        refused(answered(done(R"("by":"Nobody Known","capacity":"independent-certifying-staff")")),
                DirectiveFault::MayNotComply);
        refused(answered(done(R"("by":"Ada Rhos","capacity":"mechanic")")), DirectiveFault::MayNotComply);
        refused(answered(done(R"("by":"Ada Rhos","capacity":"wizard")")), DirectiveFault::MayNotComply);
        // A pilot-owner complies with no directive unless that says so (ML.A.803(b), from memory): by the table.
        refused(answered(done(R"("by":"Ole Berg","capacity":"pilot-owner")")), DirectiveFault::MayNotComply);
    }
    void aPaperShowsItWhereItNamesWhoSigned() {
        taken(answered(done(R"("by":"Sam Help","licence":"QE.66.77","ref":"WO 12")")));
        refused(answered(done(R"("by":"Sam Help","ref":"WO 12")")), DirectiveFault::NothingShows);
        refused(answered(done("")), DirectiveFault::ByNobody);
    }
    void complianceInAdvanceIsTaken() {
        taken(answered(done(R"("by":"Ada Rhos","capacity":"independent-certifying-staff")"), "2026-05-10"));
    }
    void whatIsBoundIsNotTakenOutByAWord() {
        refused(answered(R"("by":"Ada Rhos","item":"E1","answer":"not-applicable","why":"I say so")"),
                DirectiveFault::RecordSaysBound);
        refused(answered(R"("item":"E1","answer":"not-applicable","why":"I say so")"), DirectiveFault::ByNobody);
    }
    void anAnswerIsToARevisionOfTheRecord() {
        refused(
            R"({"entry":"directive.answered","on":"2026-05-25","by":"Ada Rhos","capacity":"independent-certifying-staff","directive":"AD-1","revision":"7","item":"E1","answer":"done","method":"all"})",
            DirectiveFault::NoSuchRevision);
        refused(answered(done(R"("by":"Ada Rhos","capacity":"independent-certifying-staff","terminating":true)")),
                DirectiveFault::NoTerminatingAction);
    }
    void oneNumberIsOfOneIssuer() {
        auto other = directive;
        other.replace(other.find("\"id\":\"ad\""), 9, "\"id\":\"b2\"");
        refused(other, DirectiveFault::IssuedTwice);
        other.replace(other.find("Authority of Q"), 14, "Maker of Twins");
        refused(other, DirectiveFault::OtherIssuer);
    }
    void aRequirementIsNoAnswer() {
        refused(R"({"entry":"requirement.done","on":"2026-05-25","item":"E1","requirement":"directive/AD-1"})",
                DirectiveFault::NotByRequirement);
    }
    void nobodyTakesADirectiveBackWithoutAWord() {
        constexpr const char* others =
            R"({"entry":"event.reported","on":"2020-05-20","item":"E1","event":"mildew"}
{"entry":"event.reported","on":"2020-05-21","item":"E1","event":"mildew"}
{"entry":"event.reported","on":"2020-05-22","item":"E1","event":"mildew"})";
        for (
            const auto& [entry, fault] :
            {std::pair(R"({"entry":"entry.voided","on":"2026-05-25","voids":"ad","reason":"no"})",
                       ReleaseFault::GroundUnsaid),
             std::pair(
                 R"({"entry":"entry.corrected","on":"2026-05-25","replaces":"ad","by":"Nobody Known","note":"so","with":{"force":"recommended"}})",
                 ReleaseFault::MayNotGradeDown)}) {
            Bound record;
            record.shop.say(others);
            const auto problems = problemsOf(record.shop.record(), entry);
            QCOMPARE(problems.size(), std::size_t{1});
            QVERIFY2(problems.front().fault == Fault(fault), qPrintable(words::line(problems.front())));
        }
    }
    void noReleaseGetsRoundAnOverdueOne() {
        // An inspection is released under Part-ML with what stands against flight named; it flies no better for that.
        Bound record;
        record.shop.ready(Visit::PartMlInspection);
        QVERIFY(record.shop.sign(Shop::signing()).has_value());
        const auto excepted = record.shop.now().closed->body.excepted;
        QVERIFY(std::ranges::any_of(excepted, [](const SignedException& each) {
            return each.requirement == RequirementId("directive/AD-1") && each.standing == "lapsed";
        }));
        QCOMPARE(record.standing("2026-06-02"), Standing::Lapsed);
    }
    void thatAllAreCarriedOutIsNotSaidWhileOneStandsOpen() {
        // From memory: 14 CFR 39.7, 91.403(a); ML.A.303.
        Bound record;
        record.shop.open(Visit::PartMlInspection);
        const auto line = allCarriedOut(record.shop);
        const auto problems = problemsOf(record.shop.record(), line);
        QCOMPARE(problems.size(), std::size_t{1});
        QVERIFY2(problems.front().fault == Fault(ReleaseFault::DirectiveOpen),
                 qPrintable(words::line(problems.front())));
        QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
        QVERIFY2(words::line(problems.front()).contains(QStringLiteral("AD-1")),
                 qPrintable(words::line(problems.front())));
        QCOMPARE(problems.front().where.key, std::string("state"));
        // Its answer in the visit may come with it.
        record.shop.say(answeredInVisit(record.shop) + "\n" + line);
    }
    void norIsALineCorrectedIntoThat() {
        Bound record;
        record.shop.open(Visit::PartMlInspection).carriedOut();
        const auto& lines = record.shop.now().lines;
        const auto settled =
            std::ranges::find(lines, std::string("papers.directives"), [](const auto& said) { return said.body.line; });
        QVERIFY(settled != lines.end());
        const auto problems = problemsOf(record.shop.record(), correctedToDone(settled->id));
        QVERIFY2(!problems.empty(), qPrintable(QString::fromStdString(correctedToDone(settled->id))));
        QVERIFY2(problems.front().fault == Fault(ReleaseFault::DirectiveOpen),
                 qPrintable(words::line(problems.front())));
        QCOMPARE(problems.front().where.key, std::string("with/state"));
    }
    void whatIsNotDueYetLeavesTheLineToTheInspector() {
        Shop shop;
        shop.say(dueInDecember());
        shop.ready(Visit::PartMlInspection);
        const auto file = shop.draft(Shop::signing()).file;
        QCOMPARE(file.directives.size(), std::size_t{1});
        QVERIFY(!file.directives.front().against);
        QCOMPARE(file.directives.front().revision, std::string("0"));
    }
    void anOwnersVisitCompliesWithNone() {
        Bound record;
        record.shop.open(Visit::PartMlOwnerTasks);
        const auto problems =
            problemsOf(record.shop.record(),
                       R"({"entry":"directive.answered","directive":"AD-1","revision":"0","on":"2026-06-01",)"
                       R"("by":"Ole Berg","item":"E1","answer":"done","method":"paragraph 1")" +
                           record.shop.about() + "}");
        QCOMPARE(problems.size(), std::size_t{1});
        QVERIFY2(problems.front().fault == Fault(DirectiveFault::MayNotComply),
                 qPrintable(words::line(problems.front())));
    }
    void whatAVisitDidCountsWhenItIsReleased() {
        Bound record;
        record.shop.ready(Visit::PartMlInspection);
        record.shop.say(R"({"entry":"directive.answered","directive":"AD-1","revision":"0","on":"2026-06-01",)"
                        R"("by":"Ada Rhos","item":"E1","answer":"done","method":"paragraph 1")" +
                        record.shop.about() + "}");
        QCOMPARE(record.standing(), Standing::Lapsed); // nobody has signed for it
        QVERIFY(record.shop.sign(Shop::signing()).has_value());
        const auto excepted = record.shop.now().closed->body.excepted;
        QVERIFY(std::ranges::none_of(
            excepted, [](const SignedException& each) { return each.requirement == RequirementId("directive/AD-1"); }));
        QVERIFY(record.standing("2026-06-02") > Standing::Unproven);
        // What was done in a visit that is closed is not added to.
        const auto late = problemsOf(record.shop.record(),
                                     R"({"entry":"directive.answered","directive":"AD-1","revision":"0","on":)"
                                     R"("2026-06-01","by":"Ada Rhos","item":"E1","answer":"done","method":"more")" +
                                         record.shop.about() + "}");
        QVERIFY(!late.empty());
    }
};

CROWNRING_TEST(DirectivesGateTest, QCoreApplication)

}

#include "directives_gate_test.moc"
