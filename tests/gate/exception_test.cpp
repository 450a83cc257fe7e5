// SPDX-License-Identifier: GPL-3.0-or-later
#include "said.h"
#include "signing_attempt.h"
#include "test_class.h"

using namespace crownring;
using namespace crownring::testing;

namespace {

std::string anotherOn(const std::string& item) {
    return R"({"entry":"defect.found","on":"2026-06-01","time":"19:00Z","defect":"D-1","what":"another","severity":"deferrable","item":")" +
           item + "\"}";
}

std::set<std::string> exceptedOf(const Shop& shop) {
    std::set<std::string> requirements;
    for (const auto& each : shop.draft(Shop::signing()).file.excepted)
        requirements.insert(each.item.text() + " " + each.requirement.text());
    return requirements;
}

/// Before a place is read, once it failed and once it was read again.
std::vector<std::set<std::string>> exceptedAsItIsReadAgain(Shop& shop) {
    std::vector excepted{exceptedOf(shop)};
    for (const auto* value : {R"("value":120)", R"("value":310)"}) {
        shop.pull(5, value);
        excepted.push_back(exceptedOf(shop));
    }
    return excepted;
}

}

/// What a statement is about, and what stands beside the work (02, "What a signature states", 1 and 5).
class ExceptionTest : public QObject {
    Q_OBJECT
private slots:
    void anEnvelopeAloneIsNoAircraft() {
        // 14 CFR 43.11(a)(4) (read): the statement is for the aircraft; a component can be certified by its name.
        Shop shop;
        const auto ines = Shop::signing("Ines Holt", Capacity::InspectionAuthorization);
        expectReleased(shop.ready(Visit::UsAnnual), ines);
        QCOMPARE(shop.now().closed->body.statement,
                 std::string("I certify that of this aircraft the following alone (envelope E1, serial number 101) has "
                             "been inspected in accordance with annual inspection and was determined to be in "
                             "airworthy condition."));
        Shop whole;
        expectReleased(whole.wholeAircraft().ready(Visit::UsAnnual), ines);
        QCOMPARE(whole.now().closed->body.statement,
                 std::string("I certify that this aircraft has been inspected in accordance with annual inspection and "
                             "was determined to be in airworthy condition."));
    }
    void underPartMlTheRestIsNamed() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        QCOMPARE(exceptedOf(shop), std::set<std::string>{"E1 ml.arc-review"});
        expectReleased(shop, Shop::signing());
        const auto excepted = shop.now().closed->body.excepted;
        QCOMPARE(excepted.size(), std::size_t{1});
        QCOMPARE(excepted[0].standing, std::string("unproven"));
        Shop reviewed;
        reviewed.open(Visit::PartMlInspection, {{ItemId("E1"), RequirementId("ml.arc-review")}})
            .carriedOut()
            .measured();
        QCOMPARE(exceptedOf(reviewed), std::set<std::string>{"E1 ml.arc-review"}); // the visit does not sign it
        reviewed.say(
            R"({"entry":"person.entitled","on":"2026-01-01","person":"Ada Rhos","capacity":"review-authorisation","licence":"QE.ARA.1"})");
        reviewed.say(confirmedBy("Ada Rhos", Capacity::ReviewAuthorisation, "2026-01-02"));
        reviewed.say(
            R"({"entry":"review.signed","on":"2026-06-02","balloon":"QE-ONE","item":"E1","act":"review","form":"EASA Form 15c","certificate":"ARC-1","expires":"2027-06-02","reviewer":"Ada Rhos","capacity":"review-authorisation","authorisation":"QE.ARA.1")" +
            reviewed.about() + "}");
        QVERIFY(exceptedOf(reviewed).empty());
    }
    void theStatementOfAirworthinessIsRefused() {
        // 14 CFR 43.11(a)(4) (read): "determined to be in airworthy condition".
        Shop shop;
        shop.ready(Visit::UsAnnual);
        shop.adopt("fabric-strength"); // its test goes with the annual, and was not in the work
        auto ines = Shop::signing("Ines Holt", Capacity::InspectionAuthorization);
        QCOMPARE(exceptedOf(shop), std::set<std::string>{"E1 fabric.strength-test"});
        expectRefused(shop, ines, "excepted", "43.11(a)(4)");
        ines.outcome = Outcome::Discrepancies; // what stands against flight is on the list
        expectReleased(shop, ines);
        QCOMPARE(shop.now().closed->body.excepted.size(), std::size_t{1});
    }
    void whatFailsAndIsReadAgainHidesNothingElse() {
        Shop shop;
        shop.say(
            R"({"entry":"directive.issued","on":"2026-05-01","by":"Sam Help","directive":"AD-1","revision":"0","title":"Look at it","issuer":"Authority of Q","issued_by":"authority","state":"Q","effective":"2026-05-20","source":"invented for tests","applies":{"kinds":["envelope"]},"first":{"before_flight":true}})");
        shop.ready(Visit::PartMlInspection);
        const std::set<std::string> excepted{"E1 directive/AD-1", "E1 ml.arc-review"};
        QCOMPARE(exceptedAsItIsReadAgain(shop), std::vector(3, excepted));
    }
    void whatAWithdrawnReleaseReadAgainIsNamed() {
        Shop shop;
        shop.ready(Visit::PartMlInspection).pull(7, R"("value":120)");
        shop.pull(7, R"("value":310)");
        expectReleased(shop, Shop::signing());
        shop.say(R"({"entry":"release.revoked","on":"2026-06-02","reason":"the gauge was broken","by":"Ada Rhos")" +
                 shop.about() + "}");
        shop.ready(Visit::PartMlInspection);
        const std::set<std::string> excepted{"E1 fabric/grab-strength", "E1 ml.arc-review"};
        QCOMPARE(exceptedAsItIsReadAgain(shop), std::vector(3, excepted));
        shop.pull(7, R"("value":310)");
        QCOMPARE(exceptedOf(shop), std::set<std::string>{"E1 ml.arc-review"});
    }
    void aDefectHasANameOfItsOwn() {
        Shop shop;
        shop.ready(Visit::PartMlInspection).find("D-1", "minor");
        const auto problems = problemsOf(shop.record(), anotherOn("E1"));
        QCOMPARE(problems.size(), std::size_t{1});
        QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
        shop.say(shop.clearing("D-1"));
        shop.say(anotherOn("E1")); // what was cleared may be found again
    }
};

CROWNRING_TEST(ExceptionTest, QCoreApplication)
#include "exception_test.moc"
