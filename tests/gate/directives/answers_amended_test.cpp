// SPDX-License-Identifier: GPL-3.0-or-later

/// What was answered to a directive is not changed by a stranger, nor after somebody signed for it; what an item is
/// does not change so that a directive lets go of it. Who may: the table for other work (ML.A.801, 14 CFR 43.9, from
/// memory).

#include "directive_answers.h"
#include "problem/faults/bench_fault.h"
#include "problem/faults/directives/directive_fault.h"
#include "problem/faults/entry_fault.h"
#include "problem/faults/release_fault.h"
#include "problem/faults/trust_fault.h"
#include "test_class.h"

namespace answers_amended_test {

using namespace crownring;
using namespace crownring::testing;
using namespace directives_gate_test;
using Directed = directives_gate_test::Bound;

namespace {

constexpr const char* bySigning = R"("by":"Ada Rhos","capacity":"independent-certifying-staff","id":"an")";

std::string corrected(const std::string& with, const std::string& who = {}, const std::string& on = "2026-05-26") {
    return R"({"entry":"entry.corrected","replaces":"an","on":)"
           "\"" +
           on + "\",\"with\":" + with + who + "}";
}

template <class Refused>
void refusedOf(const Directed& record, const std::string& entry, Refused fault) {
    const auto problems = problemsOf(record.shop.record(), entry);
    QCOMPARE(problems.size(), std::size_t{1});
    QVERIFY2(problems.front().fault == Fault(fault), qPrintable(words::line(problems.front())));
    QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
}

void takenOf(const Directed& record, const std::string& entry) {
    const auto problems = problemsOf(record.shop.record(), entry);
    QVERIFY2(problems.empty(), problems.empty() ? "" : qPrintable(words::line(problems.front())));
}

/// Two entries in one, so that "at once" is past.
constexpr const char* others = R"({"entry":"event.reported","on":"2020-05-20","item":"E1","event":"mildew"}
{"entry":"event.reported","on":"2020-05-21","item":"E1","event":"mildew"}
{"entry":"event.reported","on":"2020-05-22","item":"E1","event":"mildew"})";

}

class AnswersAmendedTest : public QObject {
    Q_OBJECT
private slots:
    void anAnswerIsChangedByWhoMayAndSaysWhy() {
        Directed record;
        record.shop.say(answered(done(bySigning)));
        for (const char* with : {R"({"on":"2026-05-27"})", R"({"clock":{"minutes":90000}})", R"({"method":"another"})"})
            refusedOf(record, corrected(with), DirectiveFault::AnswerUnsaid);
        refusedOf(record, corrected(R"({"on":"2026-05-27"})", R"(,"by":"Ada Rhos")"), DirectiveFault::AnswerUnsaid);
        refusedOf(record, corrected(R"({"on":"2026-05-27"})", R"(,"by":"Nobody Known","note":"so")"),
                  DirectiveFault::MayNotComply);
        takenOf(record, corrected(R"({"on":"2026-05-27"})", R"(,"by":"Ada Rhos","note":"a slip")"));
    }
    void whatTookAChangeBackIsAskedToo() {
        Directed record;
        record.shop.say(answered(done(bySigning)));
        record.shop.say(
            R"({"entry":"entry.corrected","id":"c1","replaces":"an","on":"2026-05-26","by":"Ada Rhos","note":"a slip","with":{"on":"2026-05-22"}})");
        refusedOf(record, R"({"entry":"entry.voided","on":"2026-05-27","voids":"c1","reason":"no"})",
                  DirectiveFault::AnswerUnsaid);
        // The answer itself is taken out by anybody: that leaves the directive open.
        takenOf(record, R"({"entry":"entry.voided","on":"2026-05-27","voids":"an","reason":"no"})");
    }
    void aPaperIsChangedByWhoWroteItDown() {
        Directed record;
        record.shop.say(answered(done(R"("by":"Sam Help","licence":"QE.66.77","ref":"WO 12","id":"an")")));
        takenOf(record, corrected(R"({"ref":"WO 13"})", R"(,"by":"Sam Help","note":"a slip")"));
        refusedOf(record, corrected(R"({"ref":"WO 14"})", R"(,"by":"Ulf Else","note":"a slip")"),
                  DirectiveFault::MayNotComply);
    }
    void whatIsSignedForStaysAlsoAfterTheReleaseIsWithdrawn() {
        Directed record;
        record.shop.ready(Visit::PartMlInspection);
        record.shop.say(
            R"({"entry":"directive.answered","directive":"AD-1","revision":"0","on":"2026-06-01","id":"an",)"
            R"("by":"Ada Rhos","item":"E1","answer":"done","method":"paragraph 1")" +
            record.shop.about() + "}");
        QVERIFY(record.shop.sign(Shop::signing()).has_value());
        const std::string ada = R"(,"by":"Ada Rhos","note":"so")";
        const auto locked = [&] {
            for (const char* with :
                 {R"({"by":"Una Past"})", R"({"on":"2026-05-30"})", R"({"amoc":"letter 7"})", R"({"ref":"y"})",
                  R"({"licence":"x"})", R"({"inspection":null,"licence":"x","ref":"y"})"})
                refusedOf(record, corrected(with, ada, "2026-06-05"), BenchFault::SignatureIsFixed);
        };
        locked();
        record.shop.say(R"({"entry":"release.revoked","on":"2026-06-04","by":"Ada Rhos","reason":"not done")" +
                        record.shop.about() + "}");
        QCOMPARE(record.standing("2026-06-05"), Standing::Lapsed);
        locked();
    }
    void nothingIsPutUnderASignatureThatIsThere() {
        Directed record;
        record.shop.ready(Visit::PartMlInspection);
        QVERIFY(record.shop.sign(Shop::signing()).has_value());
        record.shop.say(answered(done(R"("by":"Sam Help","licence":"QE.66.77","ref":"WO 12","id":"an")")));
        refusedOf(record,
                  corrected(R"({"inspection":)"
                            "\"" +
                                record.shop.inspection.text() + "\"}",
                            R"(,"by":"Ada Rhos","note":"so")", "2026-06-05"),
                  BenchFault::SignatureIsFixed);
    }
    void notApplicableIsShownAsComplianceIs() {
        // The envelope is of no type that is known to the directive; whether it binds is unknown.
        constexpr const char* unknown =
            R"({"entry":"directive.issued","on":"2026-05-01","directive":"AD-2","revision":"0","title":"Look at it","issuer":"Authority of Q","issued_by":"authority","state":"Q","effective":"2026-05-20","source":"invented for tests","applies":{"kinds":["envelope"],"serials":[{"from":"A1","to":"A9"}]},"first":{"before_flight":true}})";
        const auto excuse = [](const std::string& rest, const std::string& on = "2026-05-25") {
            return R"({"entry":"directive.answered","directive":"AD-2","revision":"0","item":"E1","answer":"not-applicable","why":"seen","on":)"
                   "\"" +
                   on + "\"," + rest + "}";
        };
        Directed record;
        record.shop.say(unknown);
        const std::string ada = R"("by":"Ada Rhos","capacity":"independent-certifying-staff")";
        refusedOf(record, excuse(R"("by":"Mal Lory")"), DirectiveFault::NothingShows);
        refusedOf(record, excuse(R"("by":"Mal Lory","capacity":"independent-certifying-staff")"),
                  DirectiveFault::MayNotComply);
        refusedOf(record, excuse(ada, "2026-04-30"), DirectiveFault::ExcusedBeforeIssue);
        takenOf(record, excuse(ada, "2026-05-02"));
        takenOf(record, excuse(R"("by":"Sam Help","licence":"QE.66.77","ref":"WO 12")", "2026-05-02"));
    }
    void whoAnswersDoesSoByTheRulesOfTheBalloon() {
        const auto by = [](const char* who, const char* capacity) {
            return answered(done(R"("by":)"
                                 "\"" +
                                 std::string(who) +
                                 "\",\"capacity\":"
                                 "\"" +
                                 capacity + '"'));
        };
        Directed european;
        european.shop.adopt("part-ml-hot-air");
        refusedOf(european, by("Kit Moor", "mechanic"), DirectiveFault::MayNotComply);
        refusedOf(european, by("Ines Holt", "inspection-authorization"), DirectiveFault::MayNotComply);
        Directed american;
        american.shop.adopt("us-14cfr");
        refusedOf(american, by("Ada Rhos", "independent-certifying-staff"), DirectiveFault::MayNotComply);
        takenOf(american, by("Kit Moor", "mechanic"));
    }
    void aLicenceIsHisWhoSigns() {
        refused(answered(done(R"("by":"Ada Rhos","capacity":"independent-certifying-staff","licence":"QE.66.2")")),
                DirectiveFault::NotHisLicence);
        taken(answered(done(R"("by":"Ada Rhos","capacity":"independent-certifying-staff","licence":"QE.66.1")")));
    }
    void whatIsBlankOrLooksLikeAnotherIsRefused() {
        refused(answered(done(R"("by":"Ada Rhos","capacity":"independent-certifying-staff","amoc":" ")")),
                EntryFault::Blank);
        refused(answered(done(R"("by":"Аda Rhos","licence":"QE.66.1","ref":"WO 12")")), TrustFault::LooksLikeAnother);
    }
    void nothingIsAnsweredForWhatWasNotMadeYet() {
        Directed record;
        record.shop.say(
            R"({"entry":"item.entered","on":"2020-05-01","item":"E9","kind":"envelope","serial":"9","made":"2020-01"})");
        const auto on = [](const char* day) {
            return R"({"entry":"directive.answered","directive":"AD-1","revision":"0","item":"E9","answer":"done","method":"m","by":"Sam Help","licence":"QE.66.77","ref":"WO 12","on":)"
                   "\"" +
                   std::string(day) + "\"}";
        };
        refusedOf(record, on("2010-01-01"), DirectiveFault::BeforeItWasMade);
        refusedOf(record, on("2019-12-31"), DirectiveFault::BeforeItWasMade);
        takenOf(record, on("2020-01-01"));
    }
    void noDirectiveLetsGoOfAnItemWithoutAWord() {
        Directed record;
        record.shop.say(
            R"({"entry":"item.entered","id":"r","on":"2024-01-01","by":"Sam Help","item":"R1","kind":"burner","type":"T-burner","serial":"7"}
{"entry":"directive.issued","on":"2026-05-01","directive":"AD-2","revision":"0","title":"Look at it","issuer":"Authority of Q","issued_by":"authority","state":"Q","effective":"2026-05-20","source":"invented for tests","applies":{"kinds":["burner"],"types":["T-burner"],"serials":[{"from":"5","to":"9"}]},"first":{"before_flight":true}})");
        record.shop.say(others);
        const auto again = [](const char* said, const char* who = "") {
            return R"({"entry":"item.entered","on":"2023-01-01","item":"R1","kind":"burner",)" + std::string(said) +
                   who + "}";
        };
        const auto changed = [](const char* with, const char* who = "") {
            return R"({"entry":"entry.corrected","on":"2026-05-25","replaces":"r","with":)" + std::string(with) + who +
                   "}";
        };
        for (const char* said : {R"("type":"T-burner","serial":"70")", R"("type":"Other","serial":"7")"})
            refusedOf(record, again(said), ReleaseFault::GroundUnsaid);
        for (const char* with : {R"({"serial":"70"})", R"({"type":"Other"})", R"({"serial":null})"})
            refusedOf(record, changed(with), ReleaseFault::GroundUnsaid);
        refusedOf(record, changed(R"({"serial":"70"})", R"(,"by":"Nobody Known","note":"so")"),
                  ReleaseFault::MayNotGradeDown);
        takenOf(record, changed(R"({"serial":"8"})"));
        takenOf(record, changed(R"({"serial":"70"})", R"(,"by":"Ada Rhos","note":"read on its plate")"));
    }
};

CROWNRING_TEST(AnswersAmendedTest, QCoreApplication)

}

#include "answers_amended_test.moc"
