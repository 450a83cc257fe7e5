// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The floor: SQLite by its own interface, nothing between.

#include <cstdint>
#include <string>

struct sqlite3;
struct sqlite3_stmt;

namespace crownring::bench {

class RawSqlite {
public:
    explicit RawSqlite(const std::string& file);
    ~RawSqlite();
    RawSqlite(const RawSqlite&) = delete;
    RawSqlite& operator=(const RawSqlite&) = delete;

    void run(const std::string& sql);
    /// Steps through all rows and adds up every number and every text's length.
    std::int64_t addUp(const std::string& sql, std::int64_t firstValue);
    [[nodiscard]] sqlite3* handle() const { return m_handle; }

private:
    sqlite3* m_handle = nullptr;
};

}
