// SPDX-License-Identifier: GPL-3.0-or-later

/// What papers say of an airworthiness review, and of a defect that was graded down.

#include "answers/review/reviews.h"
#include "gate/defects/graded.h"
#include "gate/review_yard.h"
#include "gate/signing_attempt.h"
#include "paper/document_text.h"
#include "sheets/review_paper.h"
#include "sheets/sheets.h"
#include "test_class.h"

#include <nlohmann/json.hpp>

namespace review_paper_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

QString textOf(const paper::Document& document) {
    return QString::fromStdString(paper::toText(document, english, 2000));
}

}

class ReviewPaperTest : public QObject {
    Q_OBJECT
private slots:
    void itSaysWhatWasSignedAndThatItIsNoCertificate() {
        Scratch scratch;
        posted(*scratch.record, reviews::yard());
        posted(*scratch.record, reviews::signedBy("2025-06-01", "2026-06-01"));
        const auto review = signedReviews(*scratch.record, Registration("QE-ONE"), day("2025-07-01")).value().at(0);
        const auto text = textOf(reviewPaper(review, {}, english));
        QCOMPARE(reviewPaper(review, {}, english).recordId, std::string("ARC 2")); // as it is filed
        for (const char* words : {"QE-ONE", "E1", "EASA Form 15c", "ARC 2", "Cai Mo", "ARS 3, Lakeside, QE.CAO.0031",
                                  "airworthiness review staff of an approved organisation",
                                  "The certificate itself is the form (EASA Form 15c) that was issued."})
            QVERIFY2(text.contains(QString::fromLatin1(words)), qPrintable(text));
        for (const auto date : {"2025-06-01", "2026-06-01"})
            QVERIFY2(text.contains(words::said(Argument(day(date)))), qPrintable(text));
        QVERIFY(!text.contains("would refuse"));
        const auto json = reviewJson(review);
        QCOMPARE(json.at("expires"), nlohmann::ordered_json("2026-06-01"));
        QCOMPARE(json.at("act"), nlohmann::ordered_json("review"));
    }
    void itSaysWhatTheRecordWouldRefuseItForByNow() {
        Scratch scratch;
        posted(*scratch.record, reviews::yard());
        posted(*scratch.record, reviews::signedBy("2025-06-01", "2026-06-01"));
        posted(*scratch.record, reviews::tornWire); // comes late
        const auto review = signedReviews(*scratch.record, Registration("QE-ONE"), day("2025-07-01")).value().at(0);
        const auto file = reviewFile(*scratch.record, review).value();
        const auto text = textOf(reviewPaper(review, refusals(file, std::get<ReviewSigned>(review.body)), english));
        QVERIFY2(text.contains("would refuse this: Defect: a broken wire"), qPrintable(text));
    }
    void aDefectThatWasGradedDownSaysByWhomAndWhy() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        const auto id = shop.find("D-1", "deferrable").ids.front();
        auto entry = gradings::graded(id, "minor", "Ada Rhos");
        entry.replace(entry.find("2026-05-21"), 10, "2026-06-01");
        entry.replace(entry.find(gradings::with), gradings::with.size(), gradings::withReason);
        shop.say(entry);
        expectReleased(shop, Shop::signing());
        const auto file = benchFile(shop.record(), shop.inspection, day("2026-06-03")).value();
        for (const auto& paper :
             {inspectionReport(file, english), releasePaper(file, english), discrepancyList(file, english)})
            QVERIFY2(textOf(paper).contains("graded down by Ada Rhos: below the limit of the manual"),
                     qPrintable(textOf(paper)));
    }
    void aDefectThatWasVoidedStandsOnThePapersAsVoided() {
        // ML.A.403(b), 14 CFR 43.11(b); that who takes one out stands on the paper: common practice, no source.
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        const auto id = shop.find("D-1", "deferrable").ids.front();
        const auto other = shop.find("D-2", "minor").ids.front();
        shop.say(gradings::voidedOn("2026-06-01", id, "it was another envelope", "Ada Rhos"));
        shop.say(gradings::voidedOn("2026-06-01", other, "undone"));
        expectReleased(shop, Shop::signing());
        const auto file = [&] { return benchFile(shop.record(), shop.inspection, day("2026-06-03")).value(); };
        for (const auto& paper :
             {inspectionReport(file(), english), releasePaper(file(), english), discrepancyList(file(), english)}) {
            QVERIFY2(textOf(paper).contains("a torn panel") &&
                         textOf(paper).contains("voided by Ada Rhos, 2026-06-01: it was another envelope"),
                     qPrintable(textOf(paper)));
        }
        const auto defects = inspectionJson(file(), english).at("defects");
        QCOMPARE(defects.size(), std::size_t{1}); // who found the other took it back at once
        QVERIFY(defects.at(0).at("voided").get<bool>() && !defects.at(0).at("open").get<bool>());
        // The void is voided in turn: it stands again.
        const auto taken = file().takenOut.front().taken.id;
        shop.say(gradings::voidedOn("2026-06-04", taken, "it was this one", "Ada Rhos"));
        QVERIFY(file().takenOut.empty());
    }
};

CROWNRING_TEST(ReviewPaperTest, QCoreApplication)

}

#include "review_paper_test.moc"
