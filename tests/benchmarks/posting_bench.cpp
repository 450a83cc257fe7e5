// SPDX-License-Identifier: GPL-3.0-or-later
/// Posting 1,000,000 flights as text, against raw inserts of the same rows into the same tables.
#include "acts/post.h"
#include "large_fleet.h"
#include "raw_sqlite.h"

#include <QtCore/QFile>
#include <benchmark/benchmark.h>
#include <sqlite3.h>

#include <stdexcept>
#include <vector>

namespace crownring::bench {

namespace {

constexpr int flights = 1'000'000;
constexpr FleetSize bare{10'000, 0};

std::string freshFile(const char* name) {
    const auto file = folder() + "/" + name;
    for (const auto* ending : {"", "-wal", "-shm"})
        QFile::remove(QString::fromStdString(file + ending));
    largeFleet(file, bare).reset();
    return file;
}

std::string lines() {
    std::string text;
    for (int i = 0; i < flights; ++i)
        text += canonicalText(flightOf(i % bare.balloons, i / bare.balloons, "p" + std::to_string(i))) + "\n";
    return text;
}

void postAMillionFlights(benchmark::State& state) {
    const auto text = lines();
    for (auto _ : state) {
        state.PauseTiming();
        auto opened = openRecord(freshFile("crownring-bench-post.crownring"), OpenMode::Existing, WriterId("bench"));
        auto record = std::move(*opened);
        state.ResumeTiming();
        if (postText(*record, *record, text, "bench").value().ids.size() != flights)
            throw std::runtime_error("not all were posted");
    }
}
BENCHMARK(postAMillionFlights)->Unit(benchmark::kMillisecond)->Iterations(1);

/// Copies the rows that posting made, ready in memory, into an equal record.
class Copied {
public:
    Copied(const std::string& from, const char* sql) {
        RawSqlite raw(from);
        sqlite3_stmt* read = nullptr;
        sqlite3_prepare_v2(raw.handle(), sql, -1, &read, nullptr);
        m_columns = sqlite3_column_count(read);
        while (sqlite3_step(read) == SQLITE_ROW)
            for (int i = 0; i < m_columns; ++i)
                m_values.push_back(sqlite3_value_dup(sqlite3_column_value(read, i)));
        sqlite3_finalize(read);
    }
    ~Copied() {
        for (auto* value : m_values)
            sqlite3_value_free(value);
    }
    Copied(const Copied&) = delete;
    Copied& operator=(const Copied&) = delete;

    void insert(RawSqlite& into, const std::string& table) const {
        std::string sql = "INSERT INTO " + table + " VALUES (?";
        for (int i = 1; i < m_columns; ++i)
            sql += ", ?";
        sql += ")";
        sqlite3_stmt* write = nullptr;
        if (sqlite3_prepare_v2(into.handle(), sql.c_str(), -1, &write, nullptr) != SQLITE_OK)
            throw std::runtime_error(sql);
        for (std::size_t row = 0; row < m_values.size(); row += static_cast<std::size_t>(m_columns)) {
            for (int i = 0; i < m_columns; ++i)
                sqlite3_bind_value(write, i + 1, m_values[row + static_cast<std::size_t>(i)]);
            if (sqlite3_step(write) != SQLITE_DONE)
                throw std::runtime_error(sqlite3_errmsg(into.handle()));
            sqlite3_reset(write);
        }
        sqlite3_finalize(write);
    }

private:
    int m_columns = 0;
    std::vector<sqlite3_value*> m_values;
};

void insertTheSameRowsRaw(benchmark::State& state) {
    const auto posted = folder() + "/crownring-bench-post.crownring";
    const Copied journal(posted, "SELECT * FROM entry WHERE kind = 'flight.logged' ORDER BY entry_no");
    const Copied projected(posted,
                           "SELECT f.* FROM flight f JOIN entry e ON e.entry_id = f.entry_id ORDER BY e.entry_no");
    for (auto _ : state) {
        state.PauseTiming();
        RawSqlite raw(freshFile("crownring-bench-raw.crownring"));
        raw.run("PRAGMA journal_mode = WAL");
        raw.run("PRAGMA synchronous = FULL");
        raw.run("PRAGMA foreign_keys = ON");
        raw.run("PRAGMA recursive_triggers = ON");
        state.ResumeTiming();
        raw.run("BEGIN IMMEDIATE");
        journal.insert(raw, "entry");
        projected.insert(raw, "flight");
        raw.run("COMMIT");
    }
}
BENCHMARK(insertTheSameRowsRaw)->Unit(benchmark::kMillisecond)->Iterations(1);

}

}
