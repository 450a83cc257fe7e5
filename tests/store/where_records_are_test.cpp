// SPDX-License-Identifier: GPL-3.0-or-later
/// A record is a file that stays where it is: what is none is not opened, and what went away is not written to.
#include "problem/faults/entry_fault.h"
#include "problem/faults/store_fault.h"
#include "scratch.h"
#include "store/connection/connection.h"
#include "store/new_record.h"
#include "test_class.h"

#include <QtTest>
#include <sys/stat.h>

#include <filesystem>

namespace where_records_are_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

namespace fs = std::filesystem;

constexpr const char* balloon = R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"})";
constexpr const char* flight = R"({"entry":"flight.logged","on":"2024-02-01","balloon":"QE-ONE","minutes":60})";

Fault faultOf(const std::vector<Problem>& problems) { return problems.at(0).fault; }

}

class WhereRecordsAreTest : public QObject {
    Q_OBJECT
private slots:
    void whatIsNoFileIsNoRecord_data() {
        QTest::addColumn<QString>("name");
        QTest::addColumn<bool>("folder");
        QTest::newRow("memory") << ":memory:" << false;
        QTest::newRow("no name") << "" << false;
        QTest::newRow("a folder") << "." << true;
        QTest::newRow("a device") << "/dev/null" << false;
        QTest::newRow("a pipe") << "pipe" << false;
    }
    /// Whoever opened a pipe would wait for ever.
    void whatIsNoFileIsNoRecord() {
        QFETCH(QString, name);
        QFETCH(bool, folder);
        QTemporaryDir place;
        const auto before = fs::current_path();
        fs::current_path(place.path().toStdString());
        QCOMPARE(::mkfifo("pipe", 0600), 0);
        const auto wanted = Fault(folder ? StoreFault::IsAFolder : StoreFault::NoFile);
        for (const auto mode : {OpenMode::Existing, OpenMode::OrCreate}) {
            const auto opened = openRecord(name.toStdString(), mode);
            QVERIFY(!opened);
            QCOMPARE(opened.error().fault, wanted);
            QCOMPARE(opened.error().code(), Code::StoreUnopened);
        }
        QVERIFY(!NewRecord::at(name.toStdString()));
        QCOMPARE(QDir().entryList(QDir::AllEntries | QDir::System | QDir::Hidden | QDir::NoDotAndDotDot),
                 QStringList("pipe"));
        fs::current_path(before);
    }
    void whatWentAwayIsNotWrittenTo_data() {
        QTest::addColumn<QByteArray>("how");
        for (const char* how : {"moved", "deleted", "replaced"})
            QTest::newRow(how) << QByteArray(how);
    }
    void whatWentAwayIsNotWrittenTo() {
        QFETCH(QByteArray, how);
        Scratch scratch;
        posted(*scratch.record, balloon);
        const auto elsewhere = scratch.beside("elsewhere");
        fs::rename(scratch.file(), elsewhere);
        if (how == "replaced")
            fs::copy_file(elsewhere, scratch.file());
        if (how == "deleted")
            fs::remove(elsewhere);
        const auto problems = problemsOf(*scratch.record, flight);
        QCOMPARE(faultOf(problems), Fault(StoreFault::Gone));
        QCOMPARE(problems.front().arguments.front().written(), scratch.file());
        QCOMPARE(scratch.record->keepPicture({"image/png", "bytes"}).error().fault, Fault(StoreFault::Gone));
        QCOMPARE(scratch.record->rebuild().error().fault, Fault(StoreFault::Gone));
        if (how != "moved")
            return;
        fs::rename(elsewhere, scratch.file());
        posted(*scratch.record, flight);
        QCOMPARE(scratch.record->lines({}).value().size(), std::size_t{2});
    }
    void aFullDiskSaysSoAndLosesNothing() {
        Scratch scratch;
        posted(*scratch.record, balloon);
        scratch.record.reset();
        const Connection connection(scratch.file(), Access::ReadWrite);
        const auto pages = connection.ask("PRAGMA page_count").toInt();
        static_cast<void>(connection.ask(QStringLiteral("PRAGMA max_page_count = %1").arg(pages)));
        try {
            const Transaction transaction(connection);
            connection.run("INSERT INTO picture VALUES (hex(zeroblob(32)), 'image/png', zeroblob(100000))");
            QFAIL("there was room");
        } catch (const StoreError& error) {
            QVERIFY2(error.is(StoreFault::DiskFull), error.what());
            QCOMPARE(error.code(), Code::StoreFailed);
        }
        connection.letGoOfLog();
        QCOMPARE(fs::file_size(scratch.file() + "-wal"), std::uintmax_t{0});
        QVERIFY(Scratch::openedAt(scratch.file())->verify().value().intact);
    }
    void aWriterIsNamedSoThatItCanBeTold() {
        Scratch scratch;
        for (const char* name : {"a\nb", "a\x1B[2J", " ",
                                 "a\xE2\x80\xAE"
                                 "b"}) {
            const auto refused = openRecord(scratch.file(), OpenMode::Existing, WriterId(name));
            QVERIFY(!refused);
            QCOMPARE(refused.error().fault, Fault(EntryFault::NotLegible));
        }
        QVERIFY(openRecord(scratch.file(), OpenMode::Existing, WriterId("the hangar")));
    }
};

CROWNRING_TEST(WhereRecordsAreTest, QCoreApplication)

}

#include "where_records_are_test.moc"
