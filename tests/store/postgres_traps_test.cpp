// SPDX-License-Identifier: GPL-3.0-or-later

/// Where PostgreSQL 15 behind Qt SQL 6.4 differs from SQLite, as measured with one program against both, and that the
/// store does not fall for it. Needs `CROWNRING_TEST_POSTGRES`, but for the server that says nothing.

#include "record/chain/chain.h"
#include "said.h"
#include "scratch.h"
#include "shared_database.h"
#include "store/schema/migration.h"
#include "test_class.h"

#include <QtSql/QSqlError>
#include <QtSql/QSqlQuery>
#include <QtTest>
#include <netinet/in.h>
#include <sys/socket.h>
#include <unistd.h>

namespace postgres_traps_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

/// A port of this machine that takes connections and never says a word.
class SilentServer {
public:
    SilentServer() : m_socket(::socket(AF_INET, SOCK_STREAM, 0)) {
        sockaddr_in address{};
        address.sin_family = AF_INET;
        address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
        socklen_t size = sizeof address;
        auto* any = reinterpret_cast<sockaddr*>(&address);
        if (::bind(m_socket, any, size) != 0 || ::listen(m_socket, 5) != 0 || ::getsockname(m_socket, any, &size) != 0)
            throw std::runtime_error("no port");
        port = ntohs(address.sin_port);
    }
    ~SilentServer() { ::close(m_socket); }
    SilentServer(const SilentServer&) = delete;
    SilentServer& operator=(const SilentServer&) = delete;
    int port = 0;

private:
    int m_socket;
};

QVariant answer(const Connection& connection, const char* statement) {
    QSqlQuery query(connection.database());
    return query.exec(QString::fromUtf8(statement)) && query.next() ? query.value(0) : QVariant();
}

QString stateOf(const Connection& connection, const char* statement) {
    QSqlQuery query(connection.database());
    query.exec(QString::fromLatin1(statement));
    return query.lastError().nativeErrorCode();
}

}

class PostgresTrapsTest : public QObject {
    Q_OBJECT
private slots:
    void aServerThatSaysNothingIsGivenUp() {
        const SilentServer server;
        QElapsedTimer clock;
        clock.start();
        const auto lost =
            openRecord("postgresql://nobody@127.0.0.1:" + std::to_string(server.port) + "/none", OpenMode::Existing);
        QVERIFY(!lost);
        QCOMPARE(lost.error().code(), Code::StoreUnopened);
        QVERIFY2(clock.elapsed() > 2'000, "it answered: nothing was waited for");
        QVERIFY2(clock.elapsed() < 20'000, qPrintable(QString::number(clock.elapsed())));
    }
    void statementsOfTheSchemaCannotBePrepared() {
        NEEDS_SHARED;
        const Connection connection(sharedLocation(), Access::ReadWrite);
        QSqlQuery query(connection.database());
        QVERIFY(!query.prepare(QStringLiteral("CREATE TABLE t (x BIGINT)")));
        connection.run("CREATE TABLE t (x BIGINT)");
    }
    void aStepIsAppliedWhollyOrNotAtAll() {
        NEEDS_SHARED;
        const Connection connection(sharedLocation(), Access::ReadWrite);
        auto steps = migrationSteps(Dialect::Postgres);
        migrate(connection, steps);
        QCOMPARE(answer(connection, "SELECT checksum FROM migration WHERE version = 1").toString(),
                 QString::fromStdString(hex(sha256(steps.front().text))));
        const int newest = steps.back().version;
        steps.push_back({newest + 1, "CREATE TABLE extra (x BIGINT)\n----\nTHIS IS NOT SQL"});
        QVERIFY_THROWS_EXCEPTION(StoreError, migrate(connection, steps));
        QCOMPARE(schemaVersion(connection), newest);
        QCOMPARE(answer(connection, "SELECT COUNT(*) FROM pg_tables WHERE tablename = 'extra'").toInt(), 0);
    }
    void aLaterRecordIsReadAndNotWritten() {
        NEEDS_SHARED;
        const Connection connection(sharedLocation(), Access::ReadWrite);
        posted(*openedShared(), R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"})");
        connection.run("INSERT INTO migration VALUES (999, '', '')");
        const auto later = openedShared();
        QVERIFY(spokenMessage(later->readOnlyReason().value()).find("schema 999") != std::string::npos);
        QCOMPARE(later->balloons(day("2024-01-01")).value().size(), std::size_t{1});
        QCOMPARE(problemsOf(*later, R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-TWO"})").at(0).code(),
                 Code::StoreNewer);
        QCOMPARE(later->rebuild().error().code(), Code::StoreNewer);
    }
    /// 42501 is insufficient_privilege; its low byte as a number is SQLite's BUSY.
    void missingRightsAreNotSomebodyElseWriting() {
        NEEDS_SHARED;
        const Connection connection(sharedLocation(), Access::ReadWrite);
        connection.run("DROP ROLE IF EXISTS crownring_reader");
        connection.run("CREATE ROLE crownring_reader");
        connection.run("CREATE TABLE t (x BIGINT)");
        connection.run("SET ROLE crownring_reader");
        try {
            connection.run("INSERT INTO t VALUES (1)");
            QFAIL("it was written");
        } catch (const StoreError& error) {
            QCOMPARE(error.code(), Code::StoreFailed);
        }
        connection.run("RESET ROLE");
        connection.run("DROP ROLE crownring_reader");
    }
    void whatTheUrlAsksOfTheConnectionIsHonoured() {
        NEEDS_SHARED;
        const Connection connection(sharedLocation(), Access::ReadWrite);
        const auto with = [](const char* keys) { return openRecord(sharedLocation() + keys, OpenMode::OrCreate); };
        QVERIFY(with("&sslmode=prefer&connect_timeout=7"));
        // libpq itself says no: the keys reach it.
        for (const auto* wrong :
             {"&sslmode=nonsense", "&no_such_key=1", "&target_session_attrs=standby", "&sslmode=pre'fer"})
            QVERIFY2(!with(wrong), wrong);
    }
    void aPositiveNumberComesUnsigned() {
        NEEDS_SHARED;
        const Connection connection(sharedLocation(), Access::ReadWrite);
        QCOMPARE(answer(connection, "SELECT CAST(5 AS BIGINT)").typeId(), int{QMetaType::ULongLong});
        QCOMPARE(answer(connection, "SELECT CAST(-5 AS BIGINT)").typeId(), int{QMetaType::LongLong});
        QCOMPARE(answer(connection, "SELECT CAST(5 AS BIGINT)").toLongLong(), 5LL); // how Statement reads it
    }
    void aSumLosesItsLastDigit() {
        NEEDS_SHARED;
        const Connection connection(sharedLocation(), Access::ReadWrite);
        constexpr auto wide = 9007199254740993LL; // 2^53 + 1
        const auto sum = [&](const char* expression) {
            const auto text = QStringLiteral("SELECT %1 FROM (VALUES (CAST(9007199254740992 AS BIGINT)), (1)) v (x)");
            return answer(connection, qPrintable(text.arg(QLatin1String(expression)))).toLongLong();
        };
        QVERIFY(sum("SUM(x)") != wide);
        QCOMPARE(sum("CAST(SUM(x) AS BIGINT)"), wide);
        // So no statement of the store asks for a bare sum; the running totals are cast with what they begin at.
        int sums = 0;
        QDirIterator sources(QStringLiteral(CROWNRING_SOURCE_DIR "/core/store"), {"*.cpp", "*.sql"}, QDir::Files,
                             QDirIterator::Subdirectories);
        while (sources.hasNext()) {
            QFile file(sources.next());
            QVERIFY(file.open(QIODevice::ReadOnly));
            const auto text = QString::fromUtf8(file.readAll());
            sums += int(text.count(QStringLiteral("SUM("), Qt::CaseInsensitive));
            const QRegularExpression bare(QStringLiteral(R"((?<!CAST\()(?<!CAST\(\? \+ )\bSUM\()"),
                                          QRegularExpression::CaseInsensitiveOption);
            QVERIFY2(!text.contains(bare), qPrintable(file.fileName()));
        }
        QVERIFY(sums > 5);
    }
    void noColumnIsOfATypeThatIsReadInTwoWays() {
        // A bool is 0 or 1 on the other side; a moment comes back as local time without its zone; a sum is a double.
        NEEDS_SHARED;
        const Connection connection(sharedLocation(), Access::ReadWrite);
        QCOMPARE(answer(connection, "SELECT TRUE").typeId(), int{QMetaType::Bool});
        const auto moment = answer(connection, "SELECT TIMESTAMPTZ '2024-03-01 05:00:00+09'").toDateTime();
        QCOMPARE(moment.timeSpec(), Qt::LocalTime);
        migrate(connection, migrationSteps(Dialect::Postgres));
        QCOMPARE(answer(connection, "SELECT STRING_AGG(DISTINCT data_type, ' ' ORDER BY data_type)"
                                    " FROM information_schema.columns WHERE table_schema = 'public'")
                     .toString(),
                 QStringLiteral("bigint bytea double precision integer text"));
        // A figure comes back to its last bit.
        QCOMPARE(answer(connection, "SELECT CAST(0.1 AS DOUBLE PRECISION) + CAST(0.2 AS DOUBLE PRECISION)").toDouble(),
                 0.1 + 0.2);
        QCOMPARE(answer(connection, "SELECT CAST(133.4 AS DOUBLE PRECISION)").typeId(), int{QMetaType::Double});
    }
    void aRefusedStatementSpoilsItsTransaction() {
        NEEDS_SHARED;
        const Connection connection(sharedLocation(), Access::ReadWrite);
        {
            const Transaction transaction(connection);
            QCOMPARE(stateOf(connection, "SELECT 1 / 0"), QStringLiteral("22012"));
            QCOMPARE(stateOf(connection, "SELECT 1"), QStringLiteral("25P02"));
        }
        QCOMPARE(stateOf(connection, "SELECT 1"), QString()); // rolled back
    }
    void likeTellsCapitals() {
        NEEDS_SHARED;
        const Connection connection(sharedLocation(), Access::ReadWrite);
        QCOMPARE(answer(connection, "SELECT 'Rye' LIKE 'rye'").toBool(), false);
        const Scratch scratch;
        const Connection other(scratch.file(), Access::ReadWrite);
        QCOMPARE(answer(other, "SELECT 'Rye' LIKE 'rye'").toBool(), true);
        QCOMPARE(answer(other, "SELECT lower('Åse') = 'åse'").toBool(), false);
        // A search finds the same on both: the rest of it is in posting_test, aSearchFoldsEveryLetter.
        const std::array<std::unique_ptr<Record>, 2> both{openedShared(), Scratch::openedAt(scratch.beside("other"))};
        for (const auto& record : both) {
            posted(*record, R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-RYE","by":"Åse"})");
            for (const char* text : {"Åse", "ÅSE rye", "qe-Rye"})
                QCOMPARE(record->lines({text, {}, {}, 10}).value().size(), std::size_t{1});
            QCOMPARE(record->lines({"Öse", {}, {}, 10}).value().size(), std::size_t{0});
        }
    }
    void whatTheSharedRecordIsBuiltOfIsCompared_data() {
        QTest::addColumn<QString>("planted");
        QTest::addColumn<QString>("named");
        QTest::newRow("a guard taken away") << "DROP TRIGGER entry_is_never_changed ON entry"
                                            << "trigger entry_is_never_changed";
        QTest::newRow("a guard put to sleep") << "ALTER TABLE entry DISABLE TRIGGER entry_is_never_emptied"
                                              << "trigger entry_is_never_emptied";
        QTest::newRow("a guard that lets through")
            << "CREATE OR REPLACE FUNCTION journal_is_append_only() RETURNS trigger LANGUAGE plpgsql AS"
               " $$ BEGIN RETURN NEW; END $$"
            << "trigger entry_is_never_changed";
        QTest::newRow("a rule") << "CREATE RULE lost AS ON INSERT TO defect_mark DO INSTEAD NOTHING"
                                << "rule defect_mark.lost";
        QTest::newRow("rows that are hidden") << "ALTER TABLE adoption ENABLE ROW LEVEL SECURITY"
                                              << "table adoption";
        QTest::newRow("a policy") << "CREATE POLICY few ON adoption USING (FALSE)"
                                  << "policy adoption.few";
        QTest::newRow("an index less") << "DROP INDEX done_under"
                                       << "index done_under";
        QTest::newRow("a column more") << "ALTER TABLE done ADD COLUMN more BIGINT"
                                       << "column done.more";
        QTest::newRow("a column of another type") << "ALTER TABLE done ALTER COLUMN minutes TYPE INTEGER"
                                                  << "column done.minutes";
        QTest::newRow("a default") << "ALTER TABLE done ALTER COLUMN paper SET DEFAULT 1"
                                   << "column done.paper";
        QTest::newRow("a constraint less") << "ALTER TABLE entry DROP CONSTRAINT entry_hash_check"
                                           << "constraint entry.entry_hash_check";
        QTest::newRow("rows from elsewhere") << "CREATE TABLE heir () INHERITS (told)"
                                             << "table told";
        QTest::newRow("a table less") << "DROP TABLE approval"
                                      << "column approval.at";
    }
    void whatTheSharedRecordIsBuiltOfIsCompared() {
        NEEDS_SHARED;
        QFETCH(QString, planted);
        QFETCH(QString, named);
        const auto record = openedShared();
        posted(*record, R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"})");
        const Connection connection(sharedLocation(), Access::ReadWrite);
        connection.run("CREATE TABLE of_the_shop (note TEXT)"); // is no affair of ours
        auto verdict = record->verify().value();
        QVERIFY2(verdict.intact, verdict.reason ? spoken(*verdict.reason).c_str() : "");
        connection.run(planted);
        verdict = record->verify().value();
        QVERIFY(!verdict.intact);
        QCOMPARE(spoken(verdict.reason.value()),
                 "the database of the record is not built as this version builds it (" + named.toStdString() + ")");
    }
    void theStepsThatBuiltTheSharedRecordAreCompared() {
        NEEDS_SHARED;
        const auto record = openedShared();
        const Connection connection(sharedLocation(), Access::ReadWrite);
        connection.run("UPDATE migration SET checksum = 'other' WHERE version = 2");
        const auto verdict = record->verify().value();
        QVERIFY(!verdict.intact);
        QVERIFY(spoken(verdict.reason.value()).find("(step 2)") != std::string::npos);
    }
    void whoMayMakeNoTemporaryTableIsNotToldThatTheRecordIsAltered() {
        NEEDS_SHARED;
        const auto record = openedShared();
        const Connection connection(sharedLocation(), Access::ReadWrite);
        const auto name = QString::fromStdString(sharedLocation()).section('/', 3).section('?', 0, 0);
        connection.run("DROP ROLE IF EXISTS reader");
        connection.run("CREATE ROLE reader LOGIN");
        connection.run("GRANT SELECT ON ALL TABLES IN SCHEMA public TO reader");
        connection.run("GRANT USAGE ON SCHEMA public TO reader");
        connection.run(QStringLiteral("REVOKE TEMPORARY ON DATABASE %1 FROM PUBLIC").arg(name));
        const auto url = QString::fromStdString(sharedLocation())
                             .replace(QRegularExpression("user=[^&]*"), "user=reader")
                             .toStdString();
        {
            const auto read = openRecord(url, OpenMode::Existing);
            QVERIFY2(read, read ? "" : text(read.error()).c_str());
            const auto verdict = (*read)->verify();
            QVERIFY(!verdict);
            QVERIFY(verdict.error().fault == Fault(StoreFault::RightsMissing));
        }
        connection.run(QStringLiteral("GRANT TEMPORARY ON DATABASE %1 TO PUBLIC").arg(name));
        connection.run("DROP OWNED BY reader");
        connection.run("DROP ROLE reader");
    }
    void aServerThatTakesNoFurtherConnectionSaysNothingOfTheRecord() {
        // Verify builds our tables on a connection of its own: where there is none to be had, nobody knows.
        NEEDS_SHARED;
        const auto record = openedShared();
        const Connection connection(sharedLocation(), Access::ReadWrite);
        connection.run("DROP ROLE IF EXISTS lonely");
        connection.run("CREATE ROLE lonely LOGIN CONNECTION LIMIT 1");
        connection.run("GRANT SELECT ON ALL TABLES IN SCHEMA public TO lonely");
        connection.run("GRANT USAGE ON SCHEMA public TO lonely");
        const auto url = QString::fromStdString(sharedLocation())
                             .replace(QRegularExpression("user=[^&]*"), "user=lonely")
                             .toStdString();
        {
            const auto read = openRecord(url, OpenMode::Existing);
            QVERIFY2(read, read ? "" : text(read.error()).c_str());
            const auto verdict = (*read)->verify();
            QVERIFY(!verdict);
            QVERIFY2(!isDamage(verdict.error().fault), text(verdict.error()).c_str());
            connection.run("ALTER ROLE lonely CONNECTION LIMIT 2");
            QVERIFY((*read)->verify().value().intact);
        }
        connection.run("DROP OWNED BY lonely");
        connection.run("DROP ROLE lonely");
    }
    void aDayThatDoesNotExistIsRefused() {
        NEEDS_SHARED;
        const Connection connection(sharedLocation(), Access::ReadWrite);
        migrate(connection, migrationSteps(Dialect::Postgres));
        connection.run("INSERT INTO writer VALUES (1, 'w', 0, decode(repeat('00', 32), 'hex'))");
        const auto put = [&](const char* on) {
            return stateOf(connection,
                           qPrintable(QStringLiteral("INSERT INTO entry VALUES (1, 'e', 'k', '%1', 1, 1, 'now',"
                                                     " decode(repeat('00', 32), 'hex'), '{}')")
                                          .arg(QLatin1String(on))));
        };
        for (const char* wrong : {"2023-02-29", "2023-02-30", "2023-2-3", "2023-02-03 10:00", "now", ""})
            QVERIFY2(!put(wrong).isEmpty(), wrong);
        QCOMPARE(put("2024-02-29"), QString());
    }
};

CROWNRING_TEST(PostgresTrapsTest, QCoreApplication)

}

#include "postgres_traps_test.moc"
