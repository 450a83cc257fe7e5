// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/proof/written_state.h"

#include "store/connection/file_stamp.h"

namespace crownring {

namespace {

std::string textOf(const FileStamp& stamp) {
    return std::to_string(stamp.device) + ' ' + std::to_string(stamp.number) + ' ' + std::to_string(stamp.size) + ' ' +
           std::to_string(stamp.changed);
}

}

std::string writtenStateOfFile(const std::string& file) {
    const auto stamp = stampOfFile(file);
    if (!stamp)
        return {};
    const auto log = stampBeside(file, "-wal");
    return textOf(*stamp) + (log && log->size > 0 ? ' ' + textOf(*log) : std::string());
}

// Both tables are only ever added to. https://www.postgresql.org/docs/15/monitoring-stats.html
std::string writtenState(const Connection& connection) {
    if (connection.dialect() == Dialect::Sqlite)
        return writtenStateOfFile(connection.location());
    return connection
        .ask(QStringLiteral("SELECT pg_postmaster_start_time()::text || string_agg(format(' %s %s %s', n_tup_upd,"
                            " n_tup_del, pg_relation_filenode(relid)), '' ORDER BY relname)"
                            " FROM pg_stat_user_tables WHERE relid IN ('entry'::regclass, 'picture'::regclass)"))
        .toStdString();
}

}
