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
