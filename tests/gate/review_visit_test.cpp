// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/review_fault.h"
#include "signing_attempt.h"
#include "test_class.h"

using namespace crownring;
using namespace crownring::testing;

namespace {

/// On 2026-06-01, while the shop's inspection is performed.
std::string reviewIn(const Shop& shop, const std::string& by, const std::string& day = "2026-06-01") {
    const auto printed = "2027" + day.substr(4);
    return R"({"entry":"review.signed","on":")" + day + R"(","expires":")" + printed +
           R"(","balloon":"QE-ONE","item":"E1","act":"review","form":"EASA Form 15c","certificate":"ARC 7")" + by +
           shop.about() + "}";
}

const std::string byAda = R"(,"reviewer":"Ada Rhos","capacity":"review-authorisation","authorisation":"ARA 1")";
const std::string byOdo =
    R"(,"reviewer":"Odo Vale","capacity":"airworthiness-review-staff","authorisation":"ARS 1, Lakeside, QE.145.0031")";

constexpr const char* theReviewers =
    R"({"entry":"person.entitled","on":"2026-01-01","person":"Ada Rhos","capacity":"review-authorisation","licence":"ARA 1"}
{"entry":"person.entitled","on":"2026-01-01","person":"Odo Vale","capacity":"airworthiness-review-staff","licence":"ARS 1","organisation":"Lakeside","approval":"QE.145.0031"}
{"entry":"person.entitled","on":"2026-01-01","person":"Odo Vale","capacity":"organisation-certifying-staff","licence":"QE.66.5","organisation":"Lakeside","approval":"QE.145.0031"})";

const std::string underAdd = R"(["for-hire"])";

const std::vector<Work> reviewToo{{ItemId("E1"), RequirementId("ml.arc-review")}};

}

/// A review that is made while an annual or 100-hour inspection is performed (ML.A.901(b)(3), (4), read).
class ReviewVisitTest : public QObject {
    Q_OBJECT

    static void reviewersCome(Shop& shop) {
        shop.say(theReviewers);
        shop.say(confirmedBy("Odo Vale", Capacity::AirworthinessReviewStaff, "2026-01-02"));
    }
    static void refused(Shop& shop, const std::string& entry, ReviewFault fault) {
        const auto problems = problemsOf(shop.record(), entry);
        QVERIFY(!problems.empty());
        for (const auto& each : problems)
            QVERIFY2(isSaid(each), qPrintable(words::line(each)));
        QCOMPARE(problems.front().fault, Fault(fault));
    }
private slots:
    void byIndependentStaffOnAPrivateBalloon() {
        Shop shop;
        reviewersCome(shop);
        shop.open(Visit::PartMlInspection, reviewToo).carriedOut().measured();
        shop.say(reviewIn(shop, byAda));
        QVERIFY(shop.sign(Shop::signing()));
    }
    void caseF9IndependentStaffReviewABalloonUnderAdd() {
        Shop shop(underAdd);
        reviewersCome(shop);
        shop.open(Visit::PartMlInspection, reviewToo).carriedOut().measured();
        refused(shop, reviewIn(shop, byAda), ReviewFault::MayNotReview);
        shop.say(reviewIn(shop, byOdo)); // the organisation may
    }
    void itsOwnLinesAreDoneFirst() {
        // ML.A.903(a), (b), read: the documents, and a survey of the balloon.
        Shop shop;
        reviewersCome(shop);
        shop.open(Visit::PartMlInspection, reviewToo).carriedOut({"papers.review-survey"}).measured();
        refused(shop, reviewIn(shop, byAda), ReviewFault::LineNotDone);
        shop.carriedOut();
        shop.say(reviewIn(shop, byAda));
    }
    void theVisitHasLinesForIt() {
        Shop shop;
        reviewersCome(shop);
        shop.ready(Visit::PartMlInspection);
        refused(shop, reviewIn(shop, byAda), ReviewFault::NoLineForReview);
    }
    void noOtherVisitServes() {
        Shop shop;
        reviewersCome(shop);
        shop.open(Visit::PartMlSpecial).carriedOut().measured();
        refused(shop, reviewIn(shop, byAda), ReviewFault::MayNotReview);
    }
    void notAfterItIsClosedNorByAnother() {
        Shop shop;
        reviewersCome(shop);
        shop.open(Visit::PartMlInspection, reviewToo).carriedOut().measured();
        QVERIFY(shop.sign(Shop::signing())); // by Ada Rhos, in her own name, on 2026-06-02
        refused(shop, reviewIn(shop, byOdo, "2026-06-02"), ReviewFault::MayNotReview);
        refused(shop, reviewIn(shop, byAda, "2026-06-03"), ReviewFault::MayNotReview);
        shop.say(reviewIn(shop, byAda, "2026-06-02"));
    }
    void theStatementNamesTheAnnexOfTheOrganisation() {
        // ML.A.402(a), read: organisations work under an annex of their own; that the statement names it from memory.
        Shop shop;
        reviewersCome(shop);
        shop.wholeAircraft().ready(Visit::PartMlInspection);
        expectReleased(shop, Shop::signing("Odo Vale", Capacity::OrganisationCertifyingStaff));
        const auto closed = shop.now().closed->body;
        QCOMPARE(
            closed.statement,
            std::string("Certifies that the work specified except as otherwise specified was carried out in "
                        "accordance with Part-145 and in respect to that work the aircraft is considered ready for "
                        "release to service."));
        QCOMPARE(closed.licence, std::string("QE.66.5, Lakeside, QE.145.0031"));
    }
    void independentStaffReleaseNothingForHire() {
        // ML.A.201(e): its scope read; that maintenance is by an approved organisation from memory.
        Shop shop(underAdd);
        shop.ready(Visit::PartMlInspection);
        expectRefused(shop, Shop::signing(), "signatory", "ML.A.201(e)");
    }
};

CROWNRING_TEST(ReviewVisitTest, QCoreApplication)

#include "review_visit_test.moc"
