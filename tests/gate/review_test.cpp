// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/sign_review.h"
#include "review_yard.h"
#include "test_class.h"

#include <QtTest>

#include <algorithm>
#include <string>
#include <vector>

namespace review_test {

using namespace crownring;
using namespace crownring::testing;
using namespace crownring::testing::reviews;

using Faults = std::vector<ReviewFault>;

/// The airworthiness review as an act of its own, through the real record: ML.A.901, 903, 904 as in the register.
class ReviewTest : public QObject {
    Q_OBJECT
private slots:
    void aReviewAnticipatedBy90AndBy91Days_data() {
        // ML.A.903(d): 90 days, read in an authority's answer, the clause from memory.
        QTest::addColumn<QString>("on");
        QTest::addColumn<QString>("rule");
        QTest::newRow("90 days") << "2025-12-21"
                                 << "2027-03-21";
        QTest::newRow("91 days") << "2025-12-20"
                                 << "2026-12-20";
    }
    void aReviewAnticipatedBy90AndBy91Days() {
        QFETCH(QString, on);
        QFETCH(QString, rule);
        const auto day1 = on.toUtf8();
        const auto printed = rule.toUtf8();
        const auto other = printed == "2027-03-21" ? "2026-12-21" : "2027-03-21";
        // In whatever order the batches bring them, and in one batch behind each other.
        const auto paper = before("2025-03-21", "2026-03-21");
        Scratch one, two;
        posted(*one.record, yard());
        posted(*two.record, yard());
        posted(*one.record, paper);
        const auto problems = problemsOf(*one.record, signedBy(day1, other));
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().fault, Fault(ReviewFault::PrintedDiffers));
        QVERIFY(spokenMessage(problems.front()).find(other) != std::string::npos);
        QVERIFY(spokenMessage(problems.front()).find(printed.constData()) != std::string::npos);
        posted(*one.record, signedBy(day1, printed));
        posted(*two.record, signedBy(day1, printed) + "\n" + paper);
        for (auto* record : {one.record.get(), two.record.get()}) {
            QCOMPARE(dueOf(*record, "2026-01-10"), rule);
            QCOMPARE(dueOf(*record, "2025-10-01"), QStringLiteral("2026-03-21"));
            QVERIFY(record->verify().value().intact);
        }
    }
    void aFormMayPrintTheDayBefore() {
        // Practice (from memory): the day itself or the day before it, by the issuer's habit.
        Scratch scratch;
        posted(*scratch.record, yard());
        QCOMPARE(faultsOf(*scratch.record, signedBy("2025-12-20", "2026-12-18")), Faults{ReviewFault::PrintedDiffers});
        QCOMPARE(faultsOf(*scratch.record, signedBy("2025-12-20", "2026-12-21")), Faults{ReviewFault::PrintedDiffers});
        posted(*scratch.record, signedBy("2025-12-20", "2026-12-19"));
        QCOMPARE(dueOf(*scratch.record, "2026-01-10"), QStringLiteral("2026-12-19"));
    }
    void aPaperThatComesLaterMovesNoPrintedDate() {
        Scratch scratch;
        posted(*scratch.record, yard());
        posted(*scratch.record, signedBy("2025-12-22", "2026-12-22"));
        posted(*scratch.record, before("2025-03-21", "2026-03-21"));
        QCOMPARE(dueOf(*scratch.record, "2026-01-10"), QStringLiteral("2026-12-22"));
    }
    void anExtensionAnticipatedBy30AndBy31Days() {
        // EASA FAQ n.19050, read.
        for (const auto& [on, printed, other] : {std::tuple{"2026-02-19", "2027-03-21", "2027-02-19"},
                                                 std::tuple{"2026-02-18", "2027-02-18", "2027-03-21"}}) {
            Scratch scratch;
            posted(*scratch.record, yard() + "\n" + before("2025-03-21", "2026-03-21"));
            for (const char* item : {"E1", "B1", "R1", "C1"})
                posted(*scratch.record, statedOn("2026-01-20", item, "ml.inspection"));
            QCOMPARE(faultsOf(*scratch.record, signedBy(on, other, "extension")), Faults{ReviewFault::PrintedDiffers});
            posted(*scratch.record, signedBy(on, printed, "extension"));
            QCOMPARE(dueOf(*scratch.record, "2026-02-25"), QString::fromLatin1(printed));
        }
    }
    void aThirdExtensionInARowIsRefused() {
        // ML.A.901(c), read in a UK library: at most two in a row.
        Scratch scratch;
        posted(*scratch.record, yard() + "\n" + before("2022-03-21", "2023-03-21"));
        for (const char* on : {"2023-03-01", "2024-03-01"})
            posted(*scratch.record, extendedOn(on));
        QCOMPARE(faultsOf(*scratch.record, signedBy("2025-03-01", "2026-03-21", "extension")),
                 Faults{ReviewFault::ExtendedTooOften});
        posted(*scratch.record, signedBy("2025-03-01", "2026-03-21"));
    }
    void whatIsNotThereOrHasExpiredIsNotExtended() {
        Scratch scratch;
        posted(*scratch.record, yard());
        QCOMPARE(faultsOf(*scratch.record, signedBy("2025-03-01", "2026-03-01", "extension")),
                 Faults{ReviewFault::NothingToExtend});
        posted(*scratch.record, before("2024-02-20", "2025-02-20"));
        QCOMPARE(faultsOf(*scratch.record, signedBy("2025-03-01", "2026-03-01", "extension")),
                 Faults{ReviewFault::ExpiredBefore});
    }
    void whatStandsAgainstItIsPutRightFirst() {
        // ML.A.903(a)(3), (4), read: all maintenance due carried out, known defects put right or deferred.
        Scratch scratch;
        posted(*scratch.record, yard());
        posted(*scratch.record, tornWire);
        const auto review = signedBy("2025-06-01", "2026-06-01");
        QCOMPARE(faultsOf(*scratch.record, review), Faults{ReviewFault::StandsAgainst});
        posted(*scratch.record, wireReplaced);
        posted(*scratch.record, review);
        QCOMPARE(faultsOf(*scratch.record, signedBy("2026-03-25", "2027-06-01")), // nothing was inspected since
                 (Faults{ReviewFault::StandsAgainst, ReviewFault::StandsAgainst, ReviewFault::StandsAgainst,
                         ReviewFault::StandsAgainst}));
    }
    void whatItIsSignedUnder() {
        Scratch scratch;
        posted(*scratch.record, yard());
        const auto refused = [&](const std::string& by) {
            return faultsOf(*scratch.record, signedBy("2025-06-01", "2026-06-01", "review", by));
        };
        QCOMPARE(refused(under("Cai Mo", "airworthiness-review-staff", "ARS 4")),
                 Faults{ReviewFault::AuthorisationDiffers});
        QCOMPARE(refused(under("Ole Berg", "airworthiness-review-staff", "BPL 4")), Faults{ReviewFault::MayNotReview});
        QCOMPARE(refused(under("Ole Berg", "pilot-owner", "BPL 4")), Faults{ReviewFault::MayNotReview});
        QCOMPARE(refused(under("Nia Sol", "review-authorisation", "ARA 9")), Faults{ReviewFault::MayNotReview});
    }
    void onTheEnvelopeOfThatDay() {
        Scratch scratch;
        posted(*scratch.record, yard());
        auto onABasket = signedBy("2025-06-01", "2026-06-01");
        onABasket.replace(onABasket.find("E1"), 2, "B1");
        QVERIFY(std::ranges::count(faultsOf(*scratch.record, onABasket), ReviewFault::NotItsEnvelope) == 1);
        posted(*scratch.record, envelopeRemoved);
        QVERIFY(std::ranges::count(faultsOf(*scratch.record, signedBy("2025-06-01", "2026-06-01")),
                                   ReviewFault::NotItsEnvelope) == 1);
    }
    void aRecommendationAccomplishesNothing() {
        Scratch scratch;
        posted(*scratch.record, yard());
        auto recommendation = signedBy("2025-06-01", "2026-06-01", "recommendation");
        QCOMPARE(problemsOf(*scratch.record, recommendation).size(), std::size_t{1}); // it does not expire
        recommendation.erase(recommendation.find(printedExpiry), printedExpiry.size());
        posted(*scratch.record, recommendation);
        QCOMPARE(dueOf(*scratch.record, "2025-06-02"), QString());
        QCOMPARE(signedReviews(*scratch.record, {}, day("2025-06-02")).value().size(), std::size_t{1});
        QCOMPARE(scratch.record->history(Registration("QE-ONE"), {}, day("2025-06-02"), 5).value().front().entry.on,
                 day("2025-06-01"));
    }
    void aReviewIsToldOnceInAHistory() {
        Scratch scratch;
        posted(*scratch.record, yard());
        const auto id = posted(*scratch.record, signedBy("2025-06-01", "2026-06-01")).ids.front();
        const auto lines = scratch.record->history(Registration("QE-ONE"), {}, day("2025-07-01"), 20).value();
        QCOMPARE(std::ranges::count(lines, id, [](const JournalLine& each) { return each.entry.id; }), 1);
    }
    void whatWasPrintedIsNotCorrected() {
        Scratch scratch;
        posted(*scratch.record, yard());
        const auto id = posted(*scratch.record, signedBy("2025-06-01", "2026-06-01")).ids.front().text();
        QCOMPARE(faultsOf(*scratch.record, corrected(id, laterExpiry)), Faults{ReviewFault::CertificateIsFixed});
        QCOMPARE(faultsOf(*scratch.record, corrected(id, laterDay)), Faults{ReviewFault::CertificateIsFixed});
        posted(*scratch.record, corrected(id, furtherFinding));
        QCOMPARE(faultsOf(*scratch.record, taken(id, {})), Faults{ReviewFault::VoidUnsaid});
        posted(*scratch.record, taken(id, byCai));
        QCOMPARE(dueOf(*scratch.record, "2025-06-04"), QString());
    }
    void aPaperIsHistoryAndAWordIsNot() {
        Scratch scratch;
        posted(*scratch.record, yard());
        // What a record of old says stays what it is: only stated.
        posted(*scratch.record, statedOn("2025-02-01"));
        posted(*scratch.record, signedBy("2025-06-01", "2026-06-01"));
        QCOMPARE(faultsOf(*scratch.record, statedOn("2025-12-01")), Faults{ReviewFault::StatedByNobody});
        posted(*scratch.record, before("2025-12-01", "2026-06-01"));
    }
    void aPaperPrintsNoMoreThanARuleCanGive() {
        Scratch scratch;
        posted(*scratch.record, yard());
        QCOMPARE(faultsOf(*scratch.record, before("2025-03-21", "2026-06-20")), Faults{ReviewFault::ExpiresTooLate});
        posted(*scratch.record, before("2025-03-21", "2026-06-19")); // kept from a certificate before: 90 days
        auto other = before("2025-03-21", "2026-03-21");
        other.replace(other.find("ml.arc-review"), 13, "ml.inspection");
        QCOMPARE(faultsOf(*scratch.record, other), Faults{ReviewFault::ExpiresOfNoCertificate});
    }
    void whereNoProgrammeAsksNothingIsHeldAgainstARule() {
        Scratch scratch;
        auto without = yard();
        without.erase(without.find(adoption), adoption.size() + 1);
        posted(*scratch.record, without);
        QCOMPARE(faultsOf(*scratch.record, signedBy("2025-06-01", "2026-06-01")), Faults{ReviewFault::NoProgramme});
    }
    void theActComposesWhatTheRecordKnows() {
        Scratch scratch;
        posted(*scratch.record, yard() + "\n" + before("2024-07-01", "2025-07-01"));
        ReviewSigning signing;
        signing.balloon = Registration("QE-ONE");
        signing.form = "EASA Form 15c";
        signing.certificate = "ARC 2";
        signing.reviewer = PersonId("Cai Mo");
        signing.capacity = Capacity::AirworthinessReviewStaff;
        signing.on = day("2025-06-01");
        const auto draft = draftReview(*scratch.record, signing).value();
        QVERIFY(draft.refusals.empty());
        const auto& said = std::get<ReviewSigned>(draft.entry.body);
        QCOMPARE(said.item, ItemId("E1"));
        QCOMPARE(said.authorisation, std::string("ARS 3, Lakeside, QE.CAO.0031"));
        QCOMPARE(said.expires, std::optional(day("2026-07-01")));
        QVERIFY(signReview(*scratch.record, *scratch.record, signing));
        QCOMPARE(dueOf(*scratch.record, "2025-06-02"), QStringLiteral("2026-07-01"));
        signing.reviewer = PersonId("Ole Berg");
        const auto entries = scratch.record->verify().value().entries;
        QVERIFY(!signReview(*scratch.record, *scratch.record, signing));
        QCOMPARE(scratch.record->verify().value().entries, entries);
    }
};

CROWNRING_TEST(ReviewTest, QCoreApplication)

}

#include "review_test.moc"
