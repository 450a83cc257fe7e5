// SPDX-License-Identifier: GPL-3.0-or-later
/// What was acknowledged once is still there, or is named.
#include "answer.h"
#include "test_class.h"

#include <QtTest>

using namespace crownring::testing;

namespace {

QByteArray flight(int number) {
    return R"({"entry":"flight.logged","id":"f)" + QByteArray::number(number) +
           R"(","on":"2024-05-01","balloon":"QE-ONE","minutes":60})";
}

}

class ExpectedEntriesTest : public QObject {
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;

    QString path(const char* name) const { return m_folder->filePath(QString::fromLatin1(name)); }
    QString record() const { return path("shed.crownring"); }
    Answer call(const QStringList& arguments, const QByteArray& input = {}, const char* writer = "shed:A") const {
        return answerOf(QStringLiteral(CROWNRINGCTL),
                        QStringList{"--record", record(), "--writer", QString::fromLatin1(writer)} + arguments, input);
    }
    QString postedEnd(const QByteArray& lines, const char* writer = "shed:A") const {
        const auto end = call({"post", "-", "--json"}, lines, writer).document();
        return QString::fromStdString(end["writer"].get<std::string>() + ":" +
                                      std::to_string(end["sequence"].get<int>()) + ":" +
                                      end["hash"].get<std::string>());
    }
    /// As somebody would do it who knows the tables: what was written last goes, and the chain ends before.
    void cutTheLast(int count) const {
        const auto script =
            QStringLiteral("DROP TRIGGER entry_is_never_deleted;"
                           "DELETE FROM entry WHERE entry_no > (SELECT MAX(entry_no) FROM entry) - %1;"
                           "UPDATE writer SET (last_sequence, last_hash) = (SELECT sequence, hash FROM entry e"
                           " WHERE e.writer_no = writer.writer_no ORDER BY sequence DESC LIMIT 1);"
                           "CREATE TRIGGER entry_is_never_deleted BEFORE DELETE ON entry\n"
                           "BEGIN SELECT RAISE(ABORT, 'the journal is append-only'); END;")
                .arg(count);
        QCOMPARE(QProcess::execute("sqlite3", {record(), script}), 0);
        QCOMPARE(call({"rebuild"}).code, 0);
    }

private slots:
    void init() {
        m_folder = std::make_unique<QTemporaryDir>();
        QCOMPARE(call({"post", "-"}, R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"})").code, 0);
    }
    void postAnswersWhereTheChainEnds() {
        const auto answer = call({"post", "-", "--json"}, flight(1) + "\n" + flight(2)).document();
        QCOMPARE(answer["posted"], 2);
        QCOMPARE(answer["writer"], "shed:A");
        QCOMPARE(answer["sequence"], 3);
        const auto last = call({"journal", "--most", "1", "--json"}).document()["lines"][0];
        QCOMPARE(last["entry"]["id"], "f2");
        QCOMPARE(answer["hash"], last["hash"]);
        QVERIFY(!call({"post", "-"}, "").document().contains("sequence"));
    }
    void anEndThatWasCutOffIsMissedThoughTheChainIsIntact() {
        const auto first = postedEnd(flight(1));
        const auto other = postedEnd(flight(2), "hangar");
        const auto last = postedEnd(flight(3));
        const QStringList all{"verify", "--expect", first, "--expect", other, "--expect", last};
        QCOMPARE(call(all).code, 0);
        QCOMPARE(call(all + QStringList("--json")).document()["missing"], nlohmann::json::array());
        QVERIFY(!call({"verify", "--json"}).document().contains("missing"));

        cutTheLast(1);
        const auto alone = call({"verify", "--json"});
        QCOMPARE(alone.code, 0);
        QCOMPARE(alone.document()["intact"], true);
        const auto cut = call(all + QStringList("--json"));
        QCOMPARE(cut.code, 1);
        QCOMPARE(cut.document()["intact"], true);
        QCOMPARE(cut.document()["missing"], nlohmann::json::array({last.toStdString()}));
        QVERIFY(call(all).out.contains("MISSING: entry 3 of writer shed:A"));
    }
    void anotherEntryInItsPlaceIsMissed() {
        const auto last = postedEnd(flight(1));
        cutTheLast(1);
        QVERIFY(postedEnd(flight(2)) != last);
        QCOMPARE(call({"verify"}).code, 0);
        QCOMPARE(call({"verify", "--expect", last}).code, 1);
    }
    void aFileOfThemServesToo() {
        const auto first = postedEnd(flight(1));
        const auto last = postedEnd(flight(2));
        QFile file(path("acknowledged"));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write((first + "\r\n\n" + last + "\n").toUtf8());
        file.close();
        QCOMPARE(call({"verify", "--expect-from", path("acknowledged")}).code, 0);
        QCOMPARE(call({"backup", path("copy.crownring")}).code, 0);
        cutTheLast(1);
        QCOMPARE(call({"verify", "--expect-from", path("acknowledged")}).code, 1);
        QCOMPARE(answerOf(QStringLiteral(CROWNRINGCTL),
                          {"--record", path("copy.crownring"), "verify", "--expect-from", path("acknowledged")})
                     .code,
                 0);
    }
    void whatIsNoAcknowledgementIsRefusedWithItsLine() {
        const auto end = postedEnd(flight(1));
        QCOMPARE(call({"verify", "--expect", "shed:A:7"}).code, 2);
        const auto refused = call({"verify", "--expect-from", "-"}, (end + "\nshed:A:x:y\n").toUtf8());
        QCOMPARE(refused.code, 2);
        QVERIFY2(refused.err.contains("-:2: ") && refused.err.contains("shed:A:x:y"), refused.err);
        QCOMPARE(call({"verify", "--expect-from", path("absent")}).code, 2);
    }
};

CROWNRING_TEST(ExpectedEntriesTest, QCoreApplication)
#include "expected_entries_test.moc"
