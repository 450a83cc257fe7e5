// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/signing_attempt.h"
#include "problem/faults/release_fault.h"
#include "rules/due/defects.h"
#include "test_class.h"

namespace deferral_end_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string quoted(const std::string& text) { return '"' + text + '"'; }

/// A torn panel that Ada Rhos agreed on 2026-06-01 to put off until 2026-07-31.
struct PutOff {
    Shop shop;
    EntryId deferral;

    explicit PutOff(const std::string& operations = "[]") : shop(operations) {
        shop.say(
            R"({"entry":"defect.found","on":"2026-06-01","item":"E1","what":"a torn panel","defect":"D-1","severity":"deferrable"})");
        deferral = shop.say(deferred("2026-07-31")).ids.at(0);
    }
    static std::string deferred(const std::string& until, const std::string& by = "Ada Rhos",
                                const std::string& on = "2026-06-01") {
        return R"({"entry":"defect.deferred","item":"E1","reason":"a patch is ordered","defect":"D-1","until":)" +
               quoted(until) + R"(,"agreed_by":)" + quoted(by) + R"(,"on":)" + quoted(on) + "}";
    }
    [[nodiscard]] std::string corrected(const std::string& with, const std::string& by = "",
                                        const std::string& note = "") const {
        return R"({"entry":"entry.corrected","on":"2026-06-10","replaces":)" + quoted(deferral.text()) + R"(,"by":)" +
               quoted(by) + R"(,"note":)" + quoted(note) + R"(,"with":)" + with + "}";
    }
    static std::string voided(const EntryId& id, const std::string& by = "") {
        return R"({"entry":"entry.voided","on":"2026-06-10","reason":"written twice","voids":)" + quoted(id.text()) +
               R"(,"by":)" + quoted(by) + R"(})";
    }
    [[nodiscard]] Standing standingOn(const char* on) const {
        const auto list = due(shop.record(), {std::nullopt, {ItemId("E1")}}, day(on)).value();
        for (const auto& row : list.rows)
            if (defectOf(row.requirement->id))
                return row.state.standing;
        return Standing::Closed;
    }
    void refused(const std::string& entry, ReleaseFault fault) const {
        const auto problems = problemsOf(shop.record(), entry);
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().fault, Fault(fault));
        QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
    }
};

}

/// Who agreed to an end agreed to that end: another one is agreed to by whom the rules let defer (ML.A.403(b), (c),
/// from memory but for the AMC; 14 CFR 91.213(d), from memory).
class DeferralEndTest : public QObject {
    Q_OBJECT
private slots:
    void aLaterEndNamesWhoAgrees() {
        const PutOff off;
        for (const auto* with : {R"({"until":"2026-12-31"})", R"({"until":null,"until_minutes":99000})",
                                 R"({"until_minutes":99000,"until":"2026-12-31"})", R"({"on":"2026-06-02"})",
                                 R"({"not_required":true})"}) {
            off.refused(off.corrected(with), ReleaseFault::DeferralUnsaid);
            off.refused(off.corrected(with, "Sam Help", "the patch is late"), ReleaseFault::DeferralUnsaid);
            off.refused(off.corrected(with, "Ada Rhos"), ReleaseFault::DeferralUnsaid); // why?
        }
        QCOMPARE(off.standingOn("2026-08-01"), Standing::Lapsed);
        PutOff named;
        named.shop.say(named.corrected(R"({"until":"2026-12-31"})", "Ada Rhos", "the patch is late"));
        QVERIFY(named.standingOn("2026-08-01") > Standing::Lapsed);
        PutOff another;
        another.shop.say(
            another.corrected(R"({"until":"2026-12-31","agreed_by":"Ole Berg"})", "Sam Help", "the patch is late"));
        QVERIFY(another.standingOn("2026-08-01") > Standing::Lapsed);
    }
    void whoAgreesMayDeferOnThatDay() {
        PutOff off;
        // Tom Soon is entitled from 2026-06-03 on; of the first day he could not have agreed, nor a stranger.
        off.refused(off.corrected(R"({"until":"2026-12-31","agreed_by":"Una Past"})", "Sam Help", "late"),
                    ReleaseFault::MayNotDefer); // until 2026-06-01
        PutOff forHire(R"(["for-hire"])");
        forHire.refused(forHire.corrected(R"({"until":"2026-12-31","agreed_by":"Ole Berg"})", "Ole Berg", "late"),
                        ReleaseFault::MayNotDefer);
    }
    void anEarlierEndOrOtherWordsAreCorrectedByAnybody() {
        PutOff off;
        off.shop.say(off.corrected(R"({"until":"2026-06-30"})"));
        off.shop.say(off.corrected(R"({"reason":"the patch was ordered on Monday"})"));
        off.shop.say(off.corrected(R"({"until_minutes":12500})")); // whichever comes first
        QCOMPARE(off.standingOn("2026-07-01"), Standing::Lapsed);
    }
    void anEarlierEndIsNotTakenBackByAnybody() {
        PutOff off;
        const auto shorter = off.shop.say(off.corrected(R"({"until":"2026-06-30"})")).ids.at(0);
        off.refused(PutOff::voided(shorter), ReleaseFault::DeferralUnsaid);
        off.refused(PutOff::voided(shorter, "Nobody Known"), ReleaseFault::MayNotDefer);
        QCOMPARE(off.standingOn("2026-07-01"), Standing::Lapsed);
        off.shop.say(PutOff::voided(shorter, "Ada Rhos"));
        QVERIFY(off.standingOn("2026-07-01") > Standing::Lapsed);
    }
    void norByTakingBackTheDeferralThatShortenedAnother() {
        PutOff off;
        const auto shorter = off.shop.say(PutOff::deferred("2026-06-20", "Ada Rhos", "2026-06-05")).ids.at(0);
        QCOMPARE(off.standingOn("2026-06-21"), Standing::Lapsed);
        off.refused(PutOff::voided(shorter), ReleaseFault::DeferralUnsaid);
        off.refused(PutOff::voided(shorter, "Nobody Known"), ReleaseFault::MayNotDefer);
    }
    void takenBackItGroundsAndStaysSo() {
        PutOff off;
        const auto gone = off.shop.say(PutOff::voided(off.deferral)).ids.at(0); // anybody makes more of a defect
        QCOMPARE(off.standingOn("2026-06-11"), Standing::Lapsed);
        off.refused(PutOff::voided(gone), ReleaseFault::DeferralUnsaid);
        off.shop.say(PutOff::voided(gone, "Ada Rhos"));
        QVERIFY(off.standingOn("2026-06-11") > Standing::Lapsed);
    }
};

CROWNRING_TEST(DeferralEndTest, QCoreApplication)

}

#include "deferral_end_test.moc"
