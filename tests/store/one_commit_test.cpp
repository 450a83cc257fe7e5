// SPDX-License-Identifier: GPL-3.0-or-later

/// A durable commit is what costs time on a disk: one for whatever is posted together, none for asking.

#include "answers/due.h"
#include "scratch.h"
#include "test_class.h"

#include <QtSql/QSqlDatabase>
#include <QtSql/QSqlDriver>
#include <QtTest>
#include <sqlite3.h>

using namespace crownring;
using namespace crownring::testing;

namespace {

/// Counts the commits that write, on every connection open now. https://www.sqlite.org/c3ref/commit_hook.html
class CommitCount {
public:
    CommitCount() {
        for (const auto& name : QSqlDatabase::connectionNames()) {
            const auto handle = QSqlDatabase::database(name, false).driver()->handle();
            m_handles.push_back(*static_cast<sqlite3* const*>(handle.constData()));
            sqlite3_commit_hook(
                m_handles.back(),
                [](void* count) {
                    ++*static_cast<int*>(count);
                    return 0;
                },
                &m_count);
        }
    }
    ~CommitCount() {
        for (auto* handle : m_handles)
            sqlite3_commit_hook(handle, nullptr, nullptr);
    }
    CommitCount(const CommitCount&) = delete;
    CommitCount& operator=(const CommitCount&) = delete;
    [[nodiscard]] int count() const { return m_count; }

private:
    std::vector<sqlite3*> m_handles;
    int m_count = 0;
};

std::string flights(int count) {
    std::string lines;
    for (int i = 0; i < count; ++i)
        lines += R"({"entry":"flight.logged","on":"2024-05-)" + std::to_string(10 + i) +
                 R"(","balloon":"QE-ABC","minutes":60})"
                 "\n";
    return lines;
}

}

class OneCommitTest : public QObject {
    Q_OBJECT
private slots:
    void aFlightAndItsStandingsCostOneCommit() {
        Scratch scratch;
        posted(*scratch.record, R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ABC"}
{"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope","brought_forward":{"minutes":0}}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ABC","item":"E1"}
{"entry":"programme.adopted","on":"2024-01-01","programme":"part-ml-hot-air","balloons":["QE-ABC"]})");
        const CommitCount commits;
        posted(*scratch.record, flights(1));
        QCOMPARE(commits.count(), 1);
        const auto list = due(*scratch.record, {Registration("QE-ABC"), {}}, day("2024-05-11"));
        QVERIFY(list.has_value());
        QVERIFY(!list->rows.empty());
        QCOMPARE(list->items.front().clock.minutes, std::optional(Minutes(60)));
        QCOMPARE(commits.count(), 1);
    }

    void whatIsPostedTogetherIsOneCommit() {
        Scratch scratch;
        posted(*scratch.record, R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ABC"})");
        const CommitCount commits;
        posted(*scratch.record, flights(20));
        QCOMPARE(commits.count(), 1);
    }

    void aRefusedPostIsNone() {
        Scratch scratch;
        posted(*scratch.record, R"({"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ABC"})");
        const CommitCount commits;
        const auto problems =
            problemsOf(*scratch.record, flights(2) + R"({"entry":"flight.logged","on":"2024-05-01"})");
        QVERIFY(!problems.empty());
        QCOMPARE(commits.count(), 0);
    }
};

CROWNRING_TEST(OneCommitTest, QCoreApplication)
#include "one_commit_test.moc"
