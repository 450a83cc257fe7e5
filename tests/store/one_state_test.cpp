// SPDX-License-Identifier: GPL-3.0-or-later
/// An answer that takes several questions is of one state of the record, whoever writes beside.
#include "scratch.h"
#include "shared_database.h"
#include "test_class.h"

#include <QtTest>

#include <atomic>
#include <thread>

namespace one_state_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* shed = R"({"entry":"balloon.entered","id":"b1","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"balloon.entered","id":"b2","on":"2024-01-01","balloon":"QE-TWO"}
{"entry":"item.entered","id":"i1","on":"2024-01-01","item":"E1","kind":"envelope"}
{"entry":"item.entered","id":"i2","on":"2024-01-01","item":"E2","kind":"envelope"}
{"entry":"item.fitted","id":"t1","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"item.fitted","id":"t2","on":"2024-01-01","balloon":"QE-TWO","item":"E2"})";

/// Both fly together, always: who sees one of two flights has seen half a batch.
void flyBoth(Record& record) {
    posted(record, R"({"entry":"flight.logged","on":"2024-02-01","balloon":"QE-ONE","minutes":10}
{"entry":"flight.logged","on":"2024-02-01","balloon":"QE-TWO","minutes":10})");
}

constexpr const char* oneFlight = R"({"entry":"flight.logged","on":"2024-02-01","balloon":"QE-ONE","minutes":10})";
constexpr const char* readingOfOne =
    R"({"entry":"reading.taken","on":"2024-03-01","item":"E1","quantity":"grab-strength","value":300,"unit":"N"})";
constexpr const char* readingOfTwo =
    R"({"entry":"reading.taken","on":"2024-03-01","item":"E2","quantity":"grab-strength","value":300,"unit":"N"})";

std::int64_t minutesOf(Record& record, const char* item) {
    return record.clocks({{ItemId(item), day("2024-12-31")}}).value().front()->minutes->value();
}

class Place {
public:
    explicit Place(bool shared) : m_shared(shared) {
        if (shared)
            emptyShared();
        else
            m_scratch.emplace();
    }
    [[nodiscard]] std::unique_ptr<Record> opened(const char* writer) const {
        return m_shared ? openedShared(writer)
                        : openRecord(m_scratch->file(), OpenMode::OrCreate, WriterId(writer)).value();
    }

private:
    bool m_shared;
    std::optional<Scratch> m_scratch;
};

void engines() {
    QTest::addColumn<bool>("shared");
    QTest::newRow("a file") << false;
    if (!sharedLocation().empty())
        QTest::newRow("a server") << true;
}

}

class OneStateTest : public QObject {
    Q_OBJECT
private slots:
    /// However long a post takes: it is asked here while the batch is written and not yet durable.
    void aPostKeepsNobodyWaiting_data() { engines(); }
    void aPostKeepsNobodyWaiting() {
        QFETCH(bool, shared);
        const Place place(shared);
        const auto writer = place.opened("writer");
        posted(*writer, shed);
        const auto reader = place.opened("reader");
        const auto batch = entriesFrom(oneFlight, "test").value();
        std::int64_t seen = -1;
        QElapsedTimer clock;
        QVERIFY(writer->append(batch, "test", [&](std::span<const NumberedEntry>) {
            clock.start();
            seen = minutesOf(*reader, "E1");
            return std::vector<Problem>{};
        }));
        QVERIFY2(clock.elapsed() < 2000, qPrintable(QString::number(clock.elapsed())));
        QCOMPARE(seen, 0);
        QCOMPARE(minutesOf(*reader, "E1"), 10);
    }
    void whatAnotherWritesBetweenTwoQuestionsIsSeenByNeither_data() { engines(); }
    void whatAnotherWritesBetweenTwoQuestionsIsSeenByNeither() {
        QFETCH(bool, shared);
        const Place place(shared);
        const auto record = place.opened("first");
        posted(*record, shed);
        const auto other = place.opened("second");
        {
            const auto state = record->snapshot().value();
            QCOMPARE(minutesOf(*record, "E1"), 0);
            flyBoth(*other);
            QCOMPARE(minutesOf(*record, "E2"), 0);
            QVERIFY(record->verify().value().intact);
            QCOMPARE(record->verify().value().entries, 6);
        }
        QCOMPARE(minutesOf(*record, "E2"), 10);
    }
    void whatIsWrittenThroughItEndsAState_data() { engines(); }
    void whatIsWrittenThroughItEndsAState() {
        QFETCH(bool, shared);
        const Place place(shared);
        const auto record = place.opened("first");
        posted(*record, shed);
        const auto other = place.opened("second");
        const auto state = record->snapshot().value();
        const auto within = record->snapshot().value();
        QCOMPARE(minutesOf(*record, "E1"), 0);
        flyBoth(*record);
        QCOMPARE(minutesOf(*record, "E1"), 10);
        flyBoth(*other);
        QCOMPARE(minutesOf(*record, "E2"), 10);
        QVERIFY(!problemsOf(*record, R"({"entry":"flight.logged","on":"2024-02-01","balloon":"QE-NONE","minutes":1})")
                     .empty());
        QCOMPARE(minutesOf(*record, "E2"), 20);
        QVERIFY(record->keepPicture({"image/png", "no picture"}).has_value());
        QVERIFY(record->rebuild().has_value());
        QCOMPARE(minutesOf(*record, "E1"), 20);
    }
    /// It happened where a server was killed while somebody waited for its lock: answers were of two states from then
    /// on, and said that the record was not intact.
    void whoCouldNotBeginToWriteReadsOneStateAfterAll() {
        NEEDS_SHARED;
        const auto record = openedShared("first");
        posted(*record, shed);
        const auto other = openedShared("second");
        const Connection server(sharedLocation(), Access::ReadWrite);
        server.run(QStringLiteral("ALTER TABLE writer RENAME TO away"));
        QVERIFY(!problemsOf(*record, shed).empty());
        server.run(QStringLiteral("ALTER TABLE away RENAME TO writer"));
        posted(*other, readingOfOne);
        std::size_t later = 0;
        const auto read = record->fabric({ItemId("E1"), ItemId("E2")}, day("2024-12-31"), [&](const auto& history) {
            if (history.item == ItemId("E1"))
                posted(*other, readingOfTwo);
            else
                later = history.readings.size();
        });
        QVERIFY2(read.has_value(), read ? "" : text(read.error()).c_str());
        QCOMPARE(later, std::size_t{0});
    }
    void aCopyIsMadeWhileAStateIsHeld() {
        Scratch scratch;
        posted(*scratch.record, shed);
        const auto state = scratch.record->snapshot().value();
        QCOMPARE(minutesOf(*scratch.record, "E1"), 0);
        QVERIFY(scratch.record->backUpTo(scratch.beside("copy"), Replace::Never).has_value());
        QCOMPARE(minutesOf(*scratch.record, "E1"), 0);
    }
    void besideAWriterWithoutPauseNobodySeesHalfABatch_data() { engines(); }
    void besideAWriterWithoutPauseNobodySeesHalfABatch() {
        QFETCH(bool, shared);
        constexpr int answers = 300;
        const Place place(shared);
        const auto record = place.opened("first");
        posted(*record, shed);
        std::atomic<bool> enough = false;
        std::atomic<int> batches = 0;
        std::thread writer([&] {
            const auto other = place.opened("second");
            for (; !enough; ++batches)
                flyBoth(*other);
        });
        int halves = 0;
        std::int64_t last = 0;
        for (int i = 0; i < answers || batches < 50; ++i) {
            const auto state = record->snapshot().value();
            last = minutesOf(*record, "E1");
            halves += last == minutesOf(*record, "E2") ? 0 : 1;
        }
        enough = true;
        writer.join();
        QCOMPARE(halves, 0);
        QVERIFY(last > 0);
    }
};

CROWNRING_TEST(OneStateTest, QCoreApplication)

}

#include "one_state_test.moc"
