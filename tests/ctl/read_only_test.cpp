// SPDX-License-Identifier: GPL-3.0-or-later
/// A record that may only be read is read, and says so when it is to be written.
#include "answer.h"
#include "test_class.h"

#include <QtTest>
#include <unistd.h>

namespace read_only_test {

using namespace crownring::testing;

namespace {

constexpr const char* shed = R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"})";
constexpr const char* another = R"({"entry":"balloon.entered","on":"2024-01-02","balloon":"QE-OAK"})";
constexpr const char* flight = R"({"entry":"flight.logged","on":"2024-02-01","balloon":"QE-ONE","minutes":60})";

/// Who may do everything is made nobody.
Answer asNobody(QStringList call, const QByteArray& input = {}) {
    QString program = QStringLiteral(CROWNRINGCTL);
    if (::geteuid() == 0) {
        call = QStringList{"--reuid=65534", "--regid=65534", "--clear-groups", program} + call;
        program = "setpriv";
    }
    return answerOf(program, call, input);
}

}

class ReadOnlyTest : public QObject {
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;

    QString record() const { return m_folder->filePath("shed.crownring"); }
    QStringList names() const {
        return QDir(m_folder->path()).entryList(QDir::AllEntries | QDir::System | QDir::Hidden | QDir::NoDotAndDotDot);
    }
    void protect(QFile::Permissions file, bool folder) const {
        constexpr auto look = QFile::ReadOther | QFile::ExeOther | QFile::ReadOwner | QFile::ExeOwner;
        QVERIFY(QFile::setPermissions(record(), file));
        QVERIFY(QFile::setPermissions(m_folder->path(), folder ? look : look | QFile::WriteOwner | QFile::WriteOther));
    }
    void readsAndDoesNotWrite(const char* why) const {
        const auto read = asNobody({"--record", record(), "balloons", "--on", "2024-06-01", "--json"});
        QVERIFY2(read.code == 0, read.err);
        QCOMPARE(read.document()["balloons"].size(), std::size_t{1});
        QCOMPARE(asNobody({"--record", record(), "verify", "--json"}).document()["intact"], true);
        const auto posted = asNobody({"--record", record(), "post", "-"}, flight);
        QCOMPARE(posted.code, 2);
        QVERIFY2(posted.err.contains(why), posted.err);
        QCOMPARE(names(), QStringList("shed.crownring"));
    }

private slots:
    void initTestCase() {
        if (asNobody({"--version"}).code != 0)
            QSKIP("the program cannot be run as somebody who may not write");
    }
    void init() {
        m_folder = std::make_unique<QTemporaryDir>();
        QCOMPARE(answerOf(QStringLiteral(CROWNRINGCTL), {"--record", record(), "post", "-"}, shed).code, 0);
    }
    void cleanup() { QFile::setPermissions(m_folder->path(), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner); }
    void aFileInAFolderThatCannotBeWritten() {
        protect(QFile::ReadOther | QFile::ReadOwner | QFile::WriteOther | QFile::WriteOwner, true);
        readsAndDoesNotWrite("nothing may be written into its folder");
    }
    void aFileThatCannotBeWritten() {
        protect(QFile::ReadOther | QFile::ReadOwner, true);
        readsAndDoesNotWrite("the file may only be read");
    }
    void anEarlierRecordIsSaidToBeOne() {
        QVERIFY(QFile::remove(record()));
        QVERIFY(QFile::copy(CROWNRING_SOURCE_DIR "/tests/store/frozen/schema-9.crownring", record()));
        protect(QFile::ReadOther | QFile::ReadOwner | QFile::WriteOther | QFile::WriteOwner, true);
        for (const auto* call : {"balloons", "verify"}) {
            const auto read = asNobody({"--record", record(), call, "--json"});
            QCOMPARE(read.code, 2);
            QVERIFY2(read.err.contains("written by an earlier version (schema 9,"), read.err);
            QVERIFY2(read.err.contains("copy it to a folder where it may be written"), read.err);
        }
    }
    /// What was written last stands in the log beside it and cannot be left out.
    void aRecordThatIsOpenElsewhere() {
        QProcess reader; // while it reads nothing that is written comes from the log into the file
        reader.start("sqlite3", {record()});
        reader.write("BEGIN; SELECT 'reads' FROM entry LIMIT 1;\n");
        QVERIFY(reader.waitForReadyRead());
        while (!reader.readAllStandardOutput().contains("reads"))
            QVERIFY(reader.waitForReadyRead());
        QCOMPARE(answerOf(QStringLiteral(CROWNRINGCTL), {"--record", record(), "post", "-"}, another).code, 0);
        protect(QFile::ReadOther | QFile::ReadOwner | QFile::WriteOwner, true);
        for (const auto* ending : {"-wal", "-shm"})
            QVERIFY(QFile::setPermissions(record() + ending, QFile::ReadOther | QFile::ReadOwner | QFile::WriteOwner));
        const auto read = asNobody({"--record", record(), "balloons", "--on", "2024-06-01", "--json"});
        QVERIFY2(read.code == 0, read.err);
        QCOMPARE(read.document()["balloons"].size(), std::size_t{2});
        reader.write("COMMIT;\n.quit\n");
        QVERIFY(reader.waitForFinished());
    }
};

CROWNRING_TEST(ReadOnlyTest, QCoreApplication)

}

#include "read_only_test.moc"
