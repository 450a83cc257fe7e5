// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/store_fault.h"
#include "said.h"
#include "scratch.h"
#include "store/connection/connection.h"
#include "test_class.h"

#include <QtTest>

namespace tampering_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

/// What someone with the file in hand can do: the guards are in the file and go first.
void tamper(Scratch& scratch, const char* statement) {
    scratch.record.reset();
    {
        Connection connection(scratch.file(), Access::ReadWrite);
        connection.run("DROP TRIGGER entry_is_never_changed");
        connection.run("DROP TRIGGER entry_is_never_deleted");
        connection.run("PRAGMA foreign_keys = OFF");
        connection.run(QString::fromLatin1(statement));
    }
    scratch.reopen();
}

/// Beside the program, with the guards in their place.
void alter(Scratch& scratch, const QString& statement) {
    scratch.record.reset();
    Connection(scratch.file(), Access::ReadWrite).run(statement);
    scratch.reopen();
}

const char* const limitOfAType =
    R"({"entry":"limit.stated","on":"2024-01-01","type":"T","kind":"envelope","quantity":"grab-strength","unit":"N","least":130,"source":"manual"})";

void fill(Record& record) {
    posted(record, R"({"entry":"balloon.entered","id":"b","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"flight.logged","id":"f1","on":"2024-02-01","balloon":"QE-ONE","minutes":60}
{"entry":"flight.logged","id":"f2","on":"2024-02-02","balloon":"QE-ONE","minutes":61}
{"entry":"flight.logged","id":"f3","on":"2024-02-03","balloon":"QE-ONE","minutes":62})");
}

}

class TamperingTest : public QObject {
    Q_OBJECT
private slots:
    void anUntouchedRecordIsIntact() {
        Scratch scratch;
        fill(*scratch.record);
        scratch.reopen();
        const auto verdict = scratch.record->verify().value();
        QVERIFY(verdict.intact);
        QCOMPARE(verdict.entries, 4);
        QVERIFY(!verdict.firstBad);
    }
    void whatWasChangedIsNamed_data() {
        QTest::addColumn<QString>("statement");
        QTest::addColumn<QString>("firstBad");
        QTest::newRow("minutes") << "UPDATE entry SET body = replace(body, '61', '16') WHERE entry_id = 'f2'"
                                 << "f2";
        QTest::newRow("the column beside the text") << "UPDATE entry SET kind = 'item.fitted' WHERE entry_id = 'f2'"
                                                    << "f2";
        QTest::newRow("the date beside the text") << "UPDATE entry SET dated_on = '2024-02-09' WHERE entry_id = 'f2'"
                                                  << "f2";
        QTest::newRow("when it was recorded")
            << "UPDATE entry SET recorded_at = '2020-01-01T00:00:00Z' WHERE entry_id = 'f1'"
            << "f1";
        QTest::newRow("its hash") << "UPDATE entry SET hash = zeroblob(32) WHERE entry_id = 'f3'"
                                  << "f3";
        QTest::newRow("one taken out") << "DELETE FROM entry WHERE entry_id = 'f1'"
                                       << "f2";
        QTest::newRow("the last one taken out") << "DELETE FROM entry WHERE entry_id = 'f3'"
                                                << "";
        QTest::newRow("its writer renamed") << "UPDATE writer SET writer_id = 'another'"
                                            << "b";
    }
    void whatWasChangedIsNamed() {
        QFETCH(QString, statement);
        QFETCH(QString, firstBad);
        Scratch scratch;
        fill(*scratch.record);
        tamper(scratch, statement.toLatin1().constData());
        const auto verdict = scratch.record->verify().value();
        QVERIFY(!verdict.intact);
        QCOMPARE(QString::fromStdString(verdict.firstBad.value_or(EntryId()).text()), firstBad);
        QVERIFY(verdict.reason && !spoken(*verdict.reason).empty());
    }
    void anEntryThatIsGoneIsMissedByWhoeverAsksForItsKind() {
        Scratch scratch;
        posted(*scratch.record, limitOfAType);
        const Told limits{Subject::Type, {}, {kindName<LimitStated>()}, CivilDate::last()};
        QCOMPARE(scratch.record->told(limits).value().size(), std::size_t{1});
        tamper(scratch, "DELETE FROM entry WHERE kind = 'limit.stated'");
        QCOMPARE(scratch.record->told(limits).error().fault, Fault(StoreFault::JournalLacks));
    }
    void whatIsNotBuiltAsOursIsOnlyRead_data() {
        QTest::addColumn<QString>("statement");
        QTest::newRow("a trigger that eats defects") << "CREATE TRIGGER zz AFTER INSERT ON defect_mark BEGIN"
                                                        " DELETE FROM defect_mark; END";
        QTest::newRow("a trigger called nearly as the database's own are")
            << "CREATE TRIGGER sqliteZ AFTER INSERT ON defect_mark BEGIN DELETE FROM defect_mark; END";
        QTest::newRow("a guard that is gone") << "DROP TRIGGER entry_is_never_changed";
        QTest::newRow("a table more") << "CREATE TABLE more (what TEXT)";
        QTest::newRow("an index more") << "CREATE INDEX more ON flight (at)";
    }
    void whatIsNotBuiltAsOursIsOnlyRead() {
        QFETCH(QString, statement);
        Scratch scratch;
        fill(*scratch.record);
        alter(scratch, statement);
        const auto reason = scratch.record->readOnlyReason();
        QVERIFY(reason && reason->fault == Fault(StoreFault::OtherSchema));
        QVERIFY(words::mend(*reason).contains(QStringLiteral("backup")));
        const auto refused = problemsOf(
            *scratch.record, R"({"entry":"flight.logged","on":"2024-03-01","balloon":"QE-ONE","minutes":60})");
        QCOMPARE(refused.front().fault, Fault(StoreFault::OtherSchema));
        QCOMPARE(scratch.record->rebuild().error().fault, Fault(StoreFault::OtherSchema));
        QCOMPARE(scratch.record->flights(Registration("QE-ONE"), day("2024-01-01"), day("2024-12-31")).value().size(),
                 std::size_t{3});
        QVERIFY(!scratch.record->verify().value().intact);
    }
    /// The next item or balloon would get the number of one of them, and be refused.
    void aTallyOfNothingIsFound() {
        Scratch scratch;
        fill(*scratch.record);
        alter(scratch, "INSERT INTO tally SELECT p.part, (SELECT MAX(name_no) FROM name) + 2, 3, 12345 FROM"
                       " (SELECT DISTINCT part FROM tally WHERE subject_no > 0) p");
        const auto verdict = scratch.record->verify().value();
        QVERIFY(!verdict.intact && verdict.rebuildMends);
        QCOMPARE(verdict.projection, std::string("tally"));
        QVERIFY(scratch.record->rebuild());
        QVERIFY(scratch.record->verify().value().intact);
    }
    void aStepThatIsNotNotedAsItIsTakenIsFound_data() {
        QTest::addColumn<QString>("statement");
        QTest::newRow("another text") << "UPDATE migration SET checksum = 'abc' WHERE version = 2";
        QTest::newRow("one that is not there") << "DELETE FROM migration WHERE version = 3";
        QTest::newRow("one more") << "INSERT INTO migration VALUES (99, 'abc', '2024-01-01T00:00:00Z')";
    }
    void aStepThatIsNotNotedAsItIsTakenIsFound() {
        QFETCH(QString, statement);
        Scratch scratch;
        fill(*scratch.record);
        alter(scratch, statement);
        const auto verdict = scratch.record->verify().value();
        QVERIFY(!verdict.intact);
        QVERIFY(words::said(*verdict.reason).contains(QStringLiteral("step")));
    }
    void aPhotographThatIsGoneIsMissed() {
        Scratch scratch;
        fill(*scratch.record);
        const auto kept = scratch.record->keepPicture({"image/png", "the wire"}).value();
        static_cast<void>(scratch.record->keepPicture({"image/png", "the hose"}).value());
        QVERIFY(scratch.record->verify().value().intact);
        Connection(scratch.file(), Access::ReadWrite)
            .run(QStringLiteral("DELETE FROM picture WHERE digest = '%1'").arg(QString::fromStdString(kept)));
        const auto verdict = scratch.record->verify().value();
        QVERIFY(!verdict.intact);
        QVERIFY(words::said(*verdict.reason).contains("photographs"));
        // A backup has it. Without one the record goes on as it is.
        QVERIFY(scratch.record->rebuild());
        QVERIFY(scratch.record->verify().value().intact);
    }
    void twoWritersHaveTwoChains() {
        Scratch scratch;
        fill(*scratch.record);
        scratch.record.reset();
        {
            const auto second = openRecord(scratch.file(), OpenMode::Existing, WriterId("second"));
            posted(**second,
                   R"({"entry":"flight.logged","id":"g1","on":"2024-03-01","balloon":"QE-ONE","minutes":60})");
        }
        scratch.reopen();
        posted(*scratch.record,
               R"({"entry":"flight.logged","id":"f4","on":"2024-03-02","balloon":"QE-ONE","minutes":60})");
        QVERIFY(scratch.record->verify().value().intact);
        QCOMPARE(scratch.record->line(EntryId("g1")).value()->writer.text(), std::string("second"));
        tamper(scratch, "UPDATE entry SET body = replace(body, '60', '06') WHERE entry_id = 'g1'");
        QCOMPARE(scratch.record->verify().value().firstBad->text(), std::string("g1"));
    }
    void progressIsToldAndMayStop() {
        Scratch scratch;
        fill(*scratch.record);
        std::string many;
        for (int i = 0; i < 6000; ++i)
            many += R"({"entry":"flight.logged","on":"2024-04-01","balloon":"QE-ONE","minutes":60})"
                    "\n";
        posted(*scratch.record, many);
        int told = 0;
        const auto verdict = scratch.record->verify([&](double share) {
            ++told;
            return share > 1;
        });
        QCOMPARE(told, 1);
        QVERIFY(verdict.value().intact);
        QCOMPARE(spoken(verdict.value().reason.value()), std::string("stopped before the end"));
    }
};

CROWNRING_TEST(TamperingTest, QCoreApplication)

}

#include "tampering_test.moc"
