// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/entry_fault.h"
#include "problem/faults/trust_fault.h"
#include "said.h"
#include "test_class.h"
#include "trust/own_key.h"

#include <QtTest>
#include <sodium.h>

namespace own_key_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

const std::string salt = "000102030405060708090a0b0c0d0e0f";

OwnKey::Seed seedFrom(const char* hex) {
    OwnKey::Seed seed{};
    sodium_hex2bin(seed.data(), seed.size(), hex, 2 * seed.size(), nullptr, nullptr, nullptr);
    return seed;
}

struct Vector {
    const char* seed;
    const char* publicKey;
    std::string message;
    const char* signature;
};

/// RFC 8032, section 7.1, tests 1 to 3; read in public copies, and computed again with Python's cryptography 48.
const std::vector<Vector> rfc8032 = {
    {"9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
     "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a", "",
     "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46b"
     "d25bf5f0595bbe24655141438e7a100b"},
    {"4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
     "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c", "\x72",
     "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c"
     "387b2eaeb4302aeeb00d291612bb0c00"},
    {"c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
     "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025", "\xaf\x82",
     "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc659"
     "4a7c15e9716ed28dc027beceea1ec40a"}};

}

/// A code that nobody writes down gives a key that anybody can check against.
class OwnKeyTest : public QObject {
    Q_OBJECT
private slots:
    void signaturesAreThoseOfTheStandard() {
        for (const auto& each : rfc8032) {
            const OwnKey key(seedFrom(each.seed));
            QCOMPARE(key.publicKey(), std::string(each.publicKey));
            QCOMPARE(key.sign(each.message), std::string(each.signature));
            QVERIFY(isSignedBy(each.publicKey, each.message, each.signature));
            QVERIFY(!isSignedBy(each.publicKey, each.message + "x", each.signature));
        }
        QVERIFY(!isSignedBy(rfc8032[0].publicKey, "", rfc8032[1].signature));
    }
    /// The library's Argon2id, with the limits that are used here, is the reference's: the vector "password",
    /// "somesalt", t=2, m=2^16, p=1 of its src/test.c (phc-winner-argon2), read in public copies. Its salt is too short
    /// for ours.
    void theLibrarysArgon2idIsTheReferences() {
        QCOMPARE(crypto_pwhash_argon2id_str_verify("$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ"
                                                   "$CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc",
                                                   "password", 8),
                 0);
    }
    /// Computed with the reference's own library (libargon2 20171227, argon2id_hash_raw, t=2, m=65536, p=1), and the
    /// key of that seed with Python's cryptography 48.
    void aCodeAndItsSaltGiveOneKey() {
        const auto key = keyFrom("F\u00e4hrmann-7", salt);
        QVERIFY(key);
        QCOMPARE(key->publicKey(), std::string("d67c4ed5c260264783d73632298c2845862329bbbf5044767a47a477847c0f46"));
    }
    void anotherCodeOrAnotherSaltGivesAnother() {
        const auto key = keyFrom("basket-wire", salt)->publicKey();
        QVERIFY(keyFrom("basket-wirf", salt)->publicKey() != key);
        QVERIFY(keyFrom("Basket-wire", salt)->publicKey() != key);
        QVERIFY(keyFrom("basket-wire ", salt)->publicKey() != key);
        QVERIFY(keyFrom("basket-wire", newSalt())->publicKey() != key);
    }
    void twoSaltsAreTwo() {
        QCOMPARE(newSalt().size(), salt.size());
        QVERIFY(newSalt() != newSalt());
    }
    /// Characters are counted, not bytes.
    void aShortCodeIsNone() {
        for (const char* code : {"", "seven77", "\u00e4\u00e4\u00e4\u00e4\u00e4\u00e4\u00e4"}) {
            const auto key = keyFrom(code, salt);
            QVERIFY(!key);
            QCOMPARE(key.error().fault, Fault(TrustFault::CodeTooShort));
            QVERIFY(isSaid(key.error()));
        }
        QVERIFY(keyFrom("\u00e4\u00e4\u00e4\u00e4\u00e4\u00e4\u00e4\u00e4", salt));
    }
    void whatIsNoTextOrNoSaltIsRefused() {
        QCOMPARE(keyFrom("no text \xff\xff", salt).error().fault, Fault(EntryFault::NotUtf8));
        QCOMPARE(keyFrom("basket-wire", "00").error().fault, Fault(EntryFault::NotHexDigits));
        QCOMPARE(keyFrom("basket-wire", std::string(32, 'x')).error().fault, Fault(EntryFault::NotHexDigits));
    }
    void whatIsNoKeyOrNoSignatureProvesNothing() {
        const auto& good = rfc8032[0];
        for (const std::string& key : {std::string(), std::string("d75a"), std::string(64, '0'), std::string(64, 'x')})
            QVERIFY(!isSignedBy(key, good.message, good.signature));
        for (const std::string& signature : {std::string(), std::string(128, '0'), std::string(128, 'z')})
            QVERIFY(!isSignedBy(good.publicKey, good.message, signature));
    }
};

CROWNRING_TEST(OwnKeyTest)

}

#include "own_key_test.moc"
