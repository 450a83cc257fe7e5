// SPDX-License-Identifier: GPL-3.0-or-later
/// Papers, tables and pictures go anywhere but over a record.
#include "said.h"
#include "test_class.h"
#include "writing/draft.h"
#include "writing/write_out.h"

#include <QtTest>
#include <sys/resource.h>
#include <sys/stat.h>

#include <csignal>

namespace write_out_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

/// The first page of an SQLite database. @param application 0 for none
QByteArray database(quint32 application = 0x43524E47) {
    QByteArray bytes("SQLite format 3\0", 16);
    bytes.resize(4096, '\0');
    for (int i = 0; i < 4; ++i)
        bytes[68 + i] = static_cast<char>(application >> (24 - 8 * i));
    return bytes;
}

/// A disk on which no file may grow beyond so many bytes.
class SmallDisk {
public:
    explicit SmallDisk(rlim_t bytes) {
        ::getrlimit(RLIMIT_FSIZE, &m_before);
        m_signal = std::signal(SIGXFSZ, SIG_IGN);
        const rlimit small{bytes, m_before.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &small);
    }
    ~SmallDisk() {
        ::setrlimit(RLIMIT_FSIZE, &m_before);
        std::signal(SIGXFSZ, m_signal);
    }
    SmallDisk(const SmallDisk&) = delete;
    SmallDisk& operator=(const SmallDisk&) = delete;

private:
    rlimit m_before{};
    void (*m_signal)(int) = nullptr;
};

}

class WriteOutTest : public QObject {
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;

    QString path(const char* name) const { return m_folder->filePath(QString::fromLatin1(name)); }
    std::string file(const char* name) const { return path(name).toStdString(); }
    void put(const char* name, const QByteArray& bytes) const {
        QFile here(path(name));
        QVERIFY(here.open(QIODevice::WriteOnly));
        here.write(bytes);
    }
    QByteArray content(const char* name) const {
        QFile here(path(name));
        return here.open(QIODevice::ReadOnly) ? here.readAll() : QByteArray("none");
    }
    QStringList names() const {
        return QDir(m_folder->path()).entryList(QDir::AllEntries | QDir::System | QDir::Hidden | QDir::NoDotAndDotDot);
    }

private slots:
    void init() { m_folder = std::make_unique<QTemporaryDir>(); }

    void aNewFileIsWritten() {
        const std::string bytes("all\0of it", 9);
        QVERIFY(writeOut(file("paper.pdf"), bytes, Replace::Never));
        QCOMPARE(content("paper.pdf"), QByteArray::fromStdString(bytes));
        QCOMPARE(names(), QStringList("paper.pdf"));
        const auto mask = ::umask(0);
        ::umask(mask);
        struct stat made {};
        QCOMPARE(::stat(file("paper.pdf").c_str(), &made), 0);
        QCOMPARE(made.st_mode & 0777, 0666 & ~mask);
    }
    void whatIsThereStaysUntilSomebodySaysSo() {
        put("letter.txt", "mine");
        QFile::setPermissions(path("letter.txt"), QFile::ReadOwner | QFile::WriteOwner);
        const auto refused = writeOut(file("letter.txt"), "paper", Replace::Never);
        QCOMPARE(refused.error().code(), Code::FileExists);
        QCOMPARE(refused.error().where.file, file("letter.txt"));
        QCOMPARE(content("letter.txt"), QByteArray("mine"));
        QVERIFY(writeOut(file("letter.txt"), "paper", Replace::Asked));
        QCOMPARE(content("letter.txt"), QByteArray("paper"));
        QCOMPARE(QFile::permissions(path("letter.txt")) & (QFile::ReadGroup | QFile::ReadOther), QFile::Permissions());
        QCOMPARE(names(), QStringList("letter.txt"));
    }
    void nobodyIsAskedAboutARecord_data() {
        QTest::addColumn<QString>("name");
        QTest::addColumn<Found>("found");
        QTest::newRow("a record") << "fleet.crownring" << Found::Record;
        QTest::newRow("its log") << "fleet.crownring-wal" << Found::BesideOne;
        QTest::newRow("its shared memory, not there now") << "fleet.crownring-shm" << Found::BesideOne;
        QTest::newRow("its journal, not there now") << "fleet.crownring-journal" << Found::BesideOne;
        QTest::newRow("by a link") << "link" << Found::Record;
        QTest::newRow("by a hard link") << "hard" << Found::Record;
        QTest::newRow("by a way round") << "sub/../fleet.crownring" << Found::Record;
        QTest::newRow("its log by a link") << "loglink" << Found::BesideOne;
        QTest::newRow("another program's database") << "recipes.db" << Found::Database;
        QTest::newRow("a log whose database is gone") << "orphan" << Found::BesideOne;
        QTest::newRow("a journal whose database is gone") << "hot" << Found::BesideOne;
        QTest::newRow("a database that stands in its log alone") << "begun" << Found::Database;
        QTest::newRow("a folder") << "sub" << Found::NoPlainFile;
        QTest::newRow("a pipe") << "pipe" << Found::NoPlainFile;
        QTest::newRow("a device") << "/dev/null" << Found::NoPlainFile;
        QTest::newRow("a link to a folder") << "sublink" << Found::NoPlainFile;
        QTest::newRow("a link to nowhere") << "lost" << Found::LostLink;
        QTest::newRow("a link to itself") << "loop" << Found::LostLink;
    }
    void nobodyIsAskedAboutARecord() {
        QFETCH(QString, name);
        QFETCH(Found, found);
        QDir(m_folder->path()).mkdir("sub");
        put("fleet.crownring", database());
        put("fleet.crownring-wal", "a log");
        put("recipes.db", database(0));
        put("orphan", QByteArray::fromHex("377f0682") + QByteArray(28, '\0'));
        put("hot", QByteArray::fromHex("d9d505f920a163d7") + QByteArray(20, '\0'));
        put("begun", "");
        put("begun-wal", QByteArray::fromHex("377f0683") + QByteArray(28, '\0'));
        QCOMPARE(::mkfifo(file("pipe").c_str(), 0600), 0);
        QCOMPARE(::link(file("fleet.crownring").c_str(), file("hard").c_str()), 0);
        for (const auto& [from, to] :
             {std::pair("link", "fleet.crownring"), std::pair("loglink", "fleet.crownring-wal"),
              std::pair("sublink", "sub"), std::pair("lost", "nowhere"), std::pair("loop", "loop")})
            QVERIFY(QFile::link(QString::fromLatin1(to), path(from)));
        const auto before = names();
        const auto target = QDir(m_folder->path()).filePath(name).toStdString();
        QCOMPARE(foundAt(target), found);
        for (const auto replace : {Replace::Never, Replace::Asked}) {
            const auto refused = writeOut(target, "paper", replace);
            QVERIFY(!refused);
            QCOMPARE(refused.error().code(), Code::FileUnwritable);
            QVERIFY(isSaid(refused.error()));
        }
        QCOMPARE(names(), before);
        QCOMPARE(content("fleet.crownring"), database());
        QCOMPARE(content("fleet.crownring-wal"), QByteArray("a log"));
        QCOMPARE(content("recipes.db"), database(0));
    }
    void aLinkToAPlainFileStaysALink() {
        put("real.csv", "old");
        QVERIFY(QFile::link(QStringLiteral("real.csv"), path("link.csv")));
        QVERIFY(writeOut(file("link.csv"), "new", Replace::Asked));
        QVERIFY(QFileInfo(path("link.csv")).isSymLink());
        QCOMPARE(content("real.csv"), QByteArray("new"));
    }
    void namesThatOnlyLookLikeARecordAreFree() {
        QVERIFY(writeOut(file("notes-wal"), "mine", Replace::Never)); // there is no database "notes"
        put("letter", "SQLite format 3 is what it is about");
        QVERIFY(writeOut(file("letter"), "mine", Replace::Asked));
    }
    void aFullDiskLosesNothing() {
        put("paper.pdf", "the old one");
        const std::string large(100'000, 'x');
        {
            const SmallDisk disk(1000);
            const auto refused = writeOut(file("paper.pdf"), large, Replace::Asked);
            QVERIFY(!refused);
            QCOMPARE(refused.error().code(), Code::FileUnwritable);
        }
        QCOMPARE(content("paper.pdf"), QByteArray("the old one"));
        QCOMPARE(names(), QStringList("paper.pdf"));
        QVERIFY(writeOut(file("paper.pdf"), large, Replace::Asked));
        QCOMPARE(content("paper.pdf").size(), 100'000);
    }
    void whatCameMeanwhileStays() {
        auto draft = Draft::of(file("paper.pdf"), Replace::Never).value();
        put("paper.pdf", "of somebody else");
        QCOMPARE(draft.keep().error().code(), Code::FileExists);
        QCOMPARE(content("paper.pdf"), QByteArray("of somebody else"));
        auto asked = Draft::of(file("paper.pdf"), Replace::Asked).value();
        put("paper.pdf", database());
        QCOMPARE(asked.keep().error().code(), Code::FileUnwritable);
        QCOMPARE(content("paper.pdf"), database());
    }
    void aDraftThatIsNotKeptGoes() {
        {
            const auto draft = Draft::of(file("paper.pdf"), Replace::Never).value();
            QCOMPARE(names().size(), 1);
        }
        QVERIFY(names().isEmpty());
    }
    void aFolderThatIsNotThereIsSaid() {
        const auto refused = writeOut(file("no/such/paper.pdf"), "paper", Replace::Never);
        QCOMPARE(refused.error().code(), Code::FileUnwritable);
        QCOMPARE(writeOut("", "paper", Replace::Never).error().code(), Code::FileUnwritable);
    }
};

CROWNRING_TEST(WriteOutTest, QCoreApplication)

}

#include "write_out_test.moc"
