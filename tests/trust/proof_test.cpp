// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/entry_json.h"
#include "test_class.h"
#include "trust/proof.h"
#include "trust/signatory_codes.h"

#include <QtTest>

#include <array>

namespace proof_test {

using namespace crownring;

namespace {

constexpr std::array everyPurpose{Purpose::Closing, Purpose::Incomplete, Purpose::Return,
                                  Purpose::Review,  Purpose::Revocation, Purpose::Code};

OwnKey keyOf(unsigned char which) {
    OwnKey::Seed seed{};
    seed.fill(which);
    return OwnKey(seed);
}

Entry entryOf(const char* text) { return entryFrom(std::string_view(text)).value(); }

const char* const approval =
    R"({"entry":"return.approved","id":"a","on":"2026-06-02","by":"Ines Holt","inspection":"V1","signatory":"Ines Holt","capacity":"inspection-authorization","statement":"words"})";

JournalLine codeLine(std::int64_t number, const char* on, const char* person, const std::string& by, char key,
                     bool proven) {
    JournalLine line;
    line.number = number;
    line.entry.id = EntryId("c" + std::to_string(number));
    line.entry.on = CivilDate::parse(on).value();
    line.entry.by = by;
    line.entry.body =
        SignatoryCode{PersonId(person),
                      std::string(32, '0'),
                      std::string(64, key),
                      proven ? std::optional(Proof{std::string(64, '0'), std::string(128, '0')}) : std::nullopt,
                      {}};
    return line;
}

}

/// What is proven is proven word for word, for one purpose, by one key.
class ProofTest : public QObject {
    Q_OBJECT
private slots:
    /// The message is made by the words of trust/proof.h alone, and signed with Python's cryptography 48: Ed25519 over
    /// b'crownring.proof.v1\0review\0' + 32 bytes 0xaa, with the seed of argon2id("Fährmann-7") of own_key_test.
    void theMessageIsAsDescribed() {
        const auto key = keyFrom("F\u00e4hrmann-7", "000102030405060708090a0b0c0d0e0f").value();
        Digest digest{};
        digest.fill(0xaa);
        QCOMPARE(prove(key, digest, Purpose::Review).signature,
                 std::string("6c0fdf15be81d2166a65f9ad1f61ef2866cd4d2f1ae2e9e0dac01a6e06fcaed6"
                             "26321a7dabb5a52eb7998d0f2dfb9c1dfe3a1b158846b8f67c12f98daa880902"));
    }
    void aProofServesOnePurpose() {
        const auto digest = provenDigest(entryOf(approval));
        for (const auto made : everyPurpose)
            for (const auto asked : everyPurpose)
                QCOMPARE(holds(prove(keyOf(1), digest, made), digest, asked), made == asked);
    }
    void aProofIsOfOneKey() {
        const auto digest = provenDigest(entryOf(approval));
        auto proof = prove(keyOf(1), digest, Purpose::Return);
        QVERIFY(holds(proof, digest, Purpose::Return));
        proof.key = keyOf(2).publicKey();
        QVERIFY(!holds(proof, digest, Purpose::Return));
    }
    void everyWordOfTheEntryIsProven() {
        auto entry = entryOf(approval);
        const auto proof = prove(keyOf(1), provenDigest(entry), Purpose::Return);
        putProof(entry, proof);
        QCOMPARE(proofIn(entry), std::optional(proof));
        QVERIFY(holds(proof, provenDigest(entry), Purpose::Return)); // the proof itself is not part of it
        for (
            const char* other : {
                R"({"entry":"return.approved","id":"b","on":"2026-06-02","by":"Ines Holt","inspection":"V1","signatory":"Ines Holt","capacity":"inspection-authorization","statement":"words"})",
                R"({"entry":"return.approved","id":"a","on":"2026-06-03","by":"Ines Holt","inspection":"V1","signatory":"Ines Holt","capacity":"inspection-authorization","statement":"words"})",
                R"({"entry":"return.approved","id":"a","on":"2026-06-02","by":"Ines Holt","inspection":"V2","signatory":"Ines Holt","capacity":"inspection-authorization","statement":"words"})",
                R"({"entry":"return.approved","id":"a","on":"2026-06-02","by":"Ines Holt","inspection":"V1","signatory":"Kit Moor","capacity":"inspection-authorization","statement":"words"})",
                R"({"entry":"return.approved","id":"a","on":"2026-06-02","by":"Ines Holt","inspection":"V1","signatory":"Ines Holt","capacity":"mechanic","statement":"words"})",
                R"({"entry":"return.approved","id":"a","on":"2026-06-02","by":"Ines Holt","inspection":"V1","signatory":"Ines Holt","capacity":"inspection-authorization","statement":"Words"})",
            })
            QVERIFY2(!holds(proof, provenDigest(entryOf(other)), Purpose::Return), other);
    }
    void nobodySignsWhatIsAbandoned() {
        const auto closed = entryOf(
            R"({"entry":"inspection.closed","on":"2026-06-02","inspection":"V1","outcome":"abandoned","signatory":"Ada Rhos"})");
        QVERIFY(!signedFor(closed));
        QCOMPARE(signedFor(entryOf(approval))->person, PersonId("Ines Holt"));
        QVERIFY(signedFor(entryOf(approval))->purpose == Purpose::Return);
    }

    /// Whoever sets a code is bound by it from when the record has it, whatever day he wrote.
    void theOrderOfTheRecordDecidesWhichCodeIsInForce() {
        const std::vector told{codeLine(7, "2026-01-01", "Ada Rhos", "Ada Rhos", 'b', true),
                               codeLine(3, "2026-05-01", "Ada Rhos", "Ada Rhos", 'a', false)};
        const auto codes = codesFrom(told);
        QVERIFY(!inForce(codes, "Ada Rhos", 3));
        QCOMPARE(inForce(codes, "Ada Rhos", 7)->said.key, std::string(64, 'a'));
        QCOMPARE(inForce(codes, "Ada Rhos")->said.key, std::string(64, 'b'));
        QVERIFY(!inForce(codes, "Kit Moor"));
    }
    void nobodyGetsRoundACodeByAnotherSpelling() {
        const auto codes = codesFrom(std::vector{codeLine(3, "2026-05-01", "Ada Rhos", "Ada Rhos", 'a', false)});
        for (const char* name : {"ada rhos", "Ada  Rhos", " Ada Rhos ", "Ada-Rhos", "ADA RHOS"})
            QVERIFY2(inForce(codes, name), name);
    }
    void whatAnotherSetIsAskedAboutUntilItIsReplaced() {
        std::vector told{codeLine(1, "2026-05-01", "Ada Rhos", "Ada Rhos", 'a', false),
                         codeLine(2, "2026-05-02", "Ada Rhos", "Kit Moor", 'b', true)};
        QCOMPARE(setByOthers(codesFrom(told)).size(), std::size_t{1});
        told.push_back(codeLine(3, "2026-05-03", "Ada Rhos", "Kit Moor", 'c', true));
        QCOMPARE(setByOthers(codesFrom(told)).size(), std::size_t{2});
        told.push_back(codeLine(4, "2026-05-04", "Ada Rhos", "ada rhos", 'd', true));
        QVERIFY(setByOthers(codesFrom(told)).empty());
    }
};

CROWNRING_TEST(ProofTest)

}

#include "proof_test.moc"
