// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/store_fault.h"
#include "record/chain/chain.h"
#include "said.h"
#include "scratch.h"
#include "store/backup.h"
#include "store/schema/migration.h"
#include "test_class.h"

#include <QtCore/QDir>
#include <QtTest>

namespace backup_and_migration_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* flightOnRecord = R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"flight.logged","on":"2024-02-01","balloon":"QE-ONE","minutes":60})";

std::int64_t minutesIn(Record& record) {
    return record.facts({std::nullopt, {ItemId("E1")}}, day("2025-01-01")).value().front().clock.minutes->value();
}

}

class BackupAndMigrationTest : public QObject {
    Q_OBJECT
private slots:
    void aPlainCopyOfAnOpenRecordLacksWhatWasWrittenLast() {
        Scratch scratch;
        posted(*scratch.record, flightOnRecord);
        QVERIFY(QFile::copy(QString::fromStdString(scratch.file()), QString::fromStdString(scratch.beside("copied"))));
        const auto copied = openRecord(scratch.beside("copied"), OpenMode::Existing);
        QVERIFY(!copied || copied.value()->verify().value().entries == 0);
    }
    void aBackupHasEverything() {
        Scratch scratch;
        posted(*scratch.record, flightOnRecord);
        const auto file = scratch.beside("backup of Bjørn's balloons.crownring");
        QVERIFY(scratch.record->backUpTo(file));
        const auto copy = openRecord(file, OpenMode::Existing);
        QCOMPARE(minutesIn(**copy), 60);
        QVERIFY((*copy)->verify().value().intact);
    }
    void aBackupReplacesNothing() {
        Scratch scratch;
        posted(*scratch.record, flightOnRecord);
        for (const auto replace : {Replace::Never, Replace::Asked})
            QCOMPARE(scratch.record->backUpTo(scratch.file(), replace).error().code(), Code::FileUnwritable);
    }
    void aCopyThatDoesNotPassIsNotKept_data() {
        QTest::addColumn<QByteArray>("alteration");
        QTest::newRow("of an entry") << QByteArray(
            "UPDATE entry SET body = replace(body, '60', '61') WHERE kind = 'flight.logged'");
        QTest::newRow("of what was computed") << QByteArray("UPDATE flight SET minutes = 61");
        QTest::newRow("of what tells it at once") << QByteArray("UPDATE tally SET row_sum = row_sum + 1");
    }
    void aCopyThatDoesNotPassIsNotKept() {
        QFETCH(QByteArray, alteration);
        Scratch scratch;
        posted(*scratch.record, flightOnRecord);
        {
            const Connection other(scratch.file(), Access::ReadWrite);
            other.run("DROP TRIGGER entry_is_never_changed");
            other.run(QString::fromUtf8(alteration));
        }
        const auto refused = scratch.record->backUpTo(scratch.beside("copy"));
        QCOMPARE(refused.error().code(), Code::StoreFailed);
        QVERIFY(spokenMessage(refused.error()).find("not intact") != std::string::npos);
        QVERIFY(!QFile::exists(QString::fromStdString(scratch.beside("copy"))));
        QVERIFY(!QFile::exists(QString::fromStdString(scratch.beside("copy.part"))));
    }
    void closingLeavesOneFileThatIsTheWholeTruth_data() {
        QTest::addColumn<bool>("watched");
        QTest::newRow("the last to close") << false;
        QTest::newRow("while another reads") << true; // then SQLite by itself leaves the side file as it is
    }
    void closingLeavesOneFileThatIsTheWholeTruth() {
        QFETCH(bool, watched);
        Scratch scratch;
        const auto reader = watched ? std::make_unique<Connection>(scratch.file(), Access::ReadOnly) : nullptr;
        posted(*scratch.record, flightOnRecord);
        const QFileInfo side(QString::fromStdString(scratch.file() + "-wal"));
        QVERIFY(side.size() > 0);
        scratch.record.reset();
        QCOMPARE(QFileInfo(side.filePath()).size(), 0); // gone, or empty
        QVERIFY(QFile::copy(QString::fromStdString(scratch.file()), QString::fromStdString(scratch.beside("copied"))));
        QCOMPARE(minutesIn(**openRecord(scratch.beside("copied"), OpenMode::Existing)), 60);
    }
    void whatIsNotThereIsNotMadeByReading() {
        Scratch scratch;
        const auto absent = openRecord(scratch.beside("absent"), OpenMode::Existing);
        QCOMPARE(absent.error().code(), Code::StoreUnopened);
        QVERIFY(!QFile::exists(QString::fromStdString(scratch.beside("absent"))));
    }
    void filesOfOthersAreLeftAlone() {
        Scratch scratch;
        {
            Connection other(scratch.beside("other.db"), Access::ReadWrite);
            other.run("CREATE TABLE recipe (name TEXT)");
        }
        QCOMPARE(openRecord(scratch.beside("other.db"), OpenMode::OrCreate).error().code(), Code::StoreForeign);
        QFile text(QString::fromStdString(scratch.beside("letter.txt")));
        QVERIFY(text.open(QIODevice::WriteOnly));
        text.write(QByteArray(5000, 'x'));
        text.close();
        QCOMPARE(openRecord(scratch.beside("letter.txt"), OpenMode::OrCreate).error().code(), Code::StoreForeign);
    }
    void aLaterRecordIsReadAndNotWritten() {
        Scratch scratch;
        posted(*scratch.record, flightOnRecord);
        scratch.record.reset();
        Connection(scratch.file(), Access::ReadWrite).run("PRAGMA user_version = 999");
        const auto later = openRecord(scratch.file(), OpenMode::OrCreate);
        QVERIFY(spokenMessage((*later)->readOnlyReason().value()).find("schema 999") != std::string::npos);
        QCOMPARE(minutesIn(**later), 60);
        const auto problems =
            problemsOf(**later, R"({"entry":"flight.logged","on":"2024-03-01","balloon":"QE-ONE","minutes":60})");
        QCOMPARE(problems.front().code(), Code::StoreNewer);
        QCOMPARE((*later)->rebuild().error().code(), Code::StoreNewer);
        QCOMPARE(minutesIn(**later), 60);
    }
    /// Who changes it turns off nothing that tells of other changes.
    void theNumberOfASchemaHidesNothing_data() {
        QTest::addColumn<int>("number");
        for (const int number : {-1, 0, 3, 9, 11, 999})
            QTest::addRow("%d", number) << number;
    }
    void theNumberOfASchemaHidesNothing() {
        QFETCH(const int, number);
        Scratch scratch;
        posted(*scratch.record, flightOnRecord);
        scratch.record.reset();
        const Connection beside(scratch.file(), Access::ReadWrite);
        beside.run(QStringLiteral("PRAGMA user_version = %1").arg(number));
        {
            const auto record = openRecord(scratch.file(), OpenMode::Existing).value();
            QVERIFY(record->readOnlyReason());
            QVERIFY(record->backUpTo(scratch.beside("copy")).error().fault == Fault(StoreFault::CopyBroken));
            QVERIFY(!QFile::exists(QString::fromStdString(scratch.beside("copy"))));
            QCOMPARE(minutesIn(*record), 60);
            const auto verdict = record->verify().value();
            QVERIFY(!verdict.intact);
            const auto why = spoken(*verdict.reason);
            QVERIFY2(why.find("step " + std::to_string(number)) != std::string::npos, why.c_str());
        }
        beside.run("UPDATE flown SET minutes = minutes - 1");
        const auto record = openRecord(scratch.file(), OpenMode::Existing).value();
        const auto facts = record->facts({std::nullopt, {ItemId("E1")}}, day("2025-01-01"));
        QVERIFY(!facts && isDamage(facts.error().fault));
        QCOMPARE(QDir(QFileInfo(QString::fromStdString(scratch.file())).path()).entryList({"*.before-*"}),
                 QStringList());
    }
    /// What it accounts for, and how, is not known here.
    void ofALaterSchemaNothingIsSaidThatRestsOnIt() {
        Scratch scratch;
        posted(*scratch.record, flightOnRecord);
        scratch.record.reset();
        {
            const Connection connection(scratch.file(), Access::ReadWrite);
            auto steps = migrationSteps(Dialect::Sqlite);
            steps.push_back({steps.back().version + 1, "CREATE TABLE extra (x INTEGER) STRICT"});
            migrate(connection, steps);
        }
        const auto later = openRecord(scratch.file(), OpenMode::Existing).value();
        QCOMPARE(later->readOnlyReason()->code(), Code::StoreNewer);
        QCOMPARE(later->facts({std::nullopt, {ItemId("E1")}}, day("2025-01-01")).error().code(), Code::StoreNewer);
        QCOMPARE(later->verify().error().code(), Code::StoreNewer);
        QVERIFY(later->line(EntryId("none"))); // the journal is read
    }
    void aStepIsAppliedOnceAndWholly() {
        Scratch scratch;
        posted(*scratch.record, flightOnRecord);
        scratch.record.reset();
        Connection connection(scratch.file(), Access::ReadWrite);
        auto steps = migrationSteps(Dialect::Sqlite);
        const int head = steps.back().version;
        steps.push_back({head + 1, "CREATE TABLE extra (x INTEGER) STRICT\n----\nINSERT INTO extra VALUES (1)"});
        migrate(connection, steps);
        migrate(connection, steps);
        QCOMPARE(connection.ask("SELECT COUNT(*) FROM extra"), QStringLiteral("1"));
        QCOMPARE(schemaVersion(connection), head + 1);
        steps.push_back({head + 2, "CREATE TABLE more (x INTEGER) STRICT\n----\nTHIS IS NOT SQL"});
        QVERIFY_THROWS_EXCEPTION(StoreError, migrate(connection, steps));
        QCOMPARE(schemaVersion(connection), head + 1);
        QCOMPARE(connection.ask("SELECT COUNT(*) FROM sqlite_master WHERE name = 'more'"), QStringLiteral("0"));
        QCOMPARE(connection.ask("SELECT COUNT(*) FROM entry"), QStringLiteral("4"));
    }
    void theStepsOfTheSharedRecordAreNeverEdited() {
        // Those of SQLite are held against the frozen records, see frozen_record_test.
        QCOMPARE(hex(sha256(migrationSteps(Dialect::Postgres).front().text)),
                 std::string("f20ee247ae863a610a36a3aef28b0ccfc5a37360e63bd1ae1e10b288e216d2d5"));
    }
    void anOlderRecordIsBackedUpBeforeItIsChanged() {
        Scratch scratch;
        posted(*scratch.record, flightOnRecord);
        scratch.record.reset();
        auto steps = migrationSteps(Dialect::Sqlite);
        steps.push_back({steps.back().version + 1, "CREATE TABLE extra (x INTEGER) STRICT"});
        {
            Connection connection(scratch.file(), Access::ReadWrite);
            migrateWithBackup(connection, steps, scratch.file());
            QCOMPARE(schemaVersion(connection), steps.back().version);
            migrateWithBackup(connection, steps, scratch.file()); // nothing to do, nothing to back up
        }
        const QFileInfo file(QString::fromStdString(scratch.file()));
        const auto backups = file.dir().entryList({file.fileName() + ".before-*"});
        QCOMPARE(backups.size(), 1);
        const auto kept = openRecord(file.dir().filePath(backups.front()).toStdString(), OpenMode::Existing);
        QVERIFY(!(*kept)->readOnlyReason());
        QCOMPARE(minutesIn(**kept), 60);
    }
};

CROWNRING_TEST(BackupAndMigrationTest, QCoreApplication)

}

#include "backup_and_migration_test.moc"
