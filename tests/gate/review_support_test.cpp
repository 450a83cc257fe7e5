// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/review/supported_reviews.h"
#include "review_yard.h"
#include "test_class.h"

#include <QtTest>

namespace review_support_test {

using namespace crownring;
using namespace crownring::testing;
using namespace crownring::testing::reviews;

namespace {

/// How many reviews of the balloon lost their ground, and how many rows say so.
std::pair<std::size_t, int> lostOn(Record& record, const char* on) {
    auto list = due(record, {Registration("QE-ONE"), {}}, day(on)).value();
    const auto lost = markUnsupportedReviews(record, list.rows, day(on)).value();
    int marked = 0;
    for (const auto& row : list.rows)
        marked += row.state.unsupported ? 1 : 0;
    return {lost.size(), marked};
}
using Lost = std::pair<std::size_t, int>;

const std::string notAuthorised =
    R"({"entry":"entry.voided","on":"2025-07-01","by":"Office","reason":"never held","voids":"cai"})";
const std::string cai =
    R"({"entry":"person.entitled","id":"cai","on":"2024-06-01","person":"Cai Ro","capacity":"airworthiness-review-staff","licence":"ARS 5","organisation":"Lakeside","approval":"QE.CAO.0031"})";
const std::string byCaiRo =
    R"(,"reviewer":"Cai Ro","capacity":"airworthiness-review-staff","authorisation":"ARS 5, Lakeside, QE.CAO.0031")";
const std::string renamed =
    R"({"entry":"balloon.entered","on":"2025-06-10","balloon":"QE-NEW"}
{"entry":"balloon.renamed","on":"2025-06-10","balloon":"QE-ONE","to":"QE-NEW"})";

}

/// What the record would refuse by now (ML.A.901, 903, 904 as the gate asks them) shows where the review counts.
class ReviewSupportTest : public QObject {
    Q_OBJECT
private slots:
    void anAuthorisationThatWasNeverHeld() {
        Scratch scratch;
        auto& record = *scratch.record;
        posted(record, yard());
        posted(record, cai);
        posted(record, signedBy("2025-06-01", "2026-06-01", "review", byCaiRo));
        QCOMPARE(lostOn(record, "2025-07-02"), Lost(0, 0));
        posted(record, notAuthorised);
        const auto [lost, marked] = lostOn(record, "2025-07-02");
        QCOMPARE(lost, std::size_t{1});
        QVERIFY(marked > 0);
        QCOMPARE(dueOf(record, "2025-07-02"), QStringLiteral("2026-06-01")); // it counts until it is voided
    }
    void aDefectThatWasThereAlready() {
        Scratch scratch;
        auto& record = *scratch.record;
        posted(record, yard());
        posted(record, signedBy("2025-06-01", "2026-06-01"));
        QCOMPARE(lostOn(record, "2025-07-02").first, std::size_t{0});
        posted(record, tornWire); // of 2025-05-01, written down after
        QCOMPARE(lostOn(record, "2025-07-02").first, std::size_t{1});
    }
    void underAnotherRegistrationItIsTheSameReview() {
        Scratch scratch;
        auto& record = *scratch.record;
        posted(record, yard());
        posted(record, signedBy("2025-06-01", "2026-06-01"));
        posted(record, renamed);
        posted(record, tornWire);
        auto list = due(record, {Registration("QE-NEW"), {}}, day("2025-07-02")).value();
        QCOMPARE(markUnsupportedReviews(record, list.rows, day("2025-07-02")).value().size(), std::size_t{1});
    }
};

CROWNRING_TEST(ReviewSupportTest, QCoreApplication)

}

#include "review_support_test.moc"
