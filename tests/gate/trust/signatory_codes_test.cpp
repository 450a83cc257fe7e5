// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/shop.h"
#include "gate/trust/proven.h"
#include "problem/faults/trust_fault.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>

namespace signatory_codes_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::optional<TrustFault> faultOf(Shop& shop, const std::string& line) {
    const auto problems = problemsOf(shop.record(), line);
    if (problems.empty())
        return std::nullopt;
    QTEST_ASSERT(isSaid(problems.front()));
    return std::get<TrustFault>(problems.front().fault);
}
int asked(const Shop& shop) {
    const auto questions = shop.record().questions().value();
    return static_cast<int>(std::ranges::count(questions, Question::Kind::CodeByAnother, &Question::kind));
}
const std::string adaInSmall =
    R"({"entry":"person.entitled","on":"2026-01-01","person":"ada rhos","capacity":"mechanic","licence":"none"})";
const std::string voided = R"({"entry":"entry.voided","on":"2026-02-01","by":"Ada Rhos","reason":"lost","voids":"c1"})";
std::string corrected(const std::string& with) {
    return R"({"entry":"entry.corrected","on":"2026-02-01","by":"Ada Rhos","replaces":"c1","with":)" + with + "}";
}
const std::string otherNote = R"({"note":"x"})";
const std::string otherName = R"({"signatory":"Kit Moor"})";
std::string byAnother(char key, char provenBy, const char* by, const char* reason, const char* on = "2026-02-01") {
    return codeOf("Ada Rhos", key, provenBy, std::string("reset") + key, on, by, reason);
}

}

/// A code is replaced by who has it, or by another who has one of his own and says why.
class SignatoryCodesTest : public QObject {
    Q_OBJECT
private slots:
    void theFirstNeedsNoProof() {
        Shop shop;
        QCOMPARE(faultOf(shop, codeOf("Ada Rhos", 'a', 'a')), TrustFault::ProofOfNoCode);
        QCOMPARE(faultOf(shop, codeOf("Ada Rhos", 'a')), std::nullopt);
        QVERIFY(shop.record().verify().value().intact);
    }
    void theNextIsProvenByTheOneBeforeIt() {
        Shop shop;
        shop.say(codeOf("Ada Rhos", 'a'));
        QCOMPARE(faultOf(shop, codeOf("Ada Rhos", 'b', 0, {}, "2026-02-01")), TrustFault::CodeSetAlready);
        QCOMPARE(faultOf(shop, codeOf("Ada Rhos", 'b', 'b', {}, "2026-02-01")), TrustFault::ProofByAnotherKey);
        QCOMPARE(faultOf(shop, codeOf("Ada Rhos", 'b', 'a', {}, "2026-02-01")), std::nullopt);
        QCOMPARE(faultOf(shop, codeOf("Ada Rhos", 'c', 'a', {}, "2026-03-01")), TrustFault::ProofByAnotherKey);
        QCOMPARE(faultOf(shop, codeOf("Ada Rhos", 'c', 'b', {}, "2026-03-01")), std::nullopt);
        QCOMPARE(asked(shop), 0);
    }
    /// Else what is in force by the order of the record and what stands last in it would be two.
    void theNextIsDatedAfterIt() {
        Shop shop;
        shop.say(codeOf("Ada Rhos", 'a', 0, {}, "2026-02-01"));
        QCOMPARE(faultOf(shop, codeOf("Ada Rhos", 'b', 'a', {}, "2026-01-31")), TrustFault::CodeBeforeTheOther);
    }
    void aProofIsOfThisKeyAndSalt() {
        Shop shop;
        shop.say(codeOf("Ada Rhos", 'a'));
        auto entry = entryFrom(codeOf("Ada Rhos", 'b', 'a', {}, "2026-02-01")).value();
        auto& body = std::get<SignatoryCode>(entry.body);
        body.key = keyNamed('x').publicKey();
        QCOMPARE(faultOf(shop, canonicalText(entry)), TrustFault::ProofFails);
        body.key = keyNamed('b').publicKey();
        body.salt = std::string(32, 'b');
        QCOMPARE(faultOf(shop, canonicalText(entry)), TrustFault::ProofFails);
    }
    void nobodyTakesANameByAnotherSpelling() {
        Shop shop;
        shop.say(codeOf("Ada Rhos", 'a'));
        letIn(shop.record(), adaInSmall); // as an earlier program did
        QCOMPARE(faultOf(shop, codeOf("ada rhos", 'z', 0, {}, "2026-02-01")), TrustFault::LooksLikeAnother);
    }
    void whoForgotHisHasItSetByAnotherWhichIsAsked() {
        Shop shop;
        shop.say(codeOf("Ada Rhos", 'a'));
        QCOMPARE(faultOf(shop, byAnother('b', 'k', "Kit Moor", "forgotten")), TrustFault::SetterHasNoCode);
        shop.say(codeOf("Kit Moor", 'k'));
        QCOMPARE(faultOf(shop, byAnother('b', 'k', "Kit Moor", " ")), TrustFault::SetByAnotherUnsaid);
        QCOMPARE(faultOf(shop, byAnother('b', 'b', "Kit Moor", "forgotten")), TrustFault::ProofByAnotherKey);
        QCOMPARE(faultOf(shop, byAnother('b', 'k', "Kit Moor", "forgotten")), std::nullopt);
        QCOMPARE(asked(shop), 1);
        QVERIFY(shop.record().rebuild());
        QCOMPARE(asked(shop), 1);
        // Once it is her own again nothing is open.
        QCOMPARE(faultOf(shop, codeOf("Ada Rhos", 'c', 'b', {}, "2026-03-01", "Ada Rhos")), std::nullopt);
        QCOMPARE(asked(shop), 0);
    }
    void itIsNeitherCorrectedNorVoided() {
        Shop shop;
        shop.say(codeOf("Ada Rhos", 'a', 0, "c1"));
        QCOMPARE(faultOf(shop, voided), TrustFault::CodeIsFixed);
        for (const auto& with : {otherNote, otherName})
            QCOMPARE(faultOf(shop, corrected(with)), TrustFault::CodeIsFixed);
    }
    /// Points of small order, and what is no point: RFC 8032, 5.1.7; the list is that of libsodium's
    /// ge25519_has_small_order (from memory).
    void aKeyByWhichAnybodySignsIsNone() {
        for (const auto& key : {std::string(64, '0'), "01" + std::string(62, '0'), "ec" + std::string(60, 'f') + "7f",
                                "ed" + std::string(60, 'f') + "7f", std::string(64, 'f'),
                                std::string("26e8958fc2b227b045c3f489f2ef98f0d5dfac05d3c63339b13802886d53fc05"),
                                std::string("c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac037a")}) {
            Shop shop;
            auto entry = entryFrom(codeOf("Ada Rhos", 'a')).value();
            std::get<SignatoryCode>(entry.body).key = key;
            QCOMPARE(faultOf(shop, canonicalText(entry)), TrustFault::NotAKey);
        }
    }
    void onlyOfAPersonInTheRecord() {
        Shop shop;
        const auto problems = problemsOf(shop.record(), codeOf("Nobody Known", 'n'));
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().code(), Code::UnknownReference);
    }
};

CROWNRING_TEST(SignatoryCodesTest, QCoreApplication)

}

#include "signatory_codes_test.moc"
