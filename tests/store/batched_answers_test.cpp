// SPDX-License-Identifier: GPL-3.0-or-later

/// What an answer costs by the statements that it runs: for a fleet as many as for one balloon, and as many for twenty
/// readings as for one.

#include "answers/due.h"
#include "answers/fabric/record.h"
#include "scratch.h"
#include "test_class.h"

#include <QtSql/QSqlDatabase>
#include <QtSql/QSqlDriver>
#include <QtTest>
#include <sqlite3.h>

using namespace crownring;
using namespace crownring::testing;

namespace {

/// Counts the statements that begin, on every connection open now. https://www.sqlite.org/c3ref/trace_v2.html
class StatementCount {
public:
    StatementCount() {
        for (const auto& name : QSqlDatabase::connectionNames()) {
            const auto handle = QSqlDatabase::database(name, false).driver()->handle();
            m_handles.push_back(*static_cast<sqlite3* const*>(handle.constData()));
            sqlite3_trace_v2(
                m_handles.back(), SQLITE_TRACE_STMT,
                [](unsigned, void* count, void*, void*) {
                    ++*static_cast<int*>(count);
                    return 0;
                },
                &m_count);
        }
    }
    ~StatementCount() {
        for (auto* handle : m_handles)
            sqlite3_trace_v2(handle, 0, nullptr, nullptr);
    }
    StatementCount(const StatementCount&) = delete;
    StatementCount& operator=(const StatementCount&) = delete;
    [[nodiscard]] int count() const { return m_count; }

private:
    std::vector<sqlite3*> m_handles;
    int m_count = 0;
};

struct Size {
    int balloons = 1;
    int readings = 1;
};

std::string line(std::initializer_list<std::string> parts) {
    std::string text;
    for (const auto& part : parts)
        text += part;
    return text + "\n";
}

/// Each balloon with its envelope, flights, readings that fail with their defects, repairs, events and lots.
void fill(Record& record, Size size) {
    std::string lines =
        R"({"entry":"limit.stated","on":"2024-01-01","type":"T","kind":"envelope","quantity":"grab-strength","unit":"N","least":130,"source":"manual"}
{"entry":"programme.adopted","on":"2024-01-01","programme":"part-ml-hot-air","everything":true}
)";
    for (int b = 0; b < size.balloons; ++b) {
        const auto n = std::to_string(b);
        const auto item = R"("item":"E)" + n + "\"";
        const auto balloon = R"("balloon":"QE-)" + n + "\"";
        lines += line({R"({"entry":"balloon.entered","on":"2024-01-01",)", balloon, "}"});
        lines += line({R"({"entry":"item.entered","on":"2024-01-01","kind":"envelope","type":"T",)", item, "}"});
        lines += line({R"({"entry":"item.fitted","on":"2024-01-01",)", balloon, ",", item, "}"});
        lines += line({R"({"entry":"fabric.stated","on":"2024-01-01","lot":"L",)", item, "}"});
        for (int r = 0; r < size.readings; ++r) {
            const auto id = "r" + n + "-" + std::to_string(r);
            const auto on = addDays(day("2024-02-01"), 10 * r).iso();
            const auto place = R"("gore":)" + std::to_string(1 + r) + R"(,"row":2)";
            lines += line({R"({"entry":"flight.logged","on":")", on, R"(","minutes":60,)", balloon, "}"});
            lines += line({R"({"entry":"reading.taken","id":")", id, R"(","on":")", on,
                           R"(","quantity":"grab-strength","unit":"N","value":)", std::to_string(100 + r), ",", place,
                           ",", item, "}"});
            lines +=
                line({R"({"entry":"defect.found","on":")", on, R"(","what":"weak","severity":"barring","defect":"D)",
                      id, R"(","reading":")", id, "\",", item, "}"});
            lines += line({R"({"entry":"event.reported","on":")", on,
                           R"(","event":"over-temperature","temp_c":130,"minutes":4,)", item, "}"});
        }
    }
    posted(record, lines);
}

int statementsFor(Size size, const std::function<void(Record&)>& ask) {
    Scratch scratch;
    fill(*scratch.record, size);
    ask(*scratch.record);
    const StatementCount statements;
    ask(*scratch.record);
    return statements.count();
}

void askDue(Record& record) { QVERIFY(!due(record, {}, day("2025-06-01")).value().rows.empty()); }

void askFabric(Record& record) {
    const auto on = day("2025-06-01");
    const auto channel = channelsOf(typeBook(record, on).value(), "T").at(0);
    QVERIFY(!fabricRecord(record, channel, on).value().readings.empty());
}

}

class BatchedAnswersTest : public QObject {
    Q_OBJECT
private slots:
    void theDueListAsksAsOftenForAFleetAsForABalloon() {
        const int one = statementsFor({1, 1}, askDue);
        QVERIFY(one > 0);
        QCOMPARE(statementsFor({6, 1}, askDue), one);
        QCOMPARE(statementsFor({1, 12}, askDue), one);
    }
    void aBalloonsDueListAsksAsOftenForTwelveReadingsAsForOne() {
        const auto ask = [](Record& record) {
            QVERIFY(!due(record, {Registration("QE-0"), {}}, day("2025-06-01")).value().rows.empty());
        };
        const int one = statementsFor({1, 1}, ask);
        QCOMPARE(statementsFor({1, 12}, ask), one);
        QCOMPARE(statementsFor({6, 12}, ask), one);
    }
    void theRecordOfFabricAsksAsOftenForTwelveReadingsAsForOne() {
        const int one = statementsFor({1, 1}, askFabric);
        QVERIFY(one > 0);
        QCOMPARE(statementsFor({1, 12}, askFabric), one);
    }
};

CROWNRING_TEST(BatchedAnswersTest, QCoreApplication)
#include "batched_answers_test.moc"
