// SPDX-License-Identifier: GPL-3.0-or-later
/// One suite against both engines. The shared one is tested where `CROWNRING_TEST_POSTGRES` names an empty database.
#include "answers/due.h"
#include "frozen_entries.h"
#include "made_up_history.h"
#include "scratch.h"
#include "shared_database.h"
#include "test_class.h"

#include <QtSql/QSqlQuery>
#include <QtTest>

namespace conformance_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::vector<ItemFacts> byId(std::vector<ItemFacts> facts) {
    std::sort(facts.begin(), facts.end(), [](const auto& a, const auto& b) { return a.id < b.id; });
    return facts;
}

/// The ids of what was told, with what a defect says by now.
QStringList toldBy(Record& record, const Told& asked) {
    QStringList told;
    const auto lines = record.told(asked).value();
    for (const auto& line : lines) {
        const auto* found = std::get_if<DefectFound>(&(line.current ? *line.current : line.entry).body);
        told += QString::fromStdString(line.entry.id.text() + " " + (found ? found->what : ""));
    }
    return told;
}

}

class ConformanceTest : public QObject {
    Q_OBJECT
private slots:
    void init() {
        if (sharedLocation().empty())
            QSKIP("no shared database is offered");
        emptyShared();
    }
    void bothEnginesAnswerAlike() {
        for (unsigned seed = 1; seed <= 12; ++seed) {
            emptyShared();
            const MadeUpHistory history(seed, 60);
            Scratch scratch;
            const auto shared = openedShared();
            for (const auto& entry : history.entries) {
                const bool here = scratch.record->append({{entry, 0}}, "made-up").has_value();
                const bool there = shared->append({{entry, 0}}, "made-up").has_value();
                QCOMPARE(there, here);
            }
            for (const int number : {0, 20, 40, 60, 400}) {
                const auto on = MadeUpHistory::dayAt(number);
                QCOMPARE(byId(shared->facts({}, on).value()), byId(scratch.record->facts({}, on).value()));
                QCOMPARE(shared->balloons(on).value().size(), scratch.record->balloons(on).value().size());
            }
            QCOMPARE(shared->questions().value(), scratch.record->questions().value());
            const auto before = byId(shared->facts({}, MadeUpHistory::dayAt(400)).value());
            QVERIFY(shared->rebuild());
            QCOMPARE(byId(shared->facts({}, MadeUpHistory::dayAt(400)).value()), before);
            QVERIFY(shared->verify().value().intact);
        }
    }
    void theDueListIsTheSame() {
        const char* lines =
            R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope","serial":"1","made":"2016-05"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE","operations":["for-hire"]}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"programme.adopted","on":"2024-01-02","programme":"part-ml-hot-air","everything":true}
{"entry":"requirement.done","on":"2024-04-10","item":"E1","requirement":"ml.inspection","clock":{"minutes":18744}}
{"entry":"flight.logged","on":"2024-05-01","balloon":"QE-ONE","minutes":60})";
        Scratch scratch;
        const auto shared = openedShared();
        posted(*scratch.record, lines);
        posted(*shared, lines);
        const auto here = due(*scratch.record, {}, day("2025-04-28")).value();
        const auto there = due(*shared, {}, day("2025-04-28")).value();
        QVERIFY(!here.rows.empty());
        QCOMPARE(there.rows.size(), here.rows.size());
        for (std::size_t i = 0; i < here.rows.size(); ++i)
            QCOMPARE(there.rows[i].state, here.rows[i].state);
        QCOMPARE(shared->lines({"qe-one LOGGED", {}, {}, 10}).value().size(), std::size_t{1});
        QCOMPARE(shared->lines({"", "item.fitted", {}, 10}).value().size(), std::size_t{1});
        QCOMPARE(shared->history(Registration("QE-ONE"), {}, day("2025-01-01"), 10).value().size(), std::size_t{4});
        QCOMPARE(shared->history({}, ItemId("E1"), day("2025-01-01"), 10).value().size(), std::size_t{4});
    }
    void theBenchIsTheSame() {
        Scratch scratch;
        const auto shared = openedShared();
        appendFrozen(*scratch.record, 2);
        appendFrozen(*shared, 2);
        const auto compare = [&] {
            for (const char* on : {"2024-05-20", "2024-06-10", "2024-06-11", "2024-07-01"}) {
                QCOMPARE(byId(shared->facts({}, day(on)).value()), byId(scratch.record->facts({}, day(on)).value()));
                QCOMPARE(fabricOf(*shared, day(on)), fabricOf(*scratch.record, day(on)));
                QCOMPARE(clocksOf(*shared, day(on)), clocksOf(*scratch.record, day(on)));
                for (const auto subject : {Subject::Item, Subject::Balloon, Subject::Inspection, Subject::Defect,
                                           Subject::Person, Subject::Tester, Subject::Type, Subject::Checklist}) {
                    const auto here = toldBy(*scratch.record, {subject, {}, {}, day(on)});
                    QCOMPARE(toldBy(*shared, {subject, {}, {}, day(on)}), here);
                    QVERIFY(subject == Subject::Balloon || on == std::string("2024-05-20") || !here.isEmpty());
                }
            }
            const Told defects{Subject::Defect, "D-2", {"defect.found", "defect.deferred"}, day("2024-07-01")};
            QCOMPARE(toldBy(*shared, defects), (QStringList{"n-2 cover torn", "q-1 "}));
            QCOMPARE(toldBy(*scratch.record, defects), (QStringList{"n-2 cover torn", "q-1 "}));
        };
        compare();
        QVERIFY(shared->rebuild());
        compare();
        // The gate stands before both: the inspection is closed.
        const char* late =
            R"({"entry":"line.settled","on":"2024-06-10","inspection":"2024-06-10 QE-ONE","line":"look","state":"done"})";
        QCOMPARE(problemsOf(*shared, late).front().code(), Code::NotReleasable);
        QCOMPARE(problemsOf(*scratch.record, late).front().code(), Code::NotReleasable);
    }
    void aBatchThatIsBarredLeavesNothingBehind() {
        const auto shared = openedShared();
        posted(*shared, R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"person.entitled","on":"2024-01-01","person":"Pia","capacity":"private-pilot","licence":"PP 1"})");
        const auto problems = problemsOf(
            *shared,
            R"({"entry":"defect.found","on":"2024-02-01","item":"E1","defect":"D","what":"x","severity":"barring"}
{"entry":"defect.deferred","on":"2024-02-01","item":"E1","defect":"D","reason":"x","until":"2024-03-01","agreed_by":"Pia"})");
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().code(), Code::NotReleasable);
        QCOMPARE(problems.front().where.line, 2);
        QCOMPARE(shared->verify().value().entries, 2);
        QVERIFY(shared->facts({}, day("2024-03-01")).value().front().defects.empty());
        // Neither does the record remember the name of a defect that it did not take.
        QCOMPARE(
            problemsOf(*shared, R"({"entry":"defect.cleared","on":"2024-02-02","item":"E1","defect":"D","what":"x"})")
                .front()
                .code(),
            Code::UnknownReference);
    }
    void picturesAreKeptAlike() {
        Scratch scratch;
        const auto shared = openedShared();
        const Picture picture{"image/png", std::string("\x89PNG\0\r\n\xff", 8)}; // bytes that are no text
        const auto digest = scratch.record->keepPicture(picture).value();
        QCOMPARE(shared->keepPicture(picture).value(), digest);
        QCOMPARE(shared->keepPicture(picture).value(), digest); // again is no harm
        QCOMPARE(digest, hex(sha256(picture.bytes)));
        QCOMPARE(shared->picture(digest).value(), std::optional(picture));
        QCOMPARE(scratch.record->picture(digest).value(), std::optional(picture));
        QCOMPARE(shared->picture(std::string(64, '0')).value(), std::nullopt);
    }
    void largeSumsStayWhole() {
        // A sum is no bigint there; the trap itself is in postgres_traps_test.
        const auto shared = openedShared();
        posted(
            *shared,
            R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope","brought_forward":{"minutes":9999999999}}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"flight.logged","on":"2024-05-01","balloon":"QE-ONE","minutes":7,"kit":["E1"]}
{"entry":"flight.logged","on":"2024-05-02","balloon":"QE-ONE","minutes":6,"kit":["E1"]})");
        QCOMPARE(shared->facts({}, day("2024-06-01")).value().front().clock.minutes->value(), 10000000012);
    }
    void anErrorLeavesTheConnectionUsable() {
        const auto shared = openedShared();
        const char* line = R"({"entry":"balloon.entered","id":"same","on":"2024-01-01","balloon":"QE-ONE"})";
        posted(*shared, line);
        QCOMPARE(problemsOf(*shared, line).front().code(), Code::DuplicateId);
        posted(*shared, R"({"entry":"flight.logged","on":"2024-05-01","balloon":"QE-ONE","minutes":7})");
        QCOMPARE(shared->verify().value().entries, 2);
    }
    void theJournalIsAppendOnlyThereToo() {
        const auto shared = openedShared();
        posted(*shared, R"({"entry":"balloon.entered","id":"b","on":"2024-01-01","balloon":"QE-ONE"})");
        Connection connection(sharedLocation(), Access::ReadWrite);
        for (const char* statement :
             {"UPDATE entry SET body = '{}'", "DELETE FROM entry", "TRUNCATE entry CASCADE",
              "INSERT INTO entry SELECT * FROM entry ON CONFLICT (entry_no) DO UPDATE SET body = '{}'"})
            QVERIFY_THROWS_EXCEPTION(StoreError, connection.run(statement));
    }
    void twoProgramsWriteOneRecord() {
        const auto first = openedShared("first");
        const auto second = openedShared("second");
        posted(*first, R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"})");
        for (int i = 0; i < 5; ++i) {
            posted(*second, R"({"entry":"flight.logged","on":"2024-05-01","balloon":"QE-ONE","minutes":10})");
            posted(*first, R"({"entry":"flight.logged","on":"2024-05-01","balloon":"QE-ONE","minutes":10})");
        }
        QCOMPARE(first->facts({}, day("2024-06-01")).value().front().clock.minutes->value(), 100);
        QCOMPARE(second->facts({}, day("2024-06-01")).value().front().clock.minutes->value(), 100);
        QVERIFY(first->verify().value().intact);
    }
    void aDatabaseOfOthersIsLeftAlone() {
        Connection(sharedLocation(), Access::ReadWrite).run("CREATE TABLE recipe (name text)");
        QCOMPARE(openRecord(sharedLocation(), OpenMode::OrCreate).error().code(), Code::StoreForeign);
    }
    void anUnreachableServerIsSaidSoon() {
        QElapsedTimer clock;
        clock.start();
        const auto lost = openRecord("postgresql://nobody@127.0.0.1:1/none", OpenMode::Existing);
        QCOMPARE(lost.error().code(), Code::StoreUnopened);
        QVERIFY(clock.elapsed() < 10'000);
    }
};

CROWNRING_TEST(ConformanceTest, QCoreApplication)

}

#include "conformance_test.moc"
