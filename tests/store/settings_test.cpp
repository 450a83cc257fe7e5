// SPDX-License-Identifier: GPL-3.0-or-later
/// The measured traps of SQLite through Qt 6.4: each connection must have the settings that a record needs.
#include "scratch.h"
#include "store/connection/connection.h"
#include "store/connection/statement.h"
#include "store/schema/migration.h"
#include "test_class.h"

#include <QtSql/QSqlError>
#include <QtTest>

namespace settings_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

struct Opened {
    QTemporaryDir folder;
    Connection connection{folder.filePath("t.crownring").toStdString(), Access::ReadWrite};
    Opened() { migrate(connection, migrationSteps(Dialect::Sqlite)); }
    bool refused(const char* statement) {
        try {
            connection.run(QString::fromLatin1(statement));
        } catch (const StoreError&) {
            return true;
        }
        return false;
    }
    void putEntry(const char* on) {
        connection.run("INSERT OR IGNORE INTO writer VALUES (1, 'w', 0, zeroblob(32))");
        connection.run(
            QStringLiteral("INSERT INTO entry VALUES (1, 'e', 'k', '%1', 1, 1, 'now', zeroblob(32), '{}')").arg(on));
    }
};

}

class SettingsTest : public QObject {
    Q_OBJECT
private slots:
    void everyConnectionHasThem() {
        Opened opened;
        const auto is = [&](const char* pragma) { return opened.connection.ask(QStringLiteral("PRAGMA ") + pragma); };
        QCOMPARE(is("foreign_keys"), QStringLiteral("1"));
        QCOMPARE(is("journal_mode"), QStringLiteral("wal"));
        QCOMPARE(is("synchronous"), QStringLiteral("2"));
        QCOMPARE(is("recursive_triggers"), QStringLiteral("1"));
        QCOMPARE(is("trusted_schema"), QStringLiteral("0"));
        QCOMPARE(is("busy_timeout"), QStringLiteral("5000"));
        QCOMPARE(is("application_id").toLongLong(), qlonglong{applicationId});
        QCOMPARE(is("user_version"), QString::number(migrationSteps(Dialect::Sqlite).back().version));
    }
    void aConnectionThatOnlyReadsHasThemToo() {
        const Scratch scratch;
        const Connection reader(scratch.file(), Access::ReadOnly);
        for (const auto& [pragma, value] : std::map<QString, QString>{
                 {"foreign_keys", "1"}, {"recursive_triggers", "1"}, {"trusted_schema", "0"}, {"busy_timeout", "5000"}})
            QCOMPARE(reader.ask(QStringLiteral("PRAGMA ") + pragma), value);
        QVERIFY_THROWS_EXCEPTION(StoreError, reader.run("DELETE FROM writer"));
    }
    void everyTableIsStrict() {
        Opened opened;
        QCOMPARE(opened.connection.ask("SELECT COUNT(*) FROM pragma_table_list WHERE schema = 'main' AND type = 'table'"
                                       " AND strict = 0 AND name NOT LIKE 'sqlite_%'"),
                 QStringLiteral("0"));
        QVERIFY(opened.refused("INSERT INTO name VALUES (1, 'not a number', 'x')"));
        QVERIFY(opened.refused("INSERT INTO name VALUES (1, 2.5, 'x')"));
    }
    void theJournalIsAppendOnly() {
        Opened opened;
        opened.putEntry("2024-02-29");
        QVERIFY(opened.refused("UPDATE entry SET body = '{\"changed\":1}'"));
        QVERIFY(opened.refused("DELETE FROM entry"));
        // Without recursive_triggers this goes round the guard against deletion.
        QVERIFY(opened.refused(
            "INSERT OR REPLACE INTO entry VALUES (1, 'e', 'k', '2024-02-29', 1, 1, 'now', zeroblob(32), 'other')"));
        QCOMPARE(opened.connection.ask("SELECT body FROM entry"), QStringLiteral("{}"));
    }
    void aDayThatDoesNotExistIsRefused() {
        Opened opened;
        for (const char* wrong : {"2023-02-29", "2023-02-30", "2023-2-3", "2023-02-03 10:00", "now", ""}) {
            bool refused = false;
            try {
                opened.putEntry(wrong);
            } catch (const StoreError&) {
                refused = true;
            }
            QVERIFY2(refused, wrong);
        }
        opened.putEntry("2024-02-29");
    }
    void referencesMustLeadSomewhere() {
        Opened opened;
        QVERIFY(opened.refused("INSERT INTO reading VALUES (77, 0, 'x')"));
    }
    void aWriterTakesTheLockAtOnceAndASecondOneIsToldThatItIsBusy() {
        Scratch scratch;
        Connection other(scratch.file(), Access::ReadWrite);
        other.run("PRAGMA busy_timeout = 50");
        Connection holder(scratch.file(), Access::ReadWrite);
        Transaction held(holder);
        try {
            Transaction second(other);
            QFAIL("two writers at once");
        } catch (const StoreError& error) {
            QCOMPARE(error.code(), Code::StoreBusy);
        }
    }
    void oneOpenConnectionReadsWhileAnotherWrites() {
        Scratch scratch;
        Connection reader(scratch.file(), Access::ReadWrite);
        Connection writer(scratch.file(), Access::ReadWrite);
        Transaction transaction(writer);
        QCOMPARE(reader.ask("SELECT COUNT(*) FROM entry"), QStringLiteral("0"));
    }
};

CROWNRING_TEST(SettingsTest, QCoreApplication)

}

#include "settings_test.moc"
