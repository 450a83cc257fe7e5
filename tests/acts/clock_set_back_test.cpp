// SPDX-License-Identifier: GPL-3.0-or-later
/// The machine's clock is set back between two programs: what is acknowledged later has the last word, and the entry
/// notes that it happened.
#include "record/chain/chain.h"
#include "record/chain/recorded.h"
#include "record/entry_json.h"
#include "store/connection/statement.h"
#include "store/scratch.h"
#include "test_class.h"

#include <QTest>

namespace clock_set_back_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* balloon = R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE","title":"one"})";
constexpr const char* flight =
    R"({"entry":"flight.logged","id":"f","on":"2024-02-01","balloon":"QE-ONE","minutes":10})";
const std::string thirty = R"({"entry":"entry.corrected","on":"2024-02-02","replaces":"f","with":{"minutes":30}})";
const std::string forty = R"({"entry":"entry.corrected","on":"2024-02-02","replaces":"f","with":{"minutes":40}})";
constexpr const char* ahead = "2031-05-06T07:08:09Z";
const EntryId idOfThatClock("01c2b7b9-c7a8-7000-8000-000000000000"); // RFC 9562: its milliseconds first

/// As a program writes it whose clock stands years ahead of ours. What follows from it a rebuild makes.
void writeAhead(const std::string& file, const Entry& entry) {
    const Connection connection(file, Access::ReadWrite);
    Statement head(connection, "SELECT last_sequence, last_hash, (SELECT MAX(entry_no) FROM entry) FROM writer");
    head.run().next();
    Link link{WriterId("tester"), static_cast<std::uint64_t>(head.read<std::int64_t>() + 1), ahead, {}};
    const auto previous = head.read<QByteArray>();
    const auto number = head.read<std::int64_t>() + 1;
    head.finish();
    std::copy(previous.begin(), previous.end(), link.previous.begin());
    const auto body = canonicalText(entry);
    const auto hash = entryHash(link, body);
    const QByteArray bytes(reinterpret_cast<const char*>(hash.data()), static_cast<qsizetype>(hash.size()));
    const auto sequence = static_cast<std::int64_t>(link.sequence);
    Statement(connection,
              "INSERT INTO entry (entry_no, entry_id, kind, dated_on, writer_no, sequence, recorded_at, hash,"
              " body) VALUES (?, ?, ?, ?, 1, ?, ?, ?, ?)")
        .run(number, entry.id, std::string(kindName(entry.body)), entry.on.iso(), sequence, link.recordedAt, bytes,
             body);
    Statement(connection, "UPDATE writer SET last_sequence = ?, last_hash = ?").run(sequence, bytes);
}

}

class ClockSetBackTest : public QObject {
    Q_OBJECT
private slots:
    void itsMomentAndWhatTheClockSaidStandInTheChain() {
        QCOMPARE(recordedAfter("", "2026-11-25T07:00:00Z"), std::string("2026-11-25T07:00:00Z"));
        QCOMPARE(recordedAfter("2026-11-25T07:00:00Z", "2026-11-25T07:00:00Z"), std::string("2026-11-25T07:00:00Z"));
        const auto back = recordedAfter("2026-11-25T07:00:00Z", "2026-11-24T22:10:05Z");
        QCOMPARE(back, std::string("2026-11-25T07:00:00Z/2026-11-24T22:10:05Z"));
        QCOMPARE(recordedFrom(back), (Recorded{"2026-11-25T07:00:00Z", "2026-11-24T22:10:05Z"}));
        QCOMPARE(recordedAfter(back, "2026-11-24T23:00:00Z"), std::string("2026-11-25T07:00:00Z/2026-11-24T23:00:00Z"));
        QCOMPARE(recordedAfter(back, "2026-11-25T07:00:01Z"), std::string("2026-11-25T07:00:01Z"));
    }
    void whatIsAcknowledgedLaterHasTheLastWordAndSaysWhy() {
        Scratch scratch;
        posted(*scratch.record, balloon);
        posted(*scratch.record, flight);
        scratch.record.reset();
        auto wrong = entryFrom(thirty).value();
        wrong.id = idOfThatClock;
        writeAhead(scratch.file(), wrong);
        scratch.reopen();
        const auto& record = scratch.record;
        QVERIFY(record->rebuild().has_value());
        QVERIFY(record->verify().value().intact);
        posted(*record, forty);
        const auto line = record->line(EntryId("f")).value();
        QCOMPARE(std::get<FlightLogged>(nowOf(*line).body).use.minutes, Minutes(40));
        const auto lines = record->lines({}).value();
        const auto recorded = recordedFrom(lines.front().recordedAt);
        QCOMPARE(recorded.at, std::string(ahead));
        QVERIFY(!recorded.clockSaid.empty() && recorded.clockSaid < ahead);
        QVERIFY(recordedFrom(lines.at(2).recordedAt).clockSaid.empty());
        QVERIFY(record->verify().value().intact);
    }
};

CROWNRING_TEST(ClockSetBackTest, QCoreApplication)

}

#include "clock_set_back_test.moc"
