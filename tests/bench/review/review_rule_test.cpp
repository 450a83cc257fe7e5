// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/review/review_rule.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>

#include <string>
#include <vector>

namespace review_rule_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

CivilDate day(const char* text) { return *CivilDate::parse(text); }

Entitlement held(Capacity capacity, const char* approval = "", const char* from = "2025-01-01") {
    Entitlement entitlement;
    entitlement.person = PersonId("ada");
    entitlement.capacity = capacity;
    entitlement.licence = "A-1";
    entitlement.from = day(from);
    entitlement.approval = approval;
    entitlement.organisation = *approval == '\0' ? "" : "Lakeside";
    return entitlement;
}

ReviewVisit annual() {
    ReviewVisit visit;
    visit.inspection = InspectionId("V-1");
    visit.isPeriodic = true;
    visit.opened = day("2025-05-28");
    return visit;
}

Reviewing reviewing(Capacity capacity, ReviewAct act = ReviewAct::Review, std::optional<ReviewVisit> visit = {}) {
    Reviewing reviewing;
    reviewing.person = PersonId("ada");
    reviewing.capacity = capacity;
    reviewing.act = act;
    reviewing.balloon = Registration("QE-ABC");
    reviewing.on = day("2025-06-01");
    reviewing.visit = std::move(visit);
    return reviewing;
}

std::string ruleOf(const std::vector<Entitlement>& entitlements, const Reviewing& reviewing) {
    const auto barred = mayReview(entitlements, reviewing);
    return barred ? barred->rule : "";
}

/// The authorisation and the licence that it stands beside.
std::vector<Entitlement> independent(const char* from = "2025-01-01") {
    return {held(Capacity::ReviewAuthorisation, "", from),
            held(Capacity::IndependentCertifyingStaff, "", "2015-01-01")};
}

}

/// Who may review (ML.A.901(b), read; ML.A.901(c), read in a UK library; ML.A.904(c), (d), read in the UK's copy).
class ReviewRuleTest : public QObject {
    Q_OBJECT
private slots:
    void whoMayReview_data() {
        QTest::addColumn<int>("capacity");
        QTest::addColumn<QString>("approval");
        QTest::addColumn<int>("act");
        QTest::addColumn<bool>("inAVisit");
        QTest::addColumn<QString>("operation");
        QTest::addColumn<QString>("rule"); ///< empty: may
        const auto row = [](const char* name, Capacity capacity, const char* approval, ReviewAct act, bool inAVisit,
                            const char* operation, const char* rule) {
            QTest::newRow(name) << static_cast<int>(capacity) << approval << static_cast<int>(act) << inAVisit
                                << operation << rule;
        };
        using enum Capacity;
        using enum ReviewAct;
        row("the authority", Authority, "", Review, false, "", "");
        row("the authority, for hire", Authority, "", Review, false, "for-hire", "");
        row("the authority extends", Authority, "", Extension, false, "", "ML.A.901(c)");
        row("the authority recommends", Authority, "", Recommendation, false, "", "");
        for (const auto* approval : {"QE.CAO.0031", "QE.CAMO.0031", "QE.MG.0031"})
            for (const auto* operation : {"", "for-hire", "instruction"}) {
                const auto name = std::string(approval) + " " + operation;
                row(("review " + name).c_str(), AirworthinessReviewStaff, approval, Review, false, operation, "");
                row(("extension " + name).c_str(), AirworthinessReviewStaff, approval, Extension, false, operation, "");
            }
        for (const auto* approval : {"QE.145.0031", "QE.MF.0031"}) {
            const std::string name(approval);
            row(("annual " + name).c_str(), AirworthinessReviewStaff, approval, Review, true, "", "");
            row(("annual for hire " + name).c_str(), AirworthinessReviewStaff, approval, Review, true, "for-hire", "");
            row(("no annual " + name).c_str(), AirworthinessReviewStaff, approval, Review, false, "",
                "ML.A.901(b)(3), (4)");
            row(("extends " + name).c_str(), AirworthinessReviewStaff, approval, Extension, true, "", "ML.A.901(c)");
        }
        row("an approval of no annex", AirworthinessReviewStaff, "QE-31", Review, true, "", "ML.A.901(b)(2), (3)");
        row("no approval", AirworthinessReviewStaff, "", Review, true, "", "ML.A.901(b)(2), (3)");
        row("independent, annual", ReviewAuthorisation, "", Review, true, "", "");
        row("independent, annual, instruction", ReviewAuthorisation, "", Review, true, "instruction", "");
        row("independent, no annual", ReviewAuthorisation, "", Review, false, "", "ML.A.901(b)(3), (4)");
        row("F9", ReviewAuthorisation, "", Review, true, "for-hire", "ML.A.901(b)(4)");
        row("F9, as subpart-add", ReviewAuthorisation, "", Review, true, "subpart-add", "ML.A.901(b)(4)");
        row("independent extends", ReviewAuthorisation, "", Extension, true, "", "ML.A.901(c)");
        for (const auto capacity : {IndependentCertifyingStaff, OrganisationCertifyingStaff, PilotOwner, Mechanic,
                                    InspectionAuthorization, RepairStation, Manufacturer, PrivatePilot})
            row(std::string(capacityName(capacity)).c_str(), capacity, "QE.CAO.0031", Review, true, "", "ML.A.901(b)");
    }
    void whoMayReview() {
        QFETCH(int, capacity);
        QFETCH(QString, approval);
        QFETCH(int, act);
        QFETCH(bool, inAVisit);
        QFETCH(QString, operation);
        QFETCH(QString, rule);
        const auto as = static_cast<Capacity>(capacity);
        auto asked = reviewing(as, static_cast<ReviewAct>(act));
        if (inAVisit)
            asked.visit = annual();
        if (!operation.isEmpty())
            asked.operations = {operation.toStdString()};
        const std::vector entitlements{held(as, approval.toUtf8().constData()),
                                       held(Capacity::IndependentCertifyingStaff)};
        QCOMPARE(ruleOf(entitlements, asked), rule.toStdString());
        if (!rule.isEmpty())
            QVERIFY(!spoken(mayReview(entitlements, asked)->why).empty());
    }
    void theInspectionIsOneOfThatDay() {
        auto asked = reviewing(Capacity::ReviewAuthorisation, ReviewAct::Review, annual());
        QCOMPARE(ruleOf(independent(), asked), std::string());
        asked.visit->opened = day("2025-06-02");
        QCOMPARE(ruleOf(independent(), asked), std::string("ML.A.901(b)(3), (4)"));
        asked.visit = annual();
        asked.visit->closed = day("2025-05-31");
        QCOMPARE(ruleOf(independent(), asked), std::string("ML.A.901(b)(3), (4)"));
        asked.visit = annual();
        asked.visit->isPeriodic = false;
        QCOMPARE(ruleOf(independent(), asked), std::string("ML.A.901(b)(3), (4)"));
    }
    void theInspectionIsPerformedByWhoReviews() {
        auto asked = reviewing(Capacity::AirworthinessReviewStaff, ReviewAct::Review, annual());
        asked.visit->closed = day("2025-06-01");
        asked.visit->signatory = PersonId("odo");
        asked.visit->performedFor = "Lakeside";
        const std::vector staff{held(Capacity::AirworthinessReviewStaff, "QE.145.0031")};
        QCOMPARE(ruleOf(staff, asked), std::string());
        asked.visit->performedFor = "Hillside";
        QCOMPARE(ruleOf(staff, asked), std::string("ML.A.901(b)(3), (4)"));
        asked.capacity = Capacity::ReviewAuthorisation;
        asked.visit->performedFor.clear();
        QCOMPARE(ruleOf(independent(), asked), std::string("ML.A.901(b)(3), (4)"));
        asked.visit->signatory = PersonId("ada");
        QCOMPARE(ruleOf(independent(), asked), std::string());
    }
    void anAuthorisationStandsBesideALicence() {
        const auto asked = reviewing(Capacity::ReviewAuthorisation, ReviewAct::Review, annual());
        QCOMPARE(ruleOf({held(Capacity::ReviewAuthorisation)}, asked), std::string("ML.A.901(b)(4); ML.A.904(c)"));
    }
    void caseF10AnAuthorisationIsGoodForFiveYears() {
        auto asked = reviewing(Capacity::ReviewAuthorisation, ReviewAct::Review, annual());
        asked.reviewed = {day("2025-05-01")};
        QCOMPARE(ruleOf(independent("2020-06-01"), asked), std::string());
        QCOMPARE(ruleOf(independent("2020-05-31"), asked), std::string("ML.A.904(d)"));
        auto renewed = independent("2020-05-31"); // without limit
        renewed.push_back(held(Capacity::ReviewAuthorisation, "", "2025-05-01"));
        QCOMPARE(ruleOf(renewed, asked), std::string());
    }
    void caseF10NoReviewInTheLastTwelveMonths() {
        auto asked = reviewing(Capacity::ReviewAuthorisation, ReviewAct::Review, annual());
        auto entitlements = independent("2023-01-01");
        QCOMPARE(ruleOf(entitlements, asked), std::string("ML.A.904(d)"));
        asked.reviewed = {day("2024-05-31")};
        QCOMPARE(ruleOf(entitlements, asked), std::string("ML.A.904(d)"));
        asked.reviewed.push_back(day("2024-06-01"));
        QCOMPARE(ruleOf(entitlements, asked), std::string());
        asked.reviewed.clear();
        entitlements.front().lastReview = day("2024-06-01"); // before the record's own
        QCOMPARE(ruleOf(entitlements, asked), std::string());
    }
    void anApprovalSaysItsAnnex() {
        // From memory: the codes in the numbers of approvals.
        QCOMPARE(annexOf("QE.145.0031"), Annex::Part145);
        QCOMPARE(annexOf("QE.CAO.0007"), Annex::PartCao);
        QCOMPARE(annexOf("QE.CAMO.0007"), Annex::PartCamo);
        QCOMPARE(annexOf("QE.14500"), Annex::Unknown);
        QCOMPARE(annexOf(""), Annex::Unknown);
        QCOMPARE(annexName(Annex::Part145), std::string_view("Part-145"));
    }
    void whatAReviewIsSignedUnder() {
        const std::vector staff{held(Capacity::AirworthinessReviewStaff, "QE.CAO.0031")};
        QCOMPARE(authorisationOf(staff, PersonId("ada"), Capacity::AirworthinessReviewStaff, day("2025-06-01")),
                 std::string("A-1, Lakeside, QE.CAO.0031"));
        QVERIFY(authorisationOf(staff, PersonId("odo"), Capacity::AirworthinessReviewStaff, day("2025-06-01")).empty());
    }
};

CROWNRING_TEST(ReviewRuleTest)

}

#include "review_rule_test.moc"
