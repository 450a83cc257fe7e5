// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/returned.h"
#include "gate/review_yard.h"
#include "gate/trust/proven.h"
#include "problem/faults/bench_fault.h"
#include "problem/faults/trust_fault.h"
#include "test_class.h"

#include <nlohmann/json.hpp>

using namespace crownring;
using namespace crownring::testing;

namespace {

using TrustFaults = std::vector<TrustFault>;

TrustFaults trustFaultsOf(Record& record, const std::string& lines) {
    TrustFaults faults;
    for (const auto& each : problemsOf(record, lines)) {
        QTEST_ASSERT(isSaid(each));
        faults.push_back(std::get<TrustFault>(each.fault));
    }
    return faults;
}

/// The release of the visit in hand as the record composes it, with its seal, as another system would post it.
std::string sealedReleaseOf(const Shop& shop, const char* id = "r", const std::string& more = {}) {
    Entry entry;
    entry.id = EntryId(id);
    entry.on = Shop::signing().on;
    entry.body =
        composedClosing(shop.record(), shop.record(), shop.draft(Shop::signing()).file, Shop::signing()).value();
    auto text = canonicalText(entry);
    return canonicalText(entryFrom(text.insert(text.size() - 1, more)).value());
}
std::string lineWith(std::string line, const char* key, const nlohmann::json& value) {
    auto object = nlohmann::json::parse(line);
    object[key] = value;
    return object.dump();
}
/// With the proof of another line.
std::string withProofOf(const Shop& shop, const std::string& other) {
    return sealedReleaseOf(shop, "s", R"(,"proof":)" + nlohmann::json::parse(other)["proof"].dump());
}
std::string abandoningOf(const Shop& shop) {
    return R"({"entry":"inspection.closed","id":"x","on":"2026-06-02","by":"Ada Rhos","outcome":"abandoned")" +
           shop.about() + "}";
}
std::string correctionByKit(const std::string& of, const std::string& changes) {
    return R"({"entry":"entry.corrected","on":"2026-06-12","by":"Kit Moor","note":"found out","replaces":")" + of +
           R"(","with":)" + changes + "}";
}
const std::string withoutProof = R"({"proof":null})";
const std::string asKitWithoutProof = R"({"signatory":"Kit Moor","proof":null})";
const std::string otherLicence = R"({"licence":"QE.66.9"})";
const std::string otherLimitations = R"({"limitations":"none"})";
const std::string otherManuals = R"({"manuals":["Manual 78"]})";
const std::string otherNote = R"({"note":"seen twice"})";
const std::string byKit = R"({"by":"Kit Moor"})";
const std::string bentGauge = R"({"reason":"the gauge was bent"})";
const std::string cai =
    R"(,"id":"v","reviewer":"Cai Mo","capacity":"airworthiness-review-staff","authorisation":"ARS 3, Lakeside, QE.CAO.0031")";
std::string signedWithdrawal(const Shop& shop, const std::string& by) {
    return R"({"entry":"release.revoked","id":"w","on":"2026-06-10","reason":"the gauge was broken","by":")" + by +
           R"(")" + shop.about() + "}";
}

}

/// Who has a code of his own signs with it, whoever posts the signature and however.
class ProofsTest : public QObject {
    Q_OBJECT
private slots:
    void whoHasNoneSignsAsBefore() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        shop.say(codeOf("Kit Moor", 'k'));
        QVERIFY(trustFaultsOf(shop.record(), sealedReleaseOf(shop)).empty());
    }
    void whoHasOneProvesIt() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        shop.say(codeOf("Ada Rhos", 'a'));
        shop.say(codeOf("Kit Moor", 'k'));
        const auto release = sealedReleaseOf(shop);
        const auto entries = shop.entries();
        QCOMPARE(trustFaultsOf(shop.record(), release), TrustFaults{TrustFault::ProofMissing});
        QCOMPARE(trustFaultsOf(shop.record(), proven(release, 'x')), TrustFaults{TrustFault::ProofByAnotherKey});
        QCOMPARE(trustFaultsOf(shop.record(), proven(release, 'k')), TrustFaults{TrustFault::ProofByAnotherKey});
        for (const auto other :
             {Purpose::Incomplete, Purpose::Return, Purpose::Review, Purpose::Revocation, Purpose::Code})
            QCOMPARE(trustFaultsOf(shop.record(), proven(release, 'a', other)), TrustFaults{TrustFault::ProofFails});
        auto claimed = nlohmann::json::parse(proven(release, 'x'));
        claimed["proof"]["key"] = keyNamed('a').publicKey();
        QCOMPARE(trustFaultsOf(shop.record(), claimed.dump()), TrustFaults{TrustFault::ProofFails});
        QCOMPARE(shop.entries(), entries);
        QVERIFY(trustFaultsOf(shop.record(), proven(release, 'a')).empty());
        QVERIFY(shop.record().verify().value().intact);
    }
    void whatIsProvenIsThisTextWordForWord() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        shop.say(codeOf("Ada Rhos", 'a'));
        const auto release = proven(sealedReleaseOf(shop), 'a');
        QCOMPARE(trustFaultsOf(shop.record(), lineWith(release, "note", "and more")),
                 TrustFaults{TrustFault::ProofFails});
        QCOMPARE(trustFaultsOf(shop.record(), lineWith(release, "id", "another")), TrustFaults{TrustFault::ProofFails});
        QCOMPARE(trustFaultsOf(shop.record(), lineWith(release, "time", "19:00Z")),
                 TrustFaults{TrustFault::ProofFails});
        auto bare = nlohmann::json::parse(sealedReleaseOf(shop));
        bare.erase("seal"); // what it covers is proven, too
        QCOMPARE(trustFaultsOf(shop.record(), proven(bare.dump(), 'a')), TrustFaults{TrustFault::ProofWithoutSeal});
    }
    void aProofServesNoOtherInspection() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        shop.say(codeOf("Ada Rhos", 'a'));
        const auto first = proven(sealedReleaseOf(shop), 'a');
        shop.say(first);
        shop.ready(Visit::PartMlInspection);
        QCOMPARE(trustFaultsOf(shop.record(), withProofOf(shop, first)), TrustFaults{TrustFault::ProofFails});
    }
    /// The day on a paper is anybody's to write: whoever posts after the code needs it.
    void aPaperThatIsOlderThanTheCodeIsNoException() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        shop.say(codeOf("Ada Rhos", 'a', 0, {}, "2026-11-01"));
        QCOMPARE(trustFaultsOf(shop.record(), sealedReleaseOf(shop)), TrustFaults{TrustFault::ProofMissing});
    }
    void withinABatchTheOrderOfItsLinesCounts() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        const auto release = sealedReleaseOf(shop);
        const auto code = codeOf("Ada Rhos", 'a');
        QCOMPARE(trustFaultsOf(shop.record(), code + "\n" + release), TrustFaults{TrustFault::ProofMissing});
        QVERIFY(trustFaultsOf(shop.record(), code + "\n" + proven(release, 'a')).empty());
    }
    void anOldKeyServesNoMore() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        shop.say(codeOf("Ada Rhos", 'a'));
        const auto before = proven(sealedReleaseOf(shop), 'a');
        shop.say(codeOf("Ada Rhos", 'b', 'a', {}, "2026-05-01"));
        QCOMPARE(trustFaultsOf(shop.record(), before), TrustFaults{TrustFault::ProofByAnotherKey});
        QVERIFY(trustFaultsOf(shop.record(), proven(sealedReleaseOf(shop), 'b')).empty());
    }
    void aProofThatNobodyCanCheckIsNone() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        QCOMPARE(trustFaultsOf(shop.record(), proven(sealedReleaseOf(shop), 'a')),
                 TrustFaults{TrustFault::ProofOfNoCode});
        const auto abandoned = abandoningOf(shop);
        QCOMPARE(trustFaultsOf(shop.record(), proven(abandoned, 'a', Purpose::Closing)),
                 TrustFaults{TrustFault::ProofOfNothing});
        QVERIFY(trustFaultsOf(shop.record(), abandoned).empty());
    }
    void whoWithdrawsProvesItHoweverHeIsSpelled() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        shop.say(codeOf("Ada Rhos", 'a'));
        shop.say(proven(sealedReleaseOf(shop), 'a'));
        QCOMPARE(trustFaultsOf(shop.record(), signedWithdrawal(shop, "Ada Rhos")),
                 TrustFaults{TrustFault::ProofMissing});
        for (const char* by : {"ada rhos", "Ada  Rhos "})
            QCOMPARE(trustFaultsOf(shop.record(), signedWithdrawal(shop, by)),
                     (TrustFaults{TrustFault::LooksLikeAnother, TrustFault::ProofMissing}));
        QCOMPARE(trustFaultsOf(shop.record(), proven(signedWithdrawal(shop, "Ada Rhos"), 'a', Purpose::Closing)),
                 TrustFaults{TrustFault::ProofFails});
        QVERIFY(trustFaultsOf(shop.record(), proven(signedWithdrawal(shop, "Ada Rhos"), 'a')).empty());
    }
    void aCorrectionKeepsWhatWasProven() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        shop.say(codeOf("Ada Rhos", 'a'));
        shop.say(proven(sealedReleaseOf(shop), 'a'));
        const auto corrected = [&](const char* of, const std::string& changes) {
            return problemsOf(shop.record(), correctionByKit(of, changes));
        };
        for (const auto& changes : {withoutProof, asKitWithoutProof}) {
            const auto problems = corrected("r", changes);
            QVERIFY(!problems.empty());
            for (const auto& each : problems)
                QCOMPARE(each.fault, Fault(BenchFault::SignatureIsFixed));
        }
        // Nor what else of it the proof covers, whoever says why.
        for (const auto& changes : {otherLicence, otherLimitations, otherManuals, otherNote}) {
            const auto problems = corrected("r", changes);
            QCOMPARE(problems.size(), std::size_t{1});
            QCOMPARE(problems.front().fault, Fault(BenchFault::SignatureIsFixed));
        }
        shop.say(proven(signedWithdrawal(shop, "Ada Rhos"), 'a'));
        for (const auto& changes : {withoutProof, byKit})
            QCOMPARE(corrected("w", changes).at(0).fault, Fault(BenchFault::SignatureIsFixed));
        QVERIFY(corrected("w", bentGauge).empty());
        // And the proof is still of what was written first.
        const auto line = shop.record().line(EntryId("w")).value();
        QVERIFY(holds(*proofIn(line->entry), provenDigest(line->entry), Purpose::Revocation));
    }
    void anIncompleteReleaseIsSignedToo() {
        Shop shop;
        shop.open(Visit::PartMlInspection).carriedOut({"burner-function", "papers"}).measured();
        shop.say(codeOf("Ada Rhos", 'a'));
        auto by = Shop::signing();
        by.outcome = Outcome::Incomplete;
        by.limitations = "one check flight";
        Entry entry;
        entry.id = EntryId("i");
        entry.on = by.on;
        auto composed = composedIncomplete(shop.record(), shop.record(), shop.draft(by).file, by).value();
        if (composed.outstanding.empty())
            composed.outstanding.push_back({"x", {}, "x"});
        entry.body = composed;
        const auto line = canonicalText(entry);
        const auto hasFault = [&](const std::string& text, TrustFault fault) {
            return std::ranges::any_of(problemsOf(shop.record(), text),
                                       [&](const Problem& each) { return each.fault == Fault(fault); });
        };
        QVERIFY(hasFault(line, TrustFault::ProofMissing));
        QVERIFY(hasFault(proven(line, 'a', Purpose::Closing), TrustFault::ProofFails));
        QVERIFY(!hasFault(proven(line, 'a'), TrustFault::ProofFails));
    }
    void anApprovalAfterAListIsSignedToo() {
        ListedShop shop;
        shop.listed().cleared("D-1", "2026-06-03");
        shop.cleared("D-2", "2026-06-03");
        shop.say(codeOf("Ines Holt", 'i'));
        const auto refused = shop.approve(ListedShop::approving("2026-06-04"));
        QVERIFY(!refused);
        QCOMPARE(refused.error().front().fault, Fault(TrustFault::ProofMissing));
    }
    void aReviewIsSignedAndVoidedWithIt() {
        Scratch scratch;
        auto& record = *scratch.record;
        posted(record, reviews::yard());
        posted(record, reviews::before("2024-06-01", "2025-06-01"));
        posted(record, codeOf("Cai Mo", 'c'));
        const auto review = reviews::signedBy("2025-05-20", "2026-06-01", "review", cai);
        QCOMPARE(trustFaultsOf(record, review), TrustFaults{TrustFault::ProofMissing});
        QVERIFY(!problemsOf(record, proven(review, 'c')).empty()); // its statement is not in it
        std::vector<NumberedEntry> whole{{entryFrom(review).value(), 1}};
        QVERIFY(complete(whole, record, "test.jsonl").has_value());
        posted(record, proven(canonicalText(whole.front().entry), 'c'));
        const auto taken = lineWith(reviews::taken("v", reviews::byCai), "id", "t");
        QCOMPARE(trustFaultsOf(record, taken), TrustFaults{TrustFault::ProofMissing});
        QVERIFY(trustFaultsOf(record, proven(taken, 'c', Purpose::Revocation)).empty());
    }
};

CROWNRING_TEST(ProofsTest, QCoreApplication)

#include "proofs_test.moc"
