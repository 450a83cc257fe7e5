// SPDX-License-Identifier: GPL-3.0-or-later

/// A record that something else has written to is proven as a whole before anything is said from it, and once is
/// enough: what this program writes itself, and what only reads, asks for no other proof.

#include "problem/faults/store_fault.h"
#include "store/connection/connection.h"
#include "store/scratch.h"
#include "store/shared_database.h"
#include "test_class.h"

#include <QtCore/QTemporaryDir>
#include <QtTest>

namespace proven_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* shed = R"({"entry":"balloon.entered","id":"b","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.entered","id":"i","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"flight.logged","id":"f1","on":"2024-02-01","balloon":"QE-ONE","minutes":65,"kit":["E1"]})";
constexpr const char* flight =
    R"({"entry":"flight.logged","on":"2024-03-01","balloon":"QE-ONE","minutes":60,"kit":["E1"]})";
constexpr const char* altered = "UPDATE entry SET body = replace(body, '65', '56') WHERE entry_id = 'f1'";

/// Each byte sequence `from` of the file becomes `to`, as a tool for disks would do it.
void overwrite(const std::string& file, const QByteArray& from, const QByteArray& to) {
    QFile bytes(QString::fromStdString(file));
    QVERIFY(bytes.open(QIODevice::ReadWrite));
    auto all = bytes.readAll();
    QVERIFY(all.contains(from) && from.size() == to.size());
    all.replace(from, to);
    QVERIFY(bytes.seek(0));
    QCOMPARE(bytes.write(all), all.size());
}

bool isProven(Record& record) { return record.isProven().value(); }

/// Nothing is said from it and nothing is written into it; its journal can be read.
void saysNothing(Record& record, StoreFault why) {
    const auto reason = record.readOnlyReason();
    QVERIFY(reason && isDamage(reason->fault));
    QCOMPARE(reason->fault, Fault(why));
    const auto on = day("2024-06-01");
    QCOMPARE(record.facts({}, on).error(), *reason);
    QCOMPARE(record.adoptions(on).error(), *reason);
    QCOMPARE(record.balloons(on).error(), *reason);
    QCOMPARE(record.useLogs({}, on, on).error(), *reason);
    QCOMPARE(problemsOf(record, flight).front().fault, Fault(why));
    QCOMPARE(record.keepPicture({"image/png", "a tear"}).error(), *reason);
    QCOMPARE(record.lines({}).value().size(), std::size_t{3});
}

}

class ProvenTest : public QObject {
    Q_OBJECT

private slots:
    void whatIsMadeAndWrittenHereIsProven() {
        Scratch scratch;
        QVERIFY(isProven(*scratch.record));
        posted(*scratch.record, shed);
        QVERIFY(isProven(*scratch.record));
        static_cast<void>(scratch.record->keepPicture({"image/png", "a tear"}).value());
        QVERIFY(isProven(*scratch.record));
        scratch.reopen();
        QVERIFY(isProven(*scratch.record));
        QVERIFY(!problemsOf(*scratch.record, R"({"entry":"flight.logged","on":"2024-03-01","balloon":"NO"})").empty());
        QVERIFY(isProven(*scratch.record));
        const auto beside = openRecord(scratch.file(), OpenMode::Existing, WriterId("beside")).value();
        posted(*beside, flight); // by the same program, which tells where both look
        QVERIFY(isProven(*scratch.record) && isProven(*beside));
    }
    void aCopyIsProvenOnce() {
        Scratch scratch;
        posted(*scratch.record, shed);
        scratch.record.reset();
        Scratch copy(scratch.file());
        QVERIFY(!isProven(*copy.record));
        posted(*copy.record, flight); // what was not proven before is not by being written to
        QVERIFY(!isProven(*copy.record));
        QVERIFY(copy.record->verify().value().intact);
        QVERIFY(isProven(*copy.record));
        copy.reopen();
        QVERIFY(isProven(*copy.record));
    }
    void whatWasStoppedProvesNothing() {
        Scratch scratch;
        posted(*scratch.record, shed);
        scratch.record.reset();
        Scratch copy(scratch.file());
        std::string many;
        for (int i = 0; i < 6000; ++i)
            many += std::string(flight) + "\n";
        posted(*copy.record, many);
        QVERIFY(copy.record->verify([](double) { return false; }).value().intact);
        QVERIFY(!isProven(*copy.record));
    }
    void bytesOfAnEntryThatNoAnswerRestsOn() {
        Scratch scratch;
        posted(*scratch.record, shed);
        scratch.record.reset();
        overwrite(scratch.file(), R"("minutes":65)", R"("minutes":56)");
        scratch.reopen();
        QVERIFY(!isProven(*scratch.record));
        QVERIFY(!scratch.record->verify().value().intact);
        QVERIFY(!isProven(*scratch.record));
        saysNothing(*scratch.record, StoreFault::EntryAltered);
        QCOMPARE(scratch.record->rebuild().error().fault, Fault(StoreFault::JournalAltered));
        saysNothing(*scratch.record, StoreFault::EntryAltered);
        scratch.reopen();
        QVERIFY(!isProven(*scratch.record)); // nor was it by being closed
    }
    void underAnOpenProgram() {
        Scratch scratch;
        posted(*scratch.record, shed);
        {
            const Connection other(scratch.file(), Access::ReadWrite);
            other.run("DROP TRIGGER entry_is_never_changed");
            other.run(altered);
        }
        QVERIFY(!isProven(*scratch.record));
        // What another connection found is heeded as what is found here.
        const auto beside = openRecord(scratch.file(), OpenMode::Existing).value();
        scratch.record->heed(beside->verify().value());
        saysNothing(*scratch.record, StoreFault::EntryAltered);
    }
    void whatIsBesideTheJournalIsMendedByTheRebuild() {
        Scratch scratch;
        posted(*scratch.record, shed);
        scratch.record.reset();
        Connection(scratch.file(), Access::ReadWrite)
            .run("UPDATE flight SET minutes = 1, minutes_to = minutes_to - 64 WHERE entry_id = 'f1'");
        scratch.reopen();
        QVERIFY(!isProven(*scratch.record));
        QVERIFY(scratch.record->verify().value().rebuildMends);
        saysNothing(*scratch.record, StoreFault::NotIntact);
        QVERIFY(scratch.record->rebuild());
        QVERIFY(!scratch.record->readOnlyReason());
        posted(*scratch.record, flight);
        QVERIFY(scratch.record->verify().value().intact);
        QVERIFY(isProven(*scratch.record));
    }
    void aPhotographThatIsAnotherOne() {
        Scratch scratch;
        posted(*scratch.record, shed);
        static_cast<void>(scratch.record->keepPicture({"image/png", "the wire"}).value());
        scratch.record.reset();
        overwrite(scratch.file(), "the wire", "the hose");
        scratch.reopen();
        QVERIFY(!isProven(*scratch.record));
        QVERIFY(!scratch.record->verify().value().intact);
        saysNothing(*scratch.record, StoreFault::RecordAltered);
    }
    void whereNothingCanBeKeptItIsProvenByEach() {
        const auto before = qgetenv("XDG_CACHE_HOME");
        qputenv("XDG_CACHE_HOME", "/proc/none");
        Scratch scratch;
        posted(*scratch.record, shed);
        QVERIFY(isProven(*scratch.record));
        scratch.reopen();
        QVERIFY(!isProven(*scratch.record));
        QVERIFY(scratch.record->verify().value().intact);
        QVERIFY(isProven(*scratch.record));
        qputenv("XDG_CACHE_HOME", before);
    }
    void onAServer() {
        NEEDS_SHARED;
        auto here = openedShared();
        posted(*here, shed);
        static_cast<void>(here->verify().value());
        QVERIFY(isProven(*here));
        posted(*openedShared("there"), flight);
        QVERIFY(isProven(*here)); // what is added leaves what was there as it was
        {
            const Connection other(sharedLocation(), Access::ReadWrite);
            other.run("ALTER TABLE entry DISABLE TRIGGER ALL");
            other.run(altered);
            other.run("ALTER TABLE entry ENABLE TRIGGER ALL");
        }
        QTRY_VERIFY_WITH_TIMEOUT(!isProven(*here), 30'000); // a server counts a moment later
        QVERIFY(!here->verify().value().intact);
        QVERIFY(isDamage(here->readOnlyReason().value().fault));
        QVERIFY(!here->facts({}, day("2024-06-01")));
    }
};

CROWNRING_TEST(ProvenTest, QCoreApplication)

}

#include "proven_test.moc"
