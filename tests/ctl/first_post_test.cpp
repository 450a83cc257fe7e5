// SPDX-License-Identifier: GPL-3.0-or-later
/// What is refused leaves no record where there was none.
#include "answer.h"
#include "test_class.h"

#include <QtTest>

namespace first_post_test {

using namespace crownring::testing;

namespace {

constexpr const char* inspected = R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"inspection.opened","on":"2024-05-01","inspection":"I1","visit":"us-annual","items":["E1"]}
)";
QByteArray happened(const char* event) {
    return QByteArray(R"({"entry":"event.reported","on":"2024-04-01","item":"E1","event":")") + event + "\"}";
}
constexpr const char* wrong = R"({"entry":"flight.logged","on":"2024-01-01","balloon":"QE-NONE","minutes":60})";

}

class FirstPostTest : public QObject {
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;

    QString path(const char* name) const { return m_folder->filePath(QString::fromLatin1(name)); }
    Answer call(QStringList arguments, const QByteArray& input = {}) const {
        return answerOf(QStringLiteral(CROWNRINGCTL), QStringList{"--record", path("shed.crownring")} + arguments,
                        input);
    }
    QStringList names() const {
        return QDir(m_folder->path()).entryList(QDir::AllEntries | QDir::System | QDir::Hidden | QDir::NoDotAndDotDot);
    }

private slots:
    void init() { m_folder = std::make_unique<QTemporaryDir>(); }

    void aFirstPostThatIsRefusedLeavesNoRecord() {
        for (const QByteArray& lines : {QByteArray(wrong), QByteArray("no JSON"), QByteArray(inspected) + wrong}) {
            QCOMPARE(call({"post", "-"}, lines).code, 2);
            QCOMPARE(names(), QStringList());
        }
        QCOMPARE(call({"adopt", "part-ml-hot-air", "--item", "E1"}).code, 2);
        QCOMPARE(names(), QStringList());
        const auto made = call({"post", "-"}, inspected);
        QVERIFY2(made.code == 0, made.err);
        QCOMPARE(made.document()["posted"], 2);
        QCOMPARE(names(), QStringList("shed.crownring"));
        QCOMPARE(call({"post", "-"}, wrong).code, 2);
        QCOMPARE(call({"verify", "--json"}).document()["entries"], 2);
    }
    /// What nothing waits for is kept and said; what is nearly known is refused with the known spelling.
    void anEventThatNothingWaitsForIsSaid() {
        QCOMPARE(call({"post", "-"}, inspected).code, 0);
        // A known event, but nothing that is adopted binds its item to it: it grounds nothing.
        const auto known = call({"post", "-"}, happened("hard-landing"));
        QCOMPARE(known.code, 0);
        QVERIFY2(known.err.contains("no requirement that is adopted for E1 waits for the event 'hard-landing'"),
                 known.err);
        QCOMPARE(call({"adopt", "part-ml-hot-air", "--all", "--on", "2024-01-02"}).code, 0);
        QVERIFY(!call({"post", "-"}, happened("hard-landing")).document().contains("notes"));
        const auto hail = call({"post", "-"}, happened("hail"));
        QCOMPARE(hail.code, 0);
        QCOMPARE(hail.document()["notes"][0]["event"], "hail");
        QCOMPARE(hail.document()["notes"][0]["line"], 1);
        QVERIFY2(hail.err.contains("nothing waits for the event 'hail'"), hail.err);
        const auto nearly = call({"post", "-"}, happened("hardlanding"));
        QCOMPARE(nearly.code, 2);
        QVERIFY2(nearly.err.contains("write it as 'hard-landing'"), nearly.err);
    }
    void anEmptyFileStaysEmptyUntilSomethingIsPosted() {
        QFile file(path("shed.crownring"));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.close();
        QCOMPARE(call({"post", "-"}, wrong).code, 2);
        QCOMPARE(QFileInfo(path("shed.crownring")).size(), 0);
        QCOMPARE(call({"post", "-"}, inspected).code, 0);
        QCOMPARE(call({"verify", "--json"}).document()["entries"], 2);
    }
    void aFolderThatIsNotThereIsSaid() {
        const auto refused = answerOf(QStringLiteral(CROWNRINGCTL),
                                      {"--record", path("no/such/shed.crownring"), "post", "-"}, inspected);
        QCOMPARE(refused.code, 2);
        QVERIFY2(refused.err.contains("no/such/shed.crownring"), refused.err);
    }
};

CROWNRING_TEST(FirstPostTest, QCoreApplication)

}

#include "first_post_test.moc"
