// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/balloon_lines.h"
#include "answers/check_rig_up.h"
#include "answers/discrepancies.h"
#include "problem/faults/bench_fault.h"
#include "problem/faults/release_fault.h"
#include "returned.h"
#include "test_class.h"

namespace return_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string quoted(const std::string& text) { return '"' + text + '"'; }

std::string correctedInto(const std::string& of, const std::string& with) {
    return R"({"entry":"entry.corrected","on":"2026-07-12","by":"Ines Holt","note":"found out","replaces":)" +
           quoted(of) + R"(,"with":)" + with + "}";
}

std::string withdrawnOn(const Shop& shop, const char* on) {
    return R"({"entry":"release.revoked","by":"Ines Holt","reason":"the panel tore again","on":)" + quoted(on) +
           shop.about() + "}";
}

std::vector<ReleaseFault> faultsOf(const std::vector<Problem>& problems) {
    std::vector<ReleaseFault> faults;
    for (const auto fault :
         {ReleaseFault::ListAnswered, ReleaseFault::ApprovedBefore, ReleaseFault::DefectStands,
          ReleaseFault::ListedStands, ReleaseFault::LeftOut, ReleaseFault::MayNotSign, ReleaseFault::OtherText,
          ReleaseFault::NotAccomplished, ReleaseFault::NotWithItsSignature, ReleaseFault::RevokeInstead})
        for (const auto& problem : problems)
            if (problem.fault == Fault(fault))
                faults.push_back(fault);
    return faults;
}

const std::string laterDay = R"({"on":"2026-06-20"})";
const std::string laterTime = R"({"time":"23:00Z"})";

std::string foundAgainOn(const char* on) {
    return R"({"entry":"defect.found","item":"E1","defect":"D-9","what":"a tear","severity":"grounding","on":)" +
           quoted(on) + "}";
}

const std::string specialDone =
    R"(
{"entry":"requirement.done","on":"2026-06-02","item":"E1","requirement":"us.special-inspection","ref":)";

}

/// A closing with a list ends the inspection, not the matter (02, "What a signature states"; 14 CFR 43.11(a)(5), (b),
/// read; 91.409(a), gist read).
class ReturnTest : public QObject {
    Q_OBJECT
private slots:
    void untilThenTheBalloonIsGroundedByTheList() {
        ListedShop shop;
        shop.wholeAircraft();
        shop.listed();
        for (const auto& item : shop.items) {
            const auto facts = shop.record().facts({{}, {item}}, day("2026-06-10")).value();
            QCOMPARE(facts.front().lists.size(), std::size_t{1});
            QCOMPARE(facts.front().lists.front().inspection, shop.inspection);
        }
        QVERIFY(!shop.isGrounded("2026-06-01"));
        QVERIFY(shop.isGrounded("2026-06-02") && shop.isGrounded("2027-06-02"));
        QVERIFY(!shop.annualFrom("2026-06-10"));
        const auto list = shop.dueOn("2026-06-10");
        int rows = 0;
        for (const auto& row : list.rows)
            if (row.requirement->id.text() == shop.listName()) {
                ++rows;
                QVERIFY(isBinding(row));
                QCOMPARE(words::said(row.requirement->title),
                         QStringLiteral("Discrepancies of inspection %1: of 2 on the list, 2 still stand")
                             .arg(QString::fromStdString(shop.inspection.text())));
            }
        QCOMPARE(rows, 4);
        const auto kit = checkRigUp(shop.record(), shop.items, day("2026-06-10"), {}).value();
        QVERIFY(!kit.verdict.mayFly);
        QVERIFY(std::ranges::any_of(kit.verdict.reasons, [&](const RigUpReason& reason) {
            return reason.row && reason.row->requirement->id.text() == shop.listName();
        }));
    }
    void whatIsLeftOfItGroundsWhereNothingElseDoes() {
        // Both are cleared, and still nobody has approved the return to service.
        ListedShop shop;
        shop.listed().cleared("D-1", "2026-06-20");
        shop.cleared("D-2", "2026-06-20");
        const auto lines = balloonLines(shop.record(), Registration("QE-ONE"), day("2026-06-21"), Outside::LeftOut);
        QCOMPARE(lines.value().lines.front().headline.row->requirement->id.text(), shop.listName());
        QVERIFY(words::said(lines.value().lines.front().headline.row->requirement->title).contains("not approved"));
        QVERIFY(shop.approve(ListedShop::approving("2026-06-21")));
        const auto after = balloonLines(shop.record(), Registration("QE-ONE"), day("2026-06-21"), Outside::LeftOut);
        QCOMPARE(after.value().lines.front().headline.row->state.standing, Standing::Clear);
    }
    void aFindingIsNotMovedOffTheListThatWasSigned() {
        ListedShop shop;
        shop.ready(Visit::UsAnnual);
        const auto found = shop.find("D-1", "barring").ids.at(0).text();
        QVERIFY(shop.sign(ListedShop::ines()));
        for (const auto& with : {laterDay, laterTime})
            QVERIFY(
                std::ranges::any_of(problemsOf(shop.record(), correctedInto(found, with)), [](const Problem& problem) {
                    return problem.fault == Fault(BenchFault::SignatureIsFixed);
                }));
    }
    void whatIsFoundAgainIsNotAnsweredByTheClearingBefore() {
        ListedShop shop;
        shop.listed().say(foundAgainOn("2026-06-10"));
        shop.cleared("D-9", "2026-06-12");
        expectOnly(problemsOf(shop.record(), foundAgainOn("2026-06-12")), ReleaseFault::FoundWithClearing);
        QVERIFY(problemsOf(shop.record(), foundAgainOn("2026-06-13")).empty());
    }
    void aListThatIsClearedWeeksLaterCountsFromTheDayOfTheInspection() {
        ListedShop shop;
        shop.listed().cleared("D-1", "2026-06-20");
        shop.cleared("D-2", "2026-07-01");
        QVERIFY(shop.approve(ListedShop::approving("2026-07-04")));
        QVERIFY(!shop.isGrounded("2026-07-04"));
        QCOMPARE(shop.annualFrom("2026-07-04"), std::optional(day("2026-06-02")));
        QCOMPARE(shop.state("us.annual", "2026-07-04")->evidence, std::optional(Evidence::Signed));
        // On the days between it was grounded, and the annual did not count yet.
        QVERIFY(shop.isGrounded("2026-07-03"));
        QVERIFY(!shop.annualFrom("2026-07-03"));
        QVERIFY(shop.record().verify().value().intact);
        QVERIFY(shop.record().rebuild());
        QCOMPARE(shop.annualFrom("2026-07-04"), std::optional(day("2026-06-02")));
        QVERIFY(benchFile(shop.record(), shop.inspection, day("2026-07-05")).value().unsupported.empty());
    }
    void inWhateverOrderThePaperArrives() {
        ListedShop shop;
        shop.listed();
        shop.say(
            R"({"entry":"defect.found","on":"2026-06-03","item":"E1","defect":"D-3","what":"a hole","severity":"minor"})");
        // The later of the two reaches the office first; what was found afterwards is not on the list.
        shop.cleared("D-2", "2026-06-30");
        shop.cleared("D-1", "2026-06-10");
        QVERIFY(shop.approve(ListedShop::approving("2026-07-01")));
        QCOMPARE(shop.annualFrom("2026-07-01"), std::optional(day("2026-06-02")));
        // A flight of the day before, logged late, moves nothing of it.
        shop.say(R"({"entry":"flight.logged","on":"2026-06-01","balloon":"QE-ONE","minutes":60})");
        QCOMPARE(shop.annualFrom("2026-07-01"), std::optional(day("2026-06-02")));
        QVERIFY(shop.record().verify().value().intact);
    }
    void oneItemThatStandsRefusesWithItsName() {
        ListedShop shop;
        shop.listed().cleared("D-2", "2026-06-10");
        const auto before = shop.entries();
        const auto refused = shop.approve(ListedShop::approving("2026-06-20"));
        QVERIFY(!refused);
        expectOnly(refused.error(), ReleaseFault::DefectStands);
        QCOMPARE(refused.error().front().arguments.front().written(), std::string("a torn panel"));
        QCOMPARE(shop.entries(), before);
        // What is put off still stands on the list.
        shop.say(
            R"({"entry":"defect.deferred","on":"2026-06-12","item":"E1","reason":"ordered","until":"2026-09-30","defect":"D-1","agreed_by":"Ines Holt","not_required":true,"placard":"inoperative"})");
        QVERIFY(!shop.approve(ListedShop::approving("2026-06-20")));
        // Cleared after the day of the approval it stands on that day.
        shop.cleared("D-1", "2026-06-25");
        QVERIFY(!shop.approve(ListedShop::approving("2026-06-20")));
        QVERIFY(shop.approve(ListedShop::approving("2026-06-25")));
    }
    void clearedLaterOnTheSameDayItStands() {
        ListedShop shop;
        shop.listed().cleared("D-2", "2026-06-20");
        shop.cleared("D-1", "2026-06-20", R"(,"time":"15:00Z")");
        QVERIFY(!shop.approve(ListedShop::approving("2026-06-20"), TimeOfDay(14, 0)));
        QVERIFY(shop.approve(ListedShop::approving("2026-06-20"), TimeOfDay(15, 30)));
    }
    void somebodyWhoMayNotReleaseSuchAVisitMayNotApprove() {
        ListedShop shop;
        shop.listed().cleared("D-1", "2026-06-20");
        shop.cleared("D-2", "2026-06-20");
        for (const auto& by : {ListedShop::approving("2026-06-21", "Una Past", Capacity::Mechanic),
                               ListedShop::approving("2026-06-21", "Ada Rhos", Capacity::IndependentCertifyingStaff),
                               ListedShop::approving("2026-06-21", "Kit Moor", Capacity::InspectionAuthorization)}) {
            const auto refused = shop.approve(by);
            QVERIFY(!refused);
            expectOnly(refused.error(), ReleaseFault::MayNotSign);
        }
        QVERIFY(shop.isGrounded("2026-06-21"));
    }
    void aMechanicMayAfterAnAnnual() {
        // 14 CFR 43.11(b), read; FAA-G-8082-19, an extract, read: no second annual, and whoever may do that work.
        ListedShop shop;
        shop.listed().cleared("D-1", "2026-06-20");
        shop.cleared("D-2", "2026-06-20");
        QVERIFY(shop.approve(ListedShop::approving("2026-06-21", "Kit Moor", Capacity::Mechanic)));
        QCOMPARE(shop.annualFrom("2026-06-21"), std::optional(day("2026-06-02")));
    }
    void thereIsNothingToApproveOfAReleaseOrOfWhatWasAbandoned() {
        ListedShop released;
        QVERIFY(released.ready(Visit::UsAnnual).sign(ListedShop::ines(Outcome::Released)));
        expectOnly(released.approve(ListedShop::approving("2026-06-20")).error(), ReleaseFault::ListAnswered);
        // Abandoned: no list was signed, so nothing but what was found grounds.
        ListedShop abandoned;
        abandoned.ready(Visit::UsAnnual).find("D-1", "barring");
        QVERIFY(abandoned.sign(ListedShop::ines(Outcome::Abandoned)));
        QVERIFY(!abandoned.isGrounded("2026-06-10"));
        QVERIFY(abandoned.state("defect/D-1", "2026-06-10").has_value());
        const auto refused = problemsOf(abandoned.record(), abandoned.posted());
        QVERIFY(!faultsOf(refused).empty());
        QCOMPARE(faultsOf(refused).front(), ReleaseFault::ListAnswered);
        ListedShop open;
        open.ready(Visit::UsAnnual);
        expectOnly(open.approve(ListedShop::approving("2026-06-20")).error(), ReleaseFault::ListAnswered);
    }
    void onceAndNotBeforeTheList() {
        ListedShop shop;
        shop.ready(Visit::UsAnnual).find("D-1", "minor");
        QVERIFY(shop.sign(ListedShop::ines()));
        shop.cleared("D-1", "2026-06-02", R"(,"time":"20:00Z")");
        QCOMPARE(faultsOf(shop.approve(ListedShop::approving("2026-06-01")).error()).front(),
                 ReleaseFault::ApprovedBefore);
        // On its own day an approval that says no time comes after the list, and one of the morning before it.
        expectOnly(shop.approve(ListedShop::approving("2026-06-02"), TimeOfDay(6, 0)).error(),
                   ReleaseFault::DefectStands);
        QVERIFY(shop.approve(ListedShop::approving("2026-06-02"), TimeOfDay(20, 30)));
        expectOnly(shop.approve(ListedShop::approving("2026-06-20")).error(), ReleaseFault::ListAnswered);
    }
    void whatTheInspectionDidIsWrittenWithTheApprovalAndNoMore() {
        ListedShop shop;
        shop.listed().cleared("D-1", "2026-06-10");
        shop.cleared("D-2", "2026-06-10");
        const auto refused = [&](const std::string& lines, ReleaseFault fault) {
            const auto before = shop.entries();
            const auto problems = problemsOf(shop.record(), lines);
            QVERIFY(!faultsOf(problems).empty());
            QCOMPARE(faultsOf(problems).front(), fault);
            QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
            QCOMPARE(shop.entries(), before);
        };
        refused(shop.posted({}, ""), ReleaseFault::LeftOut);
        refused(shop.posted() + specialDone + quoted(shop.inspection.text()) + "}", ReleaseFault::NotAccomplished);
        auto later = shop.posted();
        later.replace(later.find("\"on\":\"2026-06-02\""), 17, "\"on\":\"2026-06-20\"");
        refused(later, ReleaseFault::NotWithItsSignature);
        auto other = shop.posted();
        other.replace(other.find("only for the work"), 17, "for whatever flew");
        refused(other, ReleaseFault::OtherText);
        QVERIFY(problemsOf(shop.record(), shop.posted()).empty());
        QCOMPARE(shop.annualFrom("2026-06-20"), std::optional(day("2026-06-02")));
    }
    void whatWasApprovedIsNeitherVoidedNorCorrectedIntoSomethingElse() {
        ListedShop shop;
        shop.listed().cleared("D-1", "2026-06-10");
        shop.cleared("D-2", "2026-06-10");
        const auto ids = shop.approve(ListedShop::approving("2026-06-20")).value().ids;
        for (const auto& id : ids)
            QCOMPARE(problemsOf(shop.record(), R"({"entry":"entry.voided","on":"2026-07-12","reason":"no","voids":)" +
                                                   quoted(id.text()) + "}")
                         .front()
                         .fault,
                     Fault(ReleaseFault::RevokeInstead));
        const auto approval = ids.front().text();
        for (const char* with : {R"({"on":"2026-06-21"})", R"({"signatory":"Kit Moor"})", R"({"statement":"fit"})",
                                 R"({"capacity":"mechanic"})", R"({"licence":"other"})"})
            QCOMPARE(problemsOf(shop.record(), correctedInto(approval, with)).front().code(), Code::CannotAmend);
        QVERIFY(problemsOf(shop.record(), correctedInto(approval, R"({"note":"by telephone"})")).empty());
        QVERIFY(!shop.isGrounded("2026-07-20"));
    }
    void aListHasNoReleaseToWithdraw() {
        ListedShop shop;
        shop.listed();
        QCOMPARE(problemsOf(shop.record(), withdrawnOn(shop, "2026-06-10")).front().fault,
                 Fault(ReleaseFault::NoReleaseToRevoke));
        QVERIFY(shop.isGrounded("2026-06-20"));
    }
    void anApprovalThatIsWithdrawnLeavesTheListAndTakesTheAnnual() {
        // The finding remains: the list grounds again, until somebody approves anew. What the inspection did counts no
        // more, whoever approves: that wants another inspection.
        ListedShop shop;
        shop.listed().cleared("D-1", "2026-06-10");
        shop.cleared("D-2", "2026-06-10");
        QVERIFY(shop.approve(ListedShop::approving("2026-06-20")));
        shop.say(withdrawnOn(shop, "2026-06-25"));
        QVERIFY(shop.isGrounded("2026-06-26") && shop.isGrounded("2026-06-22")); // as if it had never been approved
        QVERIFY(!shop.annualFrom("2026-06-26"));
        expectOnly(shop.approve(ListedShop::approving("2026-06-24")).error(), ReleaseFault::ApprovedBefore);
        const auto again = shop.approve(ListedShop::approving("2026-06-28"));
        QVERIFY(again);
        QCOMPARE(again->ids.size(), std::size_t{1});
        QVERIFY(!shop.isGrounded("2026-06-28"));
        QVERIFY(!shop.annualFrom("2026-06-28"));
        QVERIFY(shop.record().verify().value().intact);
        shop.say(withdrawnOn(shop, "2026-06-30"));
        QVERIFY(shop.isGrounded("2026-06-30"));
        QVERIFY(shop.record().rebuild());
        QVERIFY(shop.isGrounded("2026-06-30") && !shop.annualFrom("2026-06-30"));
    }
    void aLaterAnnualDoesNotPassOverTheList() {
        ListedShop shop;
        shop.listed().cleared("D-1", "2026-06-10");
        shop.cleared("D-2", "2026-06-10");
        const auto first = shop.inspection;
        Opening opening;
        opening.visit = Visit::UsAnnual;
        opening.balloon = Registration("QE-ONE");
        opening.items = shop.items;
        opening.on = day("2026-06-01");
        opening.by = "Ines Holt";
        shop.inspection = openInspection(shop.record(), shop.record(), opening).value();
        shop.carriedOut().measured();
        auto later = ListedShop::ines(Outcome::Released);
        later.on = day("2026-06-12");
        QCOMPARE(shop.refused(later), QStringList{"excepted"});
        later.outcome = Outcome::Discrepancies;
        QVERIFY(shop.sign(later));
        // Each list is answered by itself; the later one has the earlier on it.
        expectOnly(shop.approve(ListedShop::approving("2026-06-20")).error(), ReleaseFault::ListedStands);
        const auto second = std::exchange(shop.inspection, first);
        QVERIFY(shop.approve(ListedShop::approving("2026-06-20")));
        shop.inspection = second;
        QVERIFY(shop.approve(ListedShop::approving("2026-06-20")));
        QVERIFY(!shop.isGrounded("2026-06-20"));
    }
    void howMuchOfItStandsIsTold() {
        ListedShop shop;
        shop.listed();
        auto lists = pendingLists(shop.record(), Registration("QE-ONE"), day("2026-06-10")).value();
        QCOMPARE(lists.size(), std::size_t{1});
        QCOMPARE(lists.front().count(), (ListCount{2, 2}));
        shop.cleared("D-1", "2026-06-10");
        lists = pendingLists(shop.record(), {}, day("2026-06-10")).value();
        QCOMPARE(lists.front().count(), (ListCount{1, 2}));
        QVERIFY(pendingLists(shop.record(), Registration("QE-TWO"), day("2026-06-10")).value().empty());
        QVERIFY(pendingLists(shop.record(), {}, day("2026-06-01")).value().empty());
    }
    void anEntitlementFoundOutToHaveEndedSupportsItNoMore() {
        ListedShop shop;
        const auto said = shop.say(
            R"({"entry":"person.entitled","id":"ent-9","on":"2020-01-01","person":"Iris Vale","capacity":"inspection-authorization","licence":"IA 9"})");
        shop.listed().cleared("D-1", "2026-06-10");
        shop.cleared("D-2", "2026-06-10");
        QVERIFY(shop.approve(ListedShop::approving("2026-06-20", "Iris Vale")));
        const auto file = [&] { return benchFile(shop.record(), shop.inspection, day("2026-07-20")).value(); };
        QVERIFY(file().unsupported.empty());
        shop.say(correctedInto("ent-9", R"({"until":"2026-06-15"})"));
        QCOMPARE(faultsOf(file().unsupported), std::vector{ReleaseFault::MayNotSign});
    }
    void underPartMlTheWordsAreThoseOfARelease() {
        ListedShop shop;
        shop.ready(Visit::PartMlInspection).find("D-1", "barring");
        auto ada = Shop::signing();
        ada.outcome = Outcome::Discrepancies;
        QVERIFY(shop.sign(ada));
        shop.cleared("D-1", "2026-06-10", "", "Ada Rhos");
        const auto by = ListedShop::approving("2026-06-20", "Ada Rhos", Capacity::IndependentCertifyingStaff);
        // The review was never done and is on the list too.
        expectOnly(shop.approve(by).error(), ReleaseFault::ListedStands);
        shop.say(R"({"entry":"requirement.done","on":"2026-06-12","item":"E1","requirement":"ml.arc-review"})");
        const auto draft = draftReturn(shop.record(), shop.inspection, by).value();
        QVERIFY(draft.statement.text.starts_with("Certifies that the work specified"));
        QVERIFY(shop.approve(by));
        QVERIFY(!shop.isGrounded("2026-06-20"));
    }
};

CROWNRING_TEST(ReturnTest, QCoreApplication)

}

#include "return_test.moc"
