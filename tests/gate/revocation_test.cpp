// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/bench_file.h"
#include "answers/supported.h"
#include "said.h"
#include "signing_attempt.h"
#include "test_class.h"

namespace revocation_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string quoted(const std::string& text) { return '"' + text + '"'; }

std::string withdrawal(const Shop& shop, const std::string& by = R"(,"by":"Ada Rhos")") {
    return R"({"entry":"release.revoked","on":"2026-06-10","reason":"the gauge was broken")" + by + shop.about() + "}";
}

std::string correction(const std::string& of, const std::string& with) {
    return R"({"entry":"entry.corrected","on":"2026-06-12","by":"Ada Rhos","note":"found out","replaces":)" +
           quoted(of) + R"(,"with":)" + with + "}";
}

Standing standingOfInspection(const Shop& shop) {
    const auto list = due(shop.record(), {Registration("QE-ONE"), {}}, day("2026-06-20")).value();
    for (const auto& row : list.rows)
        if (row.requirement->id == RequirementId("ml.inspection"))
            return row.state.standing;
    return Standing::Closed;
}

Evidence evidenceOfInspection(const Shop& shop) {
    const auto list = due(shop.record(), {Registration("QE-ONE"), {}}, day("2026-06-20")).value();
    for (const auto& row : list.rows)
        if (row.requirement->id == RequirementId("ml.inspection") && row.state.evidence)
            return *row.state.evidence;
    return Evidence::Stated;
}

}

/// A release that should not have been signed is withdrawn, legibly; what it accomplished counts no more.
class RevocationTest : public QObject {
    Q_OBJECT
private slots:
    void whatItAccomplishedCountsNoMore() {
        Shop shop;
        QVERIFY(shop.ready(Visit::PartMlInspection).sign(Shop::signing()));
        QCOMPARE(standingOfInspection(shop), Standing::Clear);
        QCOMPARE(evidenceOfInspection(shop), Evidence::Signed);
        shop.say(withdrawal(shop));
        QCOMPARE(standingOfInspection(shop), Standing::Unproven);
        QCOMPARE(shop.now().revoked->body.reason, std::string("the gauge was broken"));
        QVERIFY(!shop.now().isOpen());
        QVERIFY(shop.record().rebuild());
        QCOMPARE(standingOfInspection(shop), Standing::Unproven);
        QVERIFY(shop.record().verify().value().intact);
    }
    void theHistoryOfItsBalloonTellsOfBoth() {
        Shop shop;
        QVERIFY(shop.ready(Visit::PartMlInspection).sign(Shop::signing()));
        shop.say(withdrawal(shop));
        const auto history = shop.record().history(Registration("QE-ONE"), {}, day("2026-06-20"), 100).value();
        for (const auto kind : {kindName<InspectionClosed>(), kindName<ReleaseRevoked>()})
            QCOMPARE(std::ranges::count_if(history,
                                           [&](const JournalLine& line) { return kindName(line.entry.body) == kind; }),
                     1);
    }
    void onlyAReleaseAndOnlyOnceAndBySomebody() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        const auto refused = [&](const std::string& line) {
            const auto problems = problemsOf(shop.record(), line);
            QVERIFY(!problems.empty());
            QCOMPARE(problems.front().code(), Code::NotReleasable);
            QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
        };
        refused(withdrawal(shop));
        QVERIFY(shop.sign(Shop::signing()));
        refused(withdrawal(shop, ""));
        const auto taken = shop.say(withdrawal(shop)).ids.at(0).text();
        refused(withdrawal(shop));
        refused(R"({"entry":"entry.voided","on":"2026-06-11","reason":"it was right","voids":)" + quoted(taken) + "}");
        QCOMPARE(standingOfInspection(shop), Standing::Unproven);
    }
    void itsDayStands() {
        Shop shop;
        QVERIFY(shop.ready(Visit::PartMlInspection).sign(Shop::signing()));
        const auto taken = shop.say(withdrawal(shop)).ids.at(0).text();
        QCOMPARE(problemsOf(shop.record(), correction(taken, R"({"on":"2999-01-01"})")).front().code(),
                 Code::CannotAmend);
    }
    void evidenceIsWhatItRestsOn() {
        Shop shop;
        shop.adopt("part-ml-hot-air");
        shop.say(R"({"entry":"requirement.done","on":"2026-01-10","item":"E1","requirement":"ml.inspection"})");
        QCOMPARE(evidenceOfInspection(shop), Evidence::Stated);
        shop.say(
            R"({"entry":"requirement.done","on":"2026-02-10","item":"E1","requirement":"ml.inspection","ref":"CRS 12"})");
        QCOMPARE(evidenceOfInspection(shop), Evidence::Stated); // nobody is named who signed it
        shop.say(
            R"({"entry":"requirement.done","on":"2026-03-10","item":"E1","requirement":"ml.inspection","ref":"CRS 13","signatory":"Lee Farr","licence":"QE.66.7"})");
        QCOMPARE(evidenceOfInspection(shop), Evidence::Paper);
    }
    void aGaugeFoundOutOfCalibrationLaterSupportsItNoMore() {
        // ML.A.402(b)(4) (from memory): tools and equipment are controlled and calibrated.
        Shop shop;
        const auto gauge = shop.say(
            R"({"entry":"tester.calibrated","id":"cal-9","on":"2026-05-01","tester":"F-9","until":"2027-04-30","what":"force gauge"})");
        shop.open(Visit::PartMlInspection).carriedOut().tellTale(110, 116);
        shop.pull(3, R"("value":300)", R"(,"tester":"F-9")");
        shop.pull(9, R"("value":300)", R"(,"tester":"F-9")");
        QVERIFY(shop.sign(Shop::signing()));
        const auto file = [&] { return benchFile(shop.record(), shop.inspection, day("2026-06-20")).value(); };
        QVERIFY(file().unsupported.empty());
        shop.say(correction("cal-9", R"({"until":"2026-05-15"})"));
        QCOMPARE(file().unsupported.size(), std::size_t{2});
        const auto told = [&](const char* balloon) {
            return unsupportedReleases(shop.record(), Registration(balloon), day("2026-06-20"), 9).value();
        };
        QCOMPARE(told("QE-ONE"), std::vector{shop.inspection});
        QVERIFY(told("QE-TWO").empty());
        const auto of = [&](const char* item) {
            return unsupportedReleasesOf(shop.record(), {ItemId(item)}, day("2026-06-20"), 9).value();
        };
        QCOMPARE(of("E1"), std::vector{shop.inspection});
        QVERIFY(unsupportedReleasesOf(shop.record(), {ItemId("E1")}, day("2026-05-01"), 9).value().empty());
        QCOMPARE(file().unsupported.front().fault, Fault(ReleaseFault::TesterNotCalibrated));
    }
    void aReadingCorrectedBelowTheLimitSupportsItNoMore() {
        Shop shop;
        const auto reading = shop.ready(Visit::PartMlInspection).pull(5).ids.at(0).text();
        QVERIFY(shop.sign(Shop::signing()));
        const auto file = [&] { return benchFile(shop.record(), shop.inspection, day("2026-06-20")).value(); };
        QVERIFY(file().unsupported.empty());
        shop.say(correction(reading, R"({"value":103})"));
        QVERIFY(!file().unsupported.empty());
        // What was found afterwards is no fault of the signature.
        Shop later;
        QVERIFY(later.ready(Visit::PartMlInspection).sign(Shop::signing()));
        later.say(
            R"({"entry":"defect.found","on":"2026-06-02","time":"20:00Z","item":"E1","defect":"D-5","what":"torn","severity":"grounding"})");
        QVERIFY(benchFile(later.record(), later.inspection, day("2026-06-20")).value().unsupported.empty());
    }
};

CROWNRING_TEST(RevocationTest, QCoreApplication)

}

#include "revocation_test.moc"
