// SPDX-License-Identifier: GPL-3.0-or-later
#include "raw_sqlite.h"

#include <sqlite3.h>

#include <stdexcept>

namespace crownring::bench {

RawSqlite::RawSqlite(const std::string& file) {
    if (sqlite3_open(file.c_str(), &m_handle) != SQLITE_OK)
        throw std::runtime_error("cannot open " + file);
    run("PRAGMA cache_size = -65536");
}

RawSqlite::~RawSqlite() { sqlite3_close(m_handle); }

void RawSqlite::run(const std::string& sql) {
    char* error = nullptr;
    if (sqlite3_exec(m_handle, sql.c_str(), nullptr, nullptr, &error) != SQLITE_OK)
        throw std::runtime_error(sql + ": " + (error ? error : "?"));
}

std::int64_t RawSqlite::addUp(const std::string& sql, std::int64_t firstValue) {
    sqlite3_stmt* statement = nullptr;
    if (sqlite3_prepare_v2(m_handle, sql.c_str(), -1, &statement, nullptr) != SQLITE_OK)
        throw std::runtime_error(sql + ": " + sqlite3_errmsg(m_handle));
    sqlite3_bind_int64(statement, 1, firstValue);
    std::int64_t sum = 0;
    const int columns = sqlite3_column_count(statement);
    while (sqlite3_step(statement) == SQLITE_ROW)
        for (int i = 0; i < columns; ++i)
            switch (sqlite3_column_type(statement, i)) {
            case SQLITE_INTEGER:
                sum += sqlite3_column_int64(statement, i);
                break;
            case SQLITE_FLOAT:
                sum += static_cast<std::int64_t>(sqlite3_column_double(statement, i));
                break;
            case SQLITE_TEXT:
                static_cast<void>(sqlite3_column_text(statement, i));
                sum += sqlite3_column_bytes(statement, i);
                break;
            default:
                break;
            }
    sqlite3_finalize(statement);
    return sum;
}

}
