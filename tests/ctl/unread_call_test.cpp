// SPDX-License-Identifier: GPL-3.0-or-later
/// An adoption that names an item twice: refused as long as it is not written; told by every call once it is.
#include "answer.h"
#include "rules/programme/programme.h"
#include "store/unread_record.h"
#include "test_class.h"

#include <QtTest>

namespace unread_call_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* shed = R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
)";

bool says(const QByteArray& text, const char* words) { return text.contains(words); }

}

class UnreadCallTest : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;
    QString m_record;
    int m_records = 0;

    Answer call(QStringList arguments, const QByteArray& input = {}) const {
        return answerOf(QStringLiteral(CROWNRINGCTL),
                        QStringList{"--record", m_record, "--writer", "tester"} + arguments, input);
    }
    /// As an earlier program left it.
    void hold() const {
        writeUnread(m_record.toStdString(), adoptedTwice(std::string(shelfText(ProgrammeId("part-ml-hot-air")))));
    }

private slots:
    void init() {
        m_record = m_folder.filePath(QStringLiteral("%1.crownring").arg(++m_records));
        QCOMPARE(call({"post", "-"}, shed).code, 0);
    }
    void whoIsBoundIsNamedOnce() {
        for (const char* option : {"--item", "--balloon"}) {
            const QString whom(QLatin1String(option) == QLatin1String("--item") ? "E1" : "QE-ONE");
            const auto refused = call({"adopt", "part-ml-hot-air", option, whom, option, whom, "--on", "2024-01-02"});
            QCOMPARE(refused.code, 2);
            QCOMPARE(refused.out, QByteArray());
            QVERIFY2(says(refused.err, "is named twice. Mend: name each one once"), refused.err);
        }
        QCOMPARE(call({"verify", "--json"}).document()["entries"], 3);
        QCOMPARE(call({"adopt", "part-ml-hot-air", "--item", "E1", "--on", "2024-01-02"}).code, 0);
        QVERIFY(!call({"due", "--on", "2024-02-01", "--json"}).document()["rows"].empty());
    }
    void everyCallWorksAndSaysWhich_data() {
        QTest::addColumn<QStringList>("arguments");
        QTest::addColumn<int>("code");
        QTest::newRow("due") << QStringList{"due", "--on", "2024-02-01", "--json"} << 0;
        QTest::newRow("due table") << QStringList{"due", "--on", "2024-02-01"} << 0;
        QTest::newRow("balloons") << QStringList{"balloons", "--on", "2024-02-01", "--json"} << 0;
        QTest::newRow("rig-up") << QStringList{"rig-up", "--kit", "E1", "--on", "2024-02-01", "--json"} << 1;
        QTest::newRow("clock") << QStringList{"clock", "E1", "--on", "2024-02-01", "--json"} << 0;
        QTest::newRow("journal") << QStringList{"journal"} << 0;
        QTest::newRow("journal json") << QStringList{"journal", "--json"} << 0;
        QTest::newRow("rebuild") << QStringList{"rebuild"} << 0;
        QTest::newRow("backup") << QStringList{"backup", m_folder.filePath("copy")} << 0;
        QTest::newRow("verify") << QStringList{"verify"} << 0;
    }
    void everyCallWorksAndSaysWhich() {
        QFETCH(QStringList, arguments);
        QFETCH(int, code);
        hold();
        const auto answer = call(arguments);
        QVERIFY2(answer.code == code, answer.err);
        QVERIFY2(!answer.out.isEmpty(), "nothing was answered");
        for (const char* words : {"[unreadable] twice", "line 4 of the journal", "'E1' is named twice"})
            QVERIFY2(says(answer.err, words), answer.err);
    }
    void theAnswersNameIt() {
        hold();
        const auto due = call({"due", "--on", "2024-02-01", "--json"}).document();
        QVERIFY(due["rows"].empty());
        QCOMPARE(due["unread"][0]["entry"], "twice");
        const auto reasons = call({"rig-up", "--kit", "E1", "--on", "2024-02-01", "--json"}).document()["reasons"];
        QVERIFY(std::any_of(reasons.begin(), reasons.end(), [](const auto& reason) {
            return reason["reason"] == "cannot-say" && reason.value("entry", "") == "twice";
        }));
        const auto lines = call({"journal", "--json"}).document()["lines"];
        QCOMPARE(lines.size(), std::size_t{4});
        QCOMPARE(lines[0]["entry"]["items"], (nlohmann::json{"E1", "E1"}));
        QVERIFY(lines[0].contains("unreadable"));
        const auto verdict = call({"verify", "--json"}).document();
        QCOMPARE(verdict["intact"], true);
        QCOMPARE(verdict["questions"][0]["question"], "unreadable");
    }
    void oneVoidEndsIt() {
        hold();
        const auto voided =
            call({"post", "-"},
                 R"({"entry":"entry.voided","on":"2024-02-01","voids":"twice","reason":"E1 was named twice"})");
        QCOMPARE(voided.code, 0);
        const auto after = call({"due", "--on", "2024-02-01", "--json"});
        QCOMPARE(after.err, QByteArray());
        QVERIFY(!after.document().contains("unread"));
        QCOMPARE(call({"verify"}).code, 0);
    }
};

CROWNRING_TEST(UnreadCallTest, QCoreApplication)

}

#include "unread_call_test.moc"
