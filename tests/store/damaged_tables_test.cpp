// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/store_fault.h"
#include "said.h"
#include "scratch.h"
#include "store/connection/connection.h"
#include "test_class.h"

#include <QtTest>

namespace damaged_tables_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

void fill(Record& record) {
    posted(record,
           R"({"entry":"balloon.entered","id":"b","on":"2024-01-01","balloon":"QE-ONE","operations":["for-hire"]}
{"entry":"item.entered","id":"i","on":"2024-01-01","item":"E1","kind":"envelope","serial":"1","made":"2020-05"}
{"entry":"item.fitted","id":"t","on":"2024-01-02","item":"E1","balloon":"QE-ONE"}
{"entry":"item.fitted","id":"u","on":"2024-01-03","item":"E1","balloon":"QE-ONE"}
{"entry":"flight.logged","id":"f","on":"2024-02-01","balloon":"QE-ONE","minutes":60}
{"entry":"flight.logged","id":"g","on":"2024-02-02","balloon":"QE-ONE","minutes":60,"kit":["E1"]}
{"entry":"requirement.done","id":"d","on":"2024-02-03","item":"E1","requirement":"annual"}
{"entry":"event.reported","id":"o","on":"2024-02-04","item":"E1","event":"over-temperature","temp_c":130}
{"entry":"defect.found","id":"x","on":"2024-02-05","item":"E1","defect":"tear","what":"a tear","severity":"minor"}
{"entry":"reading.taken","id":"r","on":"2024-02-06","item":"E1","quantity":"grab-strength","value":300,"unit":"N","gore":3,"row":2}
{"entry":"repair.made","id":"p","on":"2024-02-07","item":"E1","method":"patch","gore":3,"row":2}
{"entry":"fabric.stated","id":"s","on":"2024-02-07","item":"E1","lot":"L1"}
{"entry":"programme.adopted","id":"a","on":"2024-02-08","everything":true,"programme":"part-ml-hot-air"}
{"entry":"entry.corrected","id":"c","on":"2024-02-09","replaces":"f","with":{"minutes":61}}
{"entry":"entry.corrected","id":"k","on":"2024-02-10","replaces":"c","with":{"note":"by the log"}})");
}

void damage(Scratch& scratch, const QByteArray& statement) {
    scratch.record.reset();
    {
        const Connection connection(scratch.file(), Access::ReadWrite);
        connection.run("PRAGMA foreign_keys = OFF");
        connection.run(QString::fromUtf8(statement));
    }
    scratch.reopen();
}

/// Everything that a record can be asked; what it refused.
std::vector<Problem> askedEverything(Record& record) {
    std::vector<Problem> refused;
    const auto keep = [&](const auto& answer) {
        if (!answer)
            refused.push_back(answer.error());
    };
    const auto on = day("2026-01-01");
    keep(record.facts({}, on));
    keep(record.facts({Registration("QE-ONE"), {}}, on));
    keep(record.facts({{}, {ItemId("E1")}}, on));
    keep(record.adoptions(on));
    keep(record.balloons(on));
    keep(record.flights(Registration("QE-ONE"), day("2020-01-01"), on));
    keep(record.questions());
    keep(record.unreadable());
    keep(record.told({Subject::Item, "E1", {}, on}));
    keep(record.fabric({}, on, [](const FabricHistory&) {}));
    keep(record.clocks({{ItemId("E1"), on}}));
    keep(record.history({}, ItemId("E1"), on, 100));
    keep(record.history(Registration("QE-ONE"), {}, on, 100));
    keep(record.lines({}));
    keep(record.line(EntryId("f")));
    keep(record.root(EntryId("k")));
    return refused;
}

}

class DamagedTablesTest : public QObject {
    Q_OBJECT
private slots:
    void theRecordAsItIsAnswersEverything() {
        Scratch scratch;
        fill(*scratch.record);
        for (const auto& problem : askedEverything(*scratch.record))
            QFAIL(text(problem).c_str());
    }
    void whatNothingCanBeMadeOfIsRefusedWithItsPlace_data() {
        QTest::addColumn<QByteArray>("statement");
        QTest::addColumn<QString>("table");
        QTest::addColumn<QString>("row");
        const auto row = [](const char* name, const char* statement, const char* table, const char* part) {
            QTest::newRow(name) << QByteArray(statement) << QString::fromLatin1(table) << QString::fromLatin1(part);
        };
        row("a kind of question beyond the last", "UPDATE question SET kind = 999", "question", "kind=999");
        row("a kind of question below the first", "UPDATE question SET kind = -1", "question", "kind=-1");
        row("a kind of question that is one in 32 bits", "UPDATE question SET kind = kind + 4294967296", "question",
            "kind=42949672");
        row("a kind of item", "UPDATE item_entered SET kind = 7", "item_entered", "kind=7");
        row("a day of manufacture", "UPDATE item_entered SET made = '9999-99'", "item_entered", "made=9999-99");
        row("a day out of the calendar", "UPDATE item_entered SET day = -9000000", "item_entered", "day=-9000000");
        row("a serial number that is no text", "UPDATE item_entered SET serial = CAST(x'ff31' AS TEXT)", "item_entered",
            "serial=<byte FF>1");
        row("a figure beyond all flights", "UPDATE item_entered SET minutes = 4611686018427387904", "item_entered",
            "minutes=4611686018427387904");
        row("operations that are no list", "UPDATE balloon_entered SET operations = '['", "balloon_entered",
            "operations=[");
        row("operations of numbers", "UPDATE balloon_entered SET operations = '[1]'", "balloon_entered",
            "operations=[1]");
        row("a stay at no moment", "UPDATE stay SET until_at = 4611686018427387904, until_id = 'z'", "stay",
            "until_at=4611686018427387904");
        row("running totals", "UPDATE flight SET minutes_to = -4611686018427387904", "flight", "minutes_to=-46");
        row("a flight neither timed nor not", "UPDATE flight SET timed = 2", "flight", "timed=2");
        row("a requirement without a name", "UPDATE done SET requirement_no = 999", "done", "requirement_no=999");
        row("a temperature", "UPDATE occurrence SET celsius = 9e999", "occurrence", "celsius=Inf");
        row("a mark of a defect", "UPDATE defect_mark SET mark = 3", "defect_mark", "mark=3");
        row("a severity", "UPDATE defect_mark SET severity = -1", "defect_mark", "severity=-1");
        row("a defect without a name", "UPDATE defect_mark SET defect_no = 999", "defect_mark", "defect_no=999");
        row("a gore of a reading", "UPDATE reading SET gore = 2000000000", "reading", "gore=2000000000");
        row("a row of a repair", "UPDATE repair SET panel_row = 0", "repair", "panel_row=0");
        row("gores of a lot", "UPDATE fabric_stated SET last_gore = -1", "fabric_stated", "last_gore=-1");
        row("what an adoption binds", "UPDATE adoption SET bound = '['", "adoption", "entry_id=a");
        row("an adoption that is a flight",
            "UPDATE adoption SET bound = '{\"entry\":\"flight.logged\",\"id\":\"a\",\"on\":\"2024-02-01\","
            "\"balloon\":\"QE-ONE\",\"minutes\":1}'",
            "adoption", "entry_id=a");
        row("a name that is of nothing", "UPDATE name SET sort = 99 WHERE text = 'annual'", "name", "sort=99");
        row("a name that is no text", "UPDATE name SET text = CAST(x'c3' AS TEXT) WHERE text = 'E1'", "name",
            "text=<byte C3>");
    }
    void whatNothingCanBeMadeOfIsRefusedWithItsPlace() {
        QFETCH(QByteArray, statement);
        QFETCH(QString, table);
        QFETCH(QString, row);
        Scratch scratch;
        fill(*scratch.record);
        damage(scratch, statement);
        const auto refused = askedEverything(*scratch.record);
        QVERIFY(!refused.empty());
        bool named = false;
        for (const auto& problem : refused) {
            QVERIFY(problem.code() == Code::StoreFailed || table == "name"); // what has no name is not found
            named = named || (problem.fault == Fault(StoreFault::ValueUnread) &&
                              problem.arguments.at(0).written() == table.toStdString() &&
                              problem.arguments.at(1).written().find(row.toStdString()) != std::string::npos);
        }
        QVERIFY2(named, text(refused.front()).c_str());
        QVERIFY(!scratch.record->verify().value().intact);
        QVERIFY(scratch.record->rebuild().has_value());
        QVERIFY(scratch.record->verify().value().intact);
        for (const auto& problem : askedEverything(*scratch.record))
            QFAIL(text(problem).c_str());
    }
    void aNameThatNothingBroughtIsGoneAfterARebuild() {
        Scratch scratch;
        fill(*scratch.record);
        damage(scratch, "INSERT INTO name (name_no, sort, text) VALUES (77, 1, 'E9')");
        QVERIFY(scratch.record->rebuild().has_value());
        const auto refused =
            problemsOf(*scratch.record, R"({"entry":"item.fitted","on":"2024-03-01","item":"E9","balloon":"QE-ONE"})");
        QCOMPARE(refused.size(), std::size_t{1});
        QCOMPARE(refused.front().fault, Fault(StoreFault::ItemNotEntered));
    }
    void amendmentsThatLeadRoundAreNotFollowedForEver() {
        Scratch scratch;
        fill(*scratch.record);
        damage(scratch, "UPDATE amendment SET target_id = CASE target_id WHEN 'f' THEN 'k' ELSE 'c' END");
        askedEverything(*scratch.record);
        QVERIFY(!scratch.record->verify().value().intact);
        QVERIFY(scratch.record->rebuild().has_value());
        QCOMPARE(std::get<FlightLogged>(scratch.record->line(EntryId("f")).value()->current->body).use.minutes,
                 Minutes(61));
    }
};

CROWNRING_TEST(DamagedTablesTest, QCoreApplication)

}

#include "damaged_tables_test.moc"
