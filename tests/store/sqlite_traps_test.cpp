// SPDX-License-Identifier: GPL-3.0-or-later

/// What SQLite 3.40 does by itself behind Qt SQL 6.4, as measured, and that a `Connection` does not fall for it. Each
/// trap is sprung first on a plain connection, so that the second half cannot pass by accident.

#include "scratch.h"
#include "store/connection/connection.h"
#include "store/schema/migration.h"
#include "test_class.h"

#include <QtSql/QSqlDatabase>
#include <QtSql/QSqlError>
#include <QtSql/QSqlQuery>
#include <QtTest>

#include <future>
#include <thread>

namespace sqlite_traps_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

/// A connection as anyone would open it.
class Plain {
public:
    explicit Plain(const std::string& file) {
        auto db = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), name());
        db.setDatabaseName(QString::fromStdString(file));
        if (!db.open())
            throw std::runtime_error("not opened");
    }
    ~Plain() { QSqlDatabase::removeDatabase(name()); }
    Plain(const Plain&) = delete;
    Plain& operator=(const Plain&) = delete;

    static QString name() { return QStringLiteral("plain"); }
    [[nodiscard]] QSqlDatabase database() const { return QSqlDatabase::database(name()); }
    /// The database's own code of the error; empty when there was none.
    [[nodiscard]] QString errorOf(const char* statement) const {
        QSqlQuery query(database());
        query.exec(QString::fromLatin1(statement));
        return query.lastError().nativeErrorCode();
    }
    [[nodiscard]] QString ask(const char* statement) const {
        QSqlQuery query(database());
        query.exec(QString::fromLatin1(statement));
        return query.next() ? query.value(0).toString() : query.lastError().text();
    }
};

void putEntry(const std::string& file) {
    const Connection connection(file, Access::ReadWrite);
    connection.run("INSERT INTO writer VALUES (1, 'w', 0, zeroblob(32))");
    connection.run("INSERT INTO entry VALUES (1, 'e', 'k', '2024-02-29', 1, 1, 'now', zeroblob(32), 'first')");
}

constexpr const char* replaceEntry =
    "INSERT OR REPLACE INTO entry VALUES (1, 'e', 'k', '2024-02-29', 1, 1, 'now', zeroblob(32), 'other')";

}

class SqliteTrapsTest : public QObject {
    Q_OBJECT
private slots:
    void whatAPlainConnectionIsLike() {
        const Scratch scratch;
        const Plain plain(scratch.beside("plain.db"));
        QCOMPARE(plain.ask("PRAGMA foreign_keys"), QStringLiteral("0"));
        QCOMPARE(plain.ask("PRAGMA recursive_triggers"), QStringLiteral("0"));
        QCOMPARE(plain.ask("PRAGMA trusted_schema"), QStringLiteral("1"));
        QCOMPARE(plain.ask("PRAGMA journal_mode"), QStringLiteral("delete"));
        QCOMPARE(plain.ask("PRAGMA application_id"), QStringLiteral("0"));
        // These two are as we want them already; we do not rely on it.
        QCOMPARE(plain.ask("PRAGMA synchronous"), QStringLiteral("2"));
        QCOMPARE(plain.ask("PRAGMA busy_timeout"), QStringLiteral("5000"));
    }
    void insideATransactionForeignKeysStayOff() {
        const Scratch scratch;
        const Plain plain(scratch.beside("plain.db"));
        QCOMPARE(plain.errorOf("BEGIN"), QString());
        QCOMPARE(plain.errorOf("PRAGMA foreign_keys = ON"), QString()); // and yet
        QCOMPARE(plain.ask("PRAGMA foreign_keys"), QStringLiteral("0"));
        QCOMPARE(plain.errorOf("ROLLBACK"), QString());
    }
    void replacingGoesRoundTheGuardAgainstDeletion() {
        Scratch scratch;
        scratch.record.reset();
        putEntry(scratch.file());
        QVERIFY_THROWS_EXCEPTION(StoreError, Connection(scratch.file(), Access::ReadWrite).run(replaceEntry));
        const Plain plain(scratch.file());
        QCOMPARE(plain.ask("SELECT body FROM entry"), QStringLiteral("first"));
        QCOMPARE(plain.errorOf(replaceEntry), QString());
        QCOMPARE(plain.ask("SELECT body FROM entry"), QStringLiteral("other"));
    }
    void theThirtiethOfFebruaryIsADate() {
        // That a record refuses it: settings_test, aDayThatDoesNotExistIsRefused.
        const Scratch scratch;
        const Plain plain(scratch.beside("plain.db"));
        QCOMPARE(plain.ask("SELECT date('2023-02-30') IS '2023-02-30'"), QStringLiteral("1"));
        QCOMPARE(plain.ask("SELECT strftime('%Y-%m-%d', '2023-02-30') IS '2023-02-30'"), QStringLiteral("1"));
        QCOMPARE(plain.ask("SELECT date('2023-02-30', '+0 days') IS '2023-02-30'"), QStringLiteral("0"));
        QCOMPARE(plain.ask("SELECT date('2024-02-29', '+0 days') IS '2024-02-29'"), QStringLiteral("1"));
    }
    void aTransactionThatReadsBeforeItWritesFailsAtOnce() {
        Scratch scratch;
        scratch.record.reset();
        const Connection other(scratch.file(), Access::ReadWrite);
        const Plain plain(scratch.file());
        QVERIFY(plain.database().transaction());
        QCOMPARE(plain.ask("SELECT COUNT(*) FROM writer"), QStringLiteral("0"));
        other.run("INSERT INTO writer VALUES (1, 'other', 0, zeroblob(32))");
        QElapsedTimer clock;
        clock.start();
        QCOMPARE(plain.errorOf("INSERT INTO writer VALUES (2, 'plain', 0, zeroblob(32))"), QStringLiteral("517"));
        QVERIFY(clock.elapsed() < 1000); // of five seconds that it might have waited
        QVERIFY(plain.database().rollback());

        const Connection ours(scratch.file(), Access::ReadWrite);
        Transaction transaction(ours);
        QCOMPARE(ours.ask("SELECT COUNT(*) FROM writer"), QStringLiteral("1"));
        QCOMPARE(plain.errorOf("PRAGMA busy_timeout = 0"), QString());
        QCOMPARE(plain.errorOf("BEGIN IMMEDIATE"), QStringLiteral("5")); // the lock is ours already
        ours.run("INSERT INTO writer VALUES (2, 'ours', 0, zeroblob(32))");
        transaction.commit();
    }
    void aSecondWriterWaitsForTheFirst() {
        const Scratch scratch;
        const Connection ours(scratch.file(), Access::ReadWrite);
        std::promise<void> taken;
        const auto first = std::async(std::launch::async, [&] {
            const Connection theirs(scratch.file(), Access::ReadWrite);
            Transaction held(theirs);
            taken.set_value();
            QTest::qSleep(300);
            theirs.run("INSERT INTO writer VALUES (1, 'theirs', 0, zeroblob(32))");
            held.commit();
        });
        taken.get_future().wait();
        const Transaction transaction(ours);
        QCOMPARE(ours.ask("SELECT COUNT(*) FROM writer"), QStringLiteral("1"));
    }
    void whatIsNotCommittedIsUndone() {
        const Scratch scratch;
        const Connection ours(scratch.file(), Access::ReadWrite);
        {
            const Transaction transaction(ours);
            ours.run("INSERT INTO writer VALUES (1, 'w', 0, zeroblob(32))");
        }
        QCOMPARE(ours.ask("SELECT COUNT(*) FROM writer"), QStringLiteral("0"));
    }
    void severalStatementsAtOnceAreRefused() {
        const Scratch scratch;
        const Plain plain(scratch.beside("plain.db"));
        QSqlQuery query(plain.database());
        QVERIFY(!query.exec(QStringLiteral("CREATE TABLE a (x INTEGER); CREATE TABLE b (x INTEGER)")));
        // A step of the schema with several is parted first.
        const Connection ours(scratch.beside("ours.db"), Access::ReadWrite);
        migrate(ours, {{1, "CREATE TABLE a (x INTEGER) STRICT\n----\nCREATE TABLE b (x INTEGER) STRICT"}});
        QCOMPARE(ours.ask("SELECT COUNT(*) FROM sqlite_master WHERE name IN ('a', 'b')"), QStringLiteral("2"));
    }
    void aConnectionServesOnlyItsOwnThread() {
        const Scratch scratch;
        const Plain plain(scratch.beside("plain.db"));
        const Connection ours(scratch.beside("ours.db"), Access::ReadWrite);
        bool plainServes = true;
        bool oursRefuses = false;
        QTest::ignoreMessage(QtWarningMsg, QRegularExpression(QStringLiteral("does not belong to the calling thread")));
        QTest::ignoreMessage(QtWarningMsg, QRegularExpression(QStringLiteral("does not belong to the calling thread")));
        QTest::ignoreMessage(QtWarningMsg, QRegularExpression(QStringLiteral("database not open")));
        std::thread([&] {
            plainServes = plain.database().isValid();
            try {
                ours.run("SELECT 1");
            } catch (const StoreError&) {
                oursRefuses = true;
            }
        }).join();
        QVERIFY(!plainServes);
        QVERIFY(oursRefuses);
    }
    void aStrictTableStillTakesANumberWrittenAsText() {
        const Scratch scratch;
        const Plain plain(scratch.beside("plain.db"));
        QCOMPARE(plain.errorOf("CREATE TABLE t (x INTEGER NOT NULL) STRICT"), QString());
        QVERIFY(!plain.errorOf("INSERT INTO t VALUES ('twelve')").isEmpty());
        QVERIFY(!plain.errorOf("INSERT INTO t VALUES (2.5)").isEmpty());
        QCOMPARE(plain.errorOf("INSERT INTO t VALUES ('12')"), QString());
        QCOMPARE(plain.ask("SELECT typeof(x) FROM t"), QStringLiteral("integer"));
    }
    void whereThereIsNoSharedMemoryTheOlderJournalServes() {
        // The file system without shared memory is SQLite's own "unix-dotfile".
        const Scratch scratch;
        const Connection ours("file:" + scratch.beside("dotfile.db") + "?vfs=unix-dotfile", Access::ReadWrite);
        QCOMPARE(ours.ask("PRAGMA journal_mode"), QStringLiteral("delete"));
        QCOMPARE(ours.ask("PRAGMA synchronous"), QStringLiteral("2"));
        migrate(ours, migrationSteps(Dialect::Sqlite));
        QCOMPARE(ours.ask("SELECT COUNT(*) FROM entry"), QStringLiteral("0"));
    }
    void theMarksOfTheFileRollBackWithItsFirstStep() {
        const Scratch scratch;
        const Connection ours(scratch.beside("ours.db"), Access::ReadWrite);
        QVERIFY_THROWS_EXCEPTION(StoreError, migrate(ours, {{1, "CREATE TABLE a (x INTEGER) STRICT\n----\nNO SQL"}}));
        QCOMPARE(ours.ask("PRAGMA application_id"), QStringLiteral("0"));
        QCOMPARE(ours.ask("PRAGMA user_version"), QStringLiteral("0"));
        QCOMPARE(ours.ask("SELECT COUNT(*) FROM sqlite_master"), QStringLiteral("0"));
        {
            const Transaction transaction(ours);
            ours.run("PRAGMA application_id = 7");
            ours.run("PRAGMA user_version = 7");
        }
        QCOMPARE(ours.ask("PRAGMA application_id"), QStringLiteral("0"));
        QCOMPARE(ours.ask("PRAGMA user_version"), QStringLiteral("0"));
    }
};

CROWNRING_TEST(SqliteTrapsTest, QCoreApplication)

}

#include "sqlite_traps_test.moc"
