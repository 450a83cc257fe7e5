// SPDX-License-Identifier: GPL-3.0-or-later
/// The server of a shared record goes away and comes back: nothing is lost, nothing is written twice, and what is not
/// known is not told as known. Needs `CROWNRING_TEST_POSTGRES`.
#include "problem/faults/store_fault.h"
#include "scratch.h"
#include "server_between.h"
#include "shared_database.h"
#include "test_class.h"

#include <QtTest>

namespace lost_server_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* balloon = R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"})";
constexpr const char* flight = R"({"entry":"flight.logged","on":"2024-02-01","balloon":"QE-ONE","minutes":60})";

/// As a server that is stopped does to everybody who is connected.
void endAllOthers() {
    const Connection connection(sharedLocation(), Access::ReadWrite);
    static_cast<void>(connection.ask("SELECT COUNT(pg_terminate_backend(pid)) FROM pg_stat_activity"
                                     " WHERE pid <> pg_backend_pid() AND datname = current_database()"));
    while (connection
               .ask("SELECT COUNT(*) FROM pg_stat_activity WHERE pid <> pg_backend_pid()"
                    " AND datname = current_database()")
               .toInt() > 0)
        QTest::qSleep(10);
}

std::size_t entriesOf(Record& record) { return record.lines({}).value().size(); }

}

class LostServerTest : public QObject {
    Q_OBJECT
private slots:
    void whatIsPostedNextIsPostedOnANewConnection() {
        NEEDS_SHARED;
        const auto record = openedShared();
        posted(*record, balloon);
        endAllOthers();
        posted(*record, flight);
        endAllOthers();
        QVERIFY(record->keepPicture({"image/png", "bytes"}).has_value());
        QCOMPARE(entriesOf(*record), std::size_t{2});
        QVERIFY(record->verify().value().intact);
    }
    void whatIsAskedNextIsAnsweredOnANewConnection() {
        NEEDS_SHARED;
        const auto record = openedShared();
        posted(*record, balloon);
        QCOMPARE(record->balloons(day("2024-12-31")).value().size(), std::size_t{1});
        endAllOthers();
        const auto state = record->snapshot().value();
        QCOMPARE(record->balloons(day("2024-12-31")).value().size(), std::size_t{1});
    }
    void inTheMiddleOfAnAnswerItIsSaid() {
        NEEDS_SHARED;
        const auto record = openedShared();
        posted(*record, balloon);
        {
            const auto state = record->snapshot().value();
            endAllOthers();
            QCOMPARE(record->balloons(day("2024-12-31")).error().fault, Fault(StoreFault::Lost));
        }
        const auto state = record->snapshot().value();
        QCOMPARE(record->balloons(day("2024-12-31")).value().size(), std::size_t{1});
    }
    /// The first commit ends its own connection before anything is durable.
    void whatWasNotCommittedIsWrittenOnce() {
        NEEDS_SHARED;
        const auto record = openedShared();
        posted(*record, balloon);
        {
            const Connection connection(sharedLocation(), Access::ReadWrite);
            connection.run("CREATE SEQUENCE commits");
            connection.run("CREATE FUNCTION end_once() RETURNS TRIGGER LANGUAGE plpgsql AS $$ BEGIN"
                           " IF nextval('commits') = 1 THEN PERFORM pg_terminate_backend(pg_backend_pid()); END IF;"
                           " RETURN NULL; END $$");
            connection.run("CREATE CONSTRAINT TRIGGER end_once AFTER INSERT ON entry DEFERRABLE INITIALLY DEFERRED"
                           " FOR EACH ROW EXECUTE FUNCTION end_once()");
        }
        const auto receipt = posted(*record, flight);
        QCOMPARE(receipt.ids.size(), std::size_t{1});
        QCOMPARE(entriesOf(*record), std::size_t{2});
        QVERIFY(record->missing({receipt.end.value()}).value().empty());
        const Connection connection(sharedLocation(), Access::ReadWrite);
        connection.run("DROP TRIGGER end_once ON entry"); // a planted one is no intact schema
        QVERIFY(record->verify().value().intact);
        QCOMPARE(connection.ask("SELECT last_value FROM commits"), QStringLiteral("2"));
    }
    void whatWasCommittedThoughTheAnswerWasLostIsWrittenOnce() {
        NEEDS_SHARED;
        posted(*openedShared(), balloon);
        ServerBetween between(sharedLocation());
        if (between.location().empty())
            QSKIP("the shared database is not at a socket of this machine");
        const auto record = openRecord(between.location(), OpenMode::Existing, WriterId("tester")).value();
        between.loseTheNextAnswerToACommit();
        const auto receipt = posted(*record, flight);
        QCOMPARE(between.lost(), 1);
        QCOMPARE(entriesOf(*record), std::size_t{2});
        QVERIFY(record->missing({receipt.end.value()}).value().empty());
        posted(*record, flight);
        QCOMPARE(entriesOf(*record), std::size_t{3});
        // Its schema is compared over a second connection, which the server between does not carry.
        const auto direct = openRecord(sharedLocation(), OpenMode::Existing, WriterId("tester")).value();
        QVERIFY(direct->verify().value().intact);
    }
    void withoutAServerToAskItIsUnknown() {
        NEEDS_SHARED;
        posted(*openedShared(), balloon);
        ServerBetween between(sharedLocation());
        if (between.location().empty())
            QSKIP("the shared database is not at a socket of this machine");
        const auto record = openRecord(between.location(), OpenMode::Existing, WriterId("tester")).value();
        between.loseTheNextAnswerToACommit();
        between.letNobodyInAfterwards();
        const auto problems = problemsOf(*record, flight);
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().fault, Fault(StoreFault::CommitUnknown));
        const auto id = problems.front().arguments.at(1).written();
        QVERIFY(
            openedShared()->line(EntryId(id)).value().has_value()); // here it was; it is found by the id that is told
    }
};

CROWNRING_TEST(LostServerTest, QCoreApplication)

}

#include "lost_server_test.moc"
