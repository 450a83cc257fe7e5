// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/due.h"
#include "bench/checklist/checklist.h"
#include "problem/faults/programme_fault.h"
#include "record/chain/chain.h"
#include "rules/programme/programme.h"
#include "said.h"
#include "signing_attempt.h"
#include "test_class.h"

using namespace crownring;
using namespace crownring::testing;

namespace {

const std::string plainText =
    R"({"programme":"plain","requirements":[{"action":"inspect","id":"plain.look","kinds":["envelope"],"limits":[{"clock":"months","every":12}],"source":"invented for tests","starts_from":"entered","title":"Look at it"}],"revision":"1","source":"invented for tests","title":"Plain"})";

std::string otherText() {
    auto text = plainText;
    text.replace(text.find(R"("every":12)"), 10, R"("every":6)");
    return canonicalProgramme(text).value();
}

/// A balloon with an envelope, and its programme.
struct AdoptedPlain {
    AdoptedPlain() {
        posted(*scratch.record, R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"programme.adopted","on":"2024-01-01","id":"adoption","programme":"plain","everything":true,"document":)" +
                                    plainText + "}");
    }
    std::vector<Problem> corrected(const std::string& with, const std::string& of = "adoption") {
        return problemsOf(*scratch.record,
                          R"({"entry":"entry.corrected","on":"2024-02-01","by":"A","note":"why","id":"correction")"
                          R"(,"replaces":")" +
                              of + R"(","with":)" + with + "}");
    }
    std::vector<Problem> voided(const std::string& what) {
        return problemsOf(*scratch.record,
                          R"({"entry":"entry.voided","on":"2024-02-02","voids":")" + what + R"(","reason":"why"})");
    }
    [[nodiscard]] std::size_t rows() const {
        const auto list = due(*scratch.record, {}, day("2024-03-01"));
        return list ? list->rows.size() : 0;
    }
    Scratch scratch;
};

std::string withDigest(const std::string& document, const std::string& digest) {
    return R"({"document":)" + document + R"(,"digest":")" + digest + R"("})";
}

}

/// An amendment is held to what the entry itself was: nothing could be said any more from what cannot be read.
class AmendedDocumentsTest : public QObject {
    Q_OBJECT
private slots:
    void anAdoptionIsNotCorrectedIntoWhatCannotBeRead_data() {
        QTest::addColumn<QString>("with");
        QTest::addColumn<QString>("key");
        const auto row = [](const char* name, const std::string& with, const char* key) {
            QTest::newRow(name) << QString::fromStdString(with) << QString::fromLatin1(key);
        };
        row("no document", R"({"document":null})", "with/document");
        row("a document of nothing", R"({"document":{}})", "with/document");
        row("garbage with its own digest", withDigest(R"({"x":1})", hex(sha256(R"({"x":1})"))), "with/document");
        row("another text under the old digest", R"({"document":)" + otherText() + "}", "with/digest");
        row("the old text under no digest of it", R"({"digest":")" + std::string(64, '0') + R"("})", "with/digest");
        row("no digest", R"({"digest":null})", "with/digest");
        row("another programme's name", R"({"programme":"fancy"})", "with/programme");
    }
    void anAdoptionIsNotCorrectedIntoWhatCannotBeRead() {
        QFETCH(QString, with);
        QFETCH(QString, key);
        AdoptedPlain record;
        const auto refused = record.corrected(with.toStdString());
        QCOMPARE(refused.size(), std::size_t{1});
        QVERIFY2(refused.front().where.key.starts_with(key.toStdString()), refused.front().where.key.c_str());
        QVERIFY(!text(refused.front()).empty());
        QCOMPARE(record.rows(), std::size_t{1});
    }
    void anotherTextIsTakenWithItsDigest() {
        AdoptedPlain record;
        const auto refused = record.corrected(R"({"document":)" + otherText() + "}");
        QCOMPARE(refused.front().fault, Fault(ProgrammeFault::DigestNotAmended));
        const auto digest = hex(sha256(otherText()));
        QVERIFY(text(refused.front()).find(digest) != std::string::npos);
        QVERIFY(record.corrected(withDigest(otherText(), digest)).empty());
        QCOMPARE(record.rows(), std::size_t{1});
    }
    /// The name was corrected together with the text, and the text again: what is left without the first is neither.
    void aVoidThatLeavesWhatCannotBeReadIsRefused() {
        AdoptedPlain record;
        auto renamed = plainText;
        renamed.replace(renamed.find(R"("programme":"plain")"), 19, R"("programme":"fancy")");
        renamed = canonicalProgramme(renamed).value();
        auto first = withDigest(renamed, hex(sha256(renamed)));
        first.insert(1, R"("programme":"fancy",)");
        QVERIFY(record.corrected(first).empty());
        auto again = renamed;
        again.replace(again.find(R"("every":12)"), 10, R"("every":6)");
        posted(*record.scratch.record,
               R"({"entry":"entry.corrected","on":"2024-02-01","by":"A","note":"why","id":"second")"
               R"(,"replaces":"adoption","with":)" +
                   withDigest(again, hex(sha256(again))) + "}");
        const auto refused = record.voided("correction");
        QCOMPARE(refused.size(), std::size_t{1});
        QCOMPARE(refused.front().fault, Fault(ProgrammeFault::AnotherProgramme));
        QCOMPARE(QString::fromStdString(refused.front().where.key), QStringLiteral("voids"));
        QVERIFY(record.voided("second").empty());
        QVERIFY(record.voided("correction").empty());
        QCOMPARE(record.rows(), std::size_t{1});
    }
    void aChecklistIsNotCorrectedIntoWhatCannotBeRead() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        const auto opened = shop.now().opened.id;
        for (const char* useless : {R"({"checklist":{}})", R"({"checklist":{"x":1}})"}) {
            const auto refused = problemsOf(
                shop.record(), R"({"entry":"entry.corrected","on":"2026-06-01","by":"A","note":"why","replaces":")" +
                                   opened.text() + R"(","with":)" + useless + "}");
            QCOMPARE(refused.size(), std::size_t{1});
            QVERIFY(refused.front().where.key.starts_with("with/checklist"));
        }
    }
    void anOwnChecklistIsNotCorrectedIntoWhatCannotBeRead() {
        Scratch scratch;
        posted(*scratch.record, R"({"entry":"checklist.adopted","on":"2024-01-01","id":"own","checklist":"crownring",)"
                                R"("document":)" +
                                    checklistShelf().front() + "}");
        const auto refused =
            problemsOf(*scratch.record, R"({"entry":"entry.corrected","on":"2024-02-01","by":"A","note":"why",)"
                                        R"("replaces":"own","with":{"document":{}}})");
        QCOMPARE(refused.size(), std::size_t{1});
        QVERIFY(refused.front().where.key.starts_with("with/document"));
    }
};

CROWNRING_TEST(AmendedDocumentsTest)

#include "amended_documents_test.moc"
