// SPDX-License-Identifier: GPL-3.0-or-later
/// What crownringctl writes goes over no record and over nothing unasked.
#include "answer.h"
#include "test_class.h"

#include <QtTest>

namespace writing_call_test {

using namespace crownring::testing;

namespace {

constexpr const char* inspected = R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"inspection.opened","on":"2024-05-01","inspection":"I1","visit":"us-annual","items":["E1"]}
)";

}

class WritingCallTest : public QObject {
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;

    QString path(const char* name) const { return m_folder->filePath(QString::fromLatin1(name)); }
    Answer call(QStringList arguments, const QByteArray& input = {}) const {
        return answerOf(QStringLiteral(CROWNRINGCTL), QStringList{"--record", path("shed.crownring")} + arguments,
                        input);
    }
    QByteArray content(const QString& file) const {
        QFile here(file);
        return here.open(QIODevice::ReadOnly) ? here.readAll() : QByteArray();
    }
    QStringList names() const {
        return QDir(m_folder->path()).entryList(QDir::AllEntries | QDir::System | QDir::Hidden | QDir::NoDotAndDotDot);
    }

private slots:
    void init() { m_folder = std::make_unique<QTemporaryDir>(); }

    void papersGoOverNoRecord_data() {
        QTest::addColumn<QString>("name");
        for (const char* name : {"shed.crownring", "shed.crownring-wal", "shed.crownring-shm", "shed.crownring-journal",
                                 "copy.crownring", "link.pdf", "folder"})
            QTest::newRow(name) << QString::fromLatin1(name);
    }
    void papersGoOverNoRecord() {
        QFETCH(QString, name);
        QCOMPARE(call({"post", "-"}, inspected).code, 0);
        QCOMPARE(call({"backup", path("copy.crownring")}).code, 0);
        QVERIFY(QFile::link(path("shed.crownring"), path("link.pdf")));
        QVERIFY(QDir(m_folder->path()).mkdir(QStringLiteral("folder")));
        const auto before = content(path("shed.crownring"));
        const auto there = names();
        for (const bool force : {false, true}) {
            QStringList asked{"inspection", "print", "I1", "--to", m_folder->filePath(name), "--on", "2024-05-01"};
            if (force)
                asked += "--force";
            const auto refused = call(asked);
            QCOMPARE(refused.code, 2);
            QVERIFY2(refused.err.contains("[file-unwritable]"), refused.err);
        }
        QCOMPARE(names(), there);
        QCOMPARE(content(path("shed.crownring")), before);
        QCOMPARE(call({"verify", "--json"}).document()["entries"], 2);
    }
    void aPaperReplacesAFileOnlyWhenToldTo() {
        QCOMPARE(call({"post", "-"}, inspected).code, 0);
        const QStringList asked{"inspection", "print", "I1", "--to", path("paper.pdf"), "--on", "2024-05-01"};
        const auto first = call(asked);
        QVERIFY2(first.code == 0, first.err);
        QVERIFY(content(path("paper.pdf")).startsWith("%PDF"));
        QFile letter(path("paper.pdf"));
        QVERIFY(letter.open(QIODevice::WriteOnly | QIODevice::Truncate));
        letter.write("a letter");
        letter.close();
        const auto refused = call(asked);
        QCOMPARE(refused.code, 2);
        QVERIFY2(refused.err.contains("[file-exists]") && refused.err.contains("--force"), refused.err);
        QCOMPARE(content(path("paper.pdf")), QByteArray("a letter"));
        QCOMPARE(call(asked + QStringList{"--force"}).code, 0);
        QVERIFY(content(path("paper.pdf")).startsWith("%PDF"));
    }
    void aBackupReplacesAnOlderOneOnlyWhenToldTo() {
        QCOMPARE(call({"post", "-"}, inspected).code, 0);
        QCOMPARE(call({"backup", path("copy")}).code, 0);
        QCOMPARE(call({"backup", path("copy")}).code, 2);
        QCOMPARE(call({"backup", path("copy"), "--force"}).code, 0);
        QCOMPARE(call({"backup", path("shed.crownring"), "--force"}).code, 2);
        QVERIFY(call({"backup", "--help"}).out.contains("--force"));
        QCOMPARE(call({"verify"}).code, 0);
    }
};

CROWNRING_TEST(WritingCallTest, QCoreApplication)

}

#include "writing_call_test.moc"
