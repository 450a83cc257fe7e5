// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/schema/schema_flaw.h"

#include "record/chain/chain.h"
#include "store/connection/statement.h"
#include "store/schema/migration.h"
#include "store/schema/server_schema.h"

#include <QtSql/QSqlError>
#include <QtSql/QSqlQuery>

#include <map>

namespace crownring {

namespace {

Schema schemaOf(const Connection& connection) {
    Schema parts;
    QSqlQuery query(connection.database());
    const auto statement = QStringLiteral("SELECT type || ' ' || name, tbl_name || ': ' || sql FROM sqlite_master"
                                          " WHERE sql IS NOT NULL AND lower(substr(name, 1, 7)) <> 'sqlite_'");
    if (!query.exec(statement))
        throw errorOf(query.lastError(), statement);
    while (query.next())
        parts.emplace(query.value(0).toString().toStdString(), query.value(1).toString().toStdString());
    return parts;
}

Schema madeHere() {
    const Connection fresh(":memory:", Access::ReadWrite);
    migrate(fresh, migrationSteps(Dialect::Sqlite));
    return schemaOf(fresh);
}

std::optional<std::string> difference(const Schema& held, const Schema& made) {
    for (const auto& [part, statement] : made)
        if (const auto found = held.find(part); found == held.end() || found->second != statement)
            return part;
    for (const auto& [part, statement] : held)
        if (!made.contains(part))
            return part;
    return std::nullopt;
}

}

std::optional<std::string> schemaFlaw(const Connection& connection) {
    if (connection.dialect() == Dialect::Postgres) {
        const auto made = madeOnServer(connection.location());
        return difference(schemaOnServer(connection, made), made);
    }
    static const auto ours = madeHere();
    return difference(schemaOf(connection), ours);
}

std::optional<int> stepFlaw(const Connection& connection) {
    int last = 0;
    std::map<int, std::string> taken;
    for (const auto& step : migrationSteps(connection.dialect()))
        if (step.version <= schemaVersion(connection))
            taken.emplace(step.version, hex(sha256(step.text)));
    Statement noted(connection, "SELECT version, checksum FROM migration ORDER BY version");
    noted.run();
    while (noted.next()) {
        const auto version = static_cast<int>(noted.read<std::int64_t>());
        const auto step = taken.find(version);
        if (step == taken.end() || step->second != noted.read<std::string>())
            return version;
        taken.erase(step);
        last = version;
    }
    if (!taken.empty())
        return taken.begin()->first;
    const int mark = connection.dialect() == Dialect::Sqlite ? sqliteMark(connection) : last;
    return mark == last ? std::nullopt : std::optional(mark);
}

bool isOfAnotherSchema(const Connection& connection) {
    if (schemaVersion(connection) == migrationSteps(connection.dialect()).back().version)
        return false;
    try {
        return schemaFlaw(connection).has_value();
    } catch (const StoreError& error) {
        if (!error.is(StoreFault::RightsMissing))
            throw;
        return true; // who may not compare does not know it
    }
}

}
