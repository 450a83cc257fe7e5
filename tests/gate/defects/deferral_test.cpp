// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/signing_attempt.h"
#include "problem/faults/release_fault.h"
#include "said.h"
#include "test_class.h"

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* pull =
    R"({"entry":"reading.taken","on":"2026-06-01","item":"E1","quantity":"grab-strength","unit":"N","value":98,"gore":3,"row":9,"direction":"warp"})";

std::string weakPanel(const EntryId& reading, const std::string& severity) {
    return R"({"entry":"defect.found","on":"2026-06-01","item":"E1","what":"weak","defect":"D-1","severity":")" +
           severity + R"(","reading":")" + reading.text() + R"("})";
}

std::string clearingOn(const std::string& day) {
    return R"({"entry":"defect.cleared","on":")" + day +
           R"(","by":"Ada Rhos","item":"E1","defect":"D-1","what":"a panel replaced"})";
}

}

/// Who may agree to put a defect off, and how long that helps, through the real record.
class DeferralTest : public QObject {
    Q_OBJECT
private slots:
    void aDeferralBySomebodyEntitled() {
        // ML.A.403(b) (from memory): certifying staff may agree; a pilot-owner unless under Subpart-ADD.
        for (const char* person : {"Ada Rhos", "Ole Berg"}) {
            Shop shop;
            shop.ready(Visit::PartMlInspection).find("D-1", "barring");
            shop.say(shop.deferral("D-1", person));
            expectReleased(shop, Shop::signing());
        }
    }
    void aDeferralThatHasEnded() {
        Shop shop;
        shop.ready(Visit::PartMlInspection).find("D-1", "barring");
        shop.say(shop.deferral("D-1", "Ada Rhos"));
        auto by = Shop::signing();
        by.on = day("2026-07-31");
        QCOMPARE(shop.refused(by), QStringList{});
        by.on = day("2026-08-01");
        expectRefused(shop, by, "defect", "ML.A.403(a)");
    }
    void aDeferralBySomebodyElse_data() {
        QTest::addColumn<QString>("person");
        QTest::addColumn<QString>("rule");
        QTest::newRow("who was entitled until the day before") << "Ida Gone"
                                                               << "ML.A.801(b)";
        QTest::newRow("who will be entitled only later") << "Tom Soon"
                                                         << "";
        QTest::newRow("a pilot-owner of another balloon") << "Uwe Away"
                                                          << "ML.A.801(b)";
        QTest::newRow("a pilot-owner under Subpart-ADD") << "Ole Berg"
                                                         << "ML.A.403(b)";
        QTest::newRow("a private pilot, what bars flight") << "Pia Lund"
                                                           << "91.213(d)";
    }
    void aDeferralBySomebodyElse() {
        QFETCH(QString, person);
        QFETCH(QString, rule);
        Shop shop(R"(["for-hire"])");
        shop.say(R"({"entry":"balloon.entered","on":"2016-05-01","balloon":"QE-TWO"}
{"entry":"person.entitled","on":"2020-01-01","person":"Ida Gone","capacity":"independent-certifying-staff","licence":"QE.66.8","until":"2026-05-31"}
{"entry":"person.entitled","on":"2020-01-01","person":"Uwe Away","capacity":"independent-certifying-staff","licence":"QE.66.9","balloons":["QE-TWO"]})");
        shop.ready(person == "Pia Lund" ? Visit::UsAnnual : Visit::PartMlInspection).find("D-1", "barring");
        const auto before = shop.entries();
        const auto problems = problemsOf(shop.record(), shop.deferral("D-1", person.toUtf8().constData()));
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().code(), Code::NotReleasable);
        QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
        QVERIFY2(spokenMend(problems.front()).find(rule.toStdString()) != std::string::npos,
                 qPrintable(words::line(problems.front())));
        QCOMPARE(shop.entries(), before);
        QVERIFY(shop.refused(Shop::signing()).contains("defect"));
    }
    /// It is neither equipment nor another defect of ML.A.403(b) (AMC and GM read; paragraph from memory).
    void whatAReadingBeyondTheLimitFoundIsDeferredByNobody() {
        for (const char* severity : {"barring", "minor", "deferrable"})
            for (const char* person : {"Ada Rhos", "Ole Berg"}) {
                Shop shop;
                shop.ready(Visit::PartMlInspection);
                shop.say(weakPanel(shop.say(pull).ids.at(0), severity));
                const auto problems = problemsOf(shop.record(), shop.deferral("D-1", person));
                QCOMPARE(problems.size(), std::size_t{1});
                QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
                QVERIFY(spokenMessage(problems.front()).find("nobody defers") != std::string::npos);
            }
    }
    void aDangerToFlightIsDeferredByNobody() {
        // ML.A.403(a) (from memory): put right before further flight.
        Shop shop;
        shop.ready(Visit::PartMlInspection).find("D-1", "grounding");
        const auto problems = problemsOf(shop.record(), shop.deferral("D-1", "Ada Rhos"));
        QCOMPARE(problems.size(), std::size_t{1});
        QVERIFY(spokenMessage(problems.front()).find("danger to flight") != std::string::npos);
        expectRefused(shop, Shop::signing(), "defect", "ML.A.403(a)");
    }
    void aPilotDefersEquipmentThatIsNotRequired() {
        Shop shop(R"(["for-hire"])");
        shop.ready(Visit::PartMlInspection).find("D-1", "deferrable");
        auto deferral = shop.deferral("D-1", "Ole Berg");
        QCOMPARE(problemsOf(shop.record(), deferral).size(), std::size_t{1});
        deferral.insert(deferral.size() - 1, R"(,"not_required":true)");
        shop.say(deferral);
        // ML.A.201(e): a balloon for hire is released by an approved organisation.
        shop.say(
            R"({"entry":"person.entitled","on":"2020-01-01","person":"Odo Vale","capacity":"organisation-certifying-staff","licence":"QE.66.7","organisation":"Lakeside","approval":"QE.145.0031"})");
        expectReleased(shop, Shop::signing("Odo Vale", Capacity::OrganisationCertifyingStaff));
    }
    void aFindingIsNotCorrectedToComeAfterItsClearing() {
        Shop shop;
        const auto finding = shop.ready(Visit::PartMlInspection).find("D-1", "barring").ids.at(0).text();
        shop.say(clearingOn("2026-06-01"));
        const auto problems = problemsOf(shop.record(), R"({"entry":"entry.corrected","on":"2026-06-01","replaces":")" +
                                                            finding + R"(","with":{"on":"2026-06-02"}})");
        QCOMPARE(problems.size(), std::size_t{2}); // nor by nobody, without a reason
        QVERIFY(std::ranges::any_of(problems, [](const Problem& problem) {
            return spokenMessage(problem).find("rectified before") != std::string::npos;
        }));
    }
    void aClearingIsNotDatedBeforeItsFinding() {
        Shop shop;
        shop.ready(Visit::PartMlInspection).find("D-1", "barring");
        const auto problems = problemsOf(shop.record(), clearingOn("2026-05-31"));
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().where.key, std::string("on"));
        QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
        shop.say(clearingOn("2026-06-01"));
    }
    void aDefectIsAnsweredOnItsItem() {
        Shop shop;
        shop.ready(Visit::PartMlInspection).find("D-1", "barring");
        shop.say(R"({"entry":"item.entered","on":"2016-05-01","item":"B9","kind":"basket"})");
        const auto onTheBasket = [](std::string entry) { return entry.replace(entry.find("\"E1\""), 4, "\"B9\""); };
        for (const auto& answer :
             {onTheBasket(clearingOn("2026-06-01")), onTheBasket(shop.deferral("D-1", "Ada Rhos"))}) {
            const auto problems = problemsOf(shop.record(), answer);
            QVERIFY(!problems.empty());
            QVERIFY(problems.front().fault == Fault(ReleaseFault::FoundElsewhere));
            QCOMPARE(problems.front().where.key, std::string("item"));
        }
        const auto clearing = shop.say(clearingOn("2026-06-01")).ids.at(0).text();
        const auto corrected =
            problemsOf(shop.record(), R"({"entry":"entry.corrected","on":"2026-06-01","replaces":")" + clearing +
                                          R"(","with":{"item":"B9"}})");
        QVERIFY(!corrected.empty());
        QVERIFY(corrected.front().fault == Fault(ReleaseFault::FoundElsewhere));
    }
    void aDeferralIsNotCorrectedIntoAnothersName() {
        Shop shop(R"(["for-hire"])");
        shop.ready(Visit::PartMlInspection).find("D-1", "barring");
        const auto deferral = shop.say(shop.deferral("D-1", "Ada Rhos")).ids.at(0).text();
        const auto before = shop.entries();
        const auto problems = problemsOf(shop.record(), R"({"entry":"entry.corrected","on":"2026-06-01","replaces":")" +
                                                            deferral + R"(","with":{"agreed_by":"Ole Berg"}})");
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().code(), Code::NotReleasable);
        QCOMPARE(shop.entries(), before);
    }
};

CROWNRING_TEST(DeferralTest, QCoreApplication)
#include "deferral_test.moc"
