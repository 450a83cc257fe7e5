// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/chain/acknowledged.h"
#include "test_class.h"

#include <QCryptographicHash>
#include <QtTest>
#include <rapidcheck.h>

namespace chain_test {

using namespace crownring;

namespace {

const Link firstLink{WriterId("shed"), 1, "2026-11-25T07:00:00Z", {}};
const std::string flight = R"({"balloon":"QE-ABC","entry":"flight.logged","id":"f1","minutes":60,"on":"2024-05-01"})";
const std::string reportOfRain =
    R"({"balloon":"QE-ABC","entry":"event.reported","event":"immersion","id":"r1","note":"pluie forte – é","on":"2024-05-02"})";

}

class ChainTest : public QObject {
    Q_OBJECT
private slots:
    // FIPS 180-4 (NIST), examples of SHA-256: the empty message and "abc".
    void theDigestIsSha256() {
        QCOMPARE(hex(sha256("")), std::string("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"));
        QCOMPARE(hex(sha256("abc")), std::string("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"));
        QVERIFY(rc::check("as Qt computes it", [](const std::string& bytes) {
            const auto qt = QCryptographicHash::hash(QByteArrayView(bytes.data(), qsizetype(bytes.size())),
                                                     QCryptographicHash::Sha256);
            RC_ASSERT(hex(sha256(bytes)) == qt.toHex().toStdString());
        }));
    }

    // Computed by an independent program from the words of core/record/chain.h alone (Python 3.11, hashlib):
    //   field = lambda b: struct.pack(">Q", len(b)) + b
    //   link = lambda previous, writer, n, at, text: hashlib.sha256(b"\0" + field(b"crownring.entry.v1") +
    //   field(previous)
    //       + field(writer) + field(struct.pack(">Q", n)) + field(at) + field(text)).digest()
    void anEntrysHashIsTheOneOfTheDescription() {
        const auto first = entryHash(firstLink, flight);
        QCOMPARE(hex(first), std::string("295685c7d33567bc87118b66d5672d9fd0cad8ea4073598331e76e18e2a065fe"));
        const Link second{WriterId("shed"), 2, "2026-11-25T07:00:01Z", first};
        QCOMPARE(hex(entryHash(second, reportOfRain)),
                 std::string("d5f0f631f07c7a621dca078e71ca5daf629a6a0e0c09f82c428b1d3f3f17eb3e"));
    }

    void everyPartOfALinkCounts() {
        const auto whole = entryHash(firstLink, flight);
        const auto differs = [&](auto change) {
            auto link = firstLink;
            change(link);
            return entryHash(link, flight) != whole;
        };
        QVERIFY(differs([](Link& link) { link.writer = WriterId("shee"); }));
        QVERIFY(differs([](Link& link) { link.sequence = 2; }));
        QVERIFY(differs([](Link& link) { link.recordedAt = "2026-11-25T07:00:01Z"; }));
        QVERIFY(differs([](Link& link) { link.previous[31] = 1; }));
        QVERIFY(entryHash(firstLink, flight + " ") != whole);
    }

    // The trap of plain concatenation: "AB" + "C" and "A" + "BC" would hash alike.
    void fieldsDoNotRunIntoEachOther() {
        QVERIFY(entryHash({WriterId("AB"), 1, "C", {}}, "D") != entryHash({WriterId("A"), 1, "BC", {}}, "D"));
        QVERIFY(entryHash({WriterId("A"), 1, "BC", {}}, "D") != entryHash({WriterId("A"), 1, "B", {}}, "CD"));
    }

    void aDigestIsWrittenAsSixtyFourHexDigits() {
        QVERIFY(rc::check("hex and back", [] {
            Digest digest{};
            for (auto& byte : digest)
                byte = static_cast<unsigned char>(*rc::gen::inRange(0, 256));
            RC_ASSERT(digestFromHex(hex(digest)) == digest);
        }));
        const auto some = hex(sha256("abc"));
        QVERIFY(!digestFromHex(""));
        QVERIFY(!digestFromHex(some.substr(1)));
        QVERIFY(!digestFromHex(some + "0"));
        QVERIFY(!digestFromHex("g" + some.substr(1)));
        QVERIFY(!digestFromHex("B" + some.substr(1)));
    }
    void whatWasAcknowledgedIsReadAsItIsWritten() {
        QVERIFY(rc::check("and back, whatever the writer is called", [] {
            const Acknowledged end{WriterId(*rc::gen::nonEmpty(rc::gen::string<std::string>())),
                                   *rc::gen::positive<std::uint64_t>(), sha256(*rc::gen::arbitrary<std::string>())};
            RC_ASSERT(acknowledgedFrom(acknowledgedText(end)) == std::optional(end));
        }));
        const auto hash = hex(sha256("abc"));
        QCOMPARE(acknowledgedFrom("shed:A:7:" + hash)->writer.text(), std::string("shed:A"));
        for (const auto& wrong : std::vector<std::string>{
                 "", hash, ":" + hash, "7:" + hash, ":7:" + hash, "shed::" + hash, "shed:0:" + hash, "shed:-7:" + hash,
                 "shed:7x:" + hash, "shed:+7:" + hash, "shed: 7:" + hash, "shed:18446744073709551616:" + hash,
                 "shed:7:" + hash + "0", "shed:7:", "shed:7"})
            QVERIFY2(!acknowledgedFrom(wrong), wrong.c_str());
    }
};

CROWNRING_TEST(ChainTest)

}

#include "chain_test.moc"
