// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/verify/pages.h"

#include "record/chain/chain.h"
#include "record/verdict_phrase.h"
#include "store/connection/statement.h"
#include "store/schema/migration.h"

#include <QtSql/QSqlError>
#include <QtSql/QSqlQuery>

#include <map>

namespace crownring {

namespace {

/// Kind and name of each part of a schema, to its statement.
std::map<std::string, std::string> schemaOf(const Connection& connection) {
    std::map<std::string, std::string> parts;
    QSqlQuery query(connection.database());
    const auto statement = QStringLiteral("SELECT type || ' ' || name, tbl_name || ': ' || sql FROM sqlite_master"
                                          " WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite_%'");
    if (!query.exec(statement))
        throw errorOf(query.lastError(), statement);
    while (query.next())
        parts.emplace(query.value(0).toString().toStdString(), query.value(1).toString().toStdString());
    return parts;
}

}

std::optional<Phrase> pageFlaw(const Connection& connection) {
    if (connection.dialect() != Dialect::Sqlite)
        return std::nullopt;
    const auto pages = connection.ask(QStringLiteral("PRAGMA integrity_check(1)"));
    if (pages != QStringLiteral("ok"))
        return Phrase{VerdictPhrase::FileDamaged, {pages.simplified().toStdString()}};
    const auto reference = connection.ask(QStringLiteral("PRAGMA foreign_key_check"));
    return reference.isEmpty() ? std::nullopt
                               : std::optional(Phrase{VerdictPhrase::ReferenceDangles, {reference.toStdString()}});
}

std::optional<std::string> schemaFlaw(const Connection& connection) {
    if (connection.dialect() != Dialect::Sqlite)
        return std::nullopt;
    const Connection fresh(":memory:", Access::ReadWrite);
    migrate(fresh, migrationSteps(Dialect::Sqlite));
    const auto held = schemaOf(connection);
    const auto made = schemaOf(fresh);
    for (const auto& [part, statement] : made)
        if (const auto found = held.find(part); found == held.end() || found->second != statement)
            return part;
    for (const auto& [part, statement] : held)
        if (!made.contains(part))
            return part;
    return std::nullopt;
}

std::optional<std::string> pictureFlaw(const Connection& connection) {
    Statement rows(connection, "SELECT digest, bytes FROM picture ORDER BY digest");
    rows.run();
    while (rows.next()) {
        auto digest = rows.read<std::string>();
        if (hex(sha256(rows.read<QByteArray>().toStdString())) != digest)
            return digest;
    }
    return std::nullopt;
}

}
