// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/schema/migration.h"

#include "record/chain/chain.h"
#include "store/connection/statement.h"

#include <QtCore/QDateTime>
#include <QtCore/QString>

#include <algorithm>
#include <utility>

namespace crownring {

namespace embedded {
const std::vector<std::pair<std::string_view, std::string_view>>& storeSchemaData();
}

namespace {

QString migrationTable(Dialect dialect) {
    return QStringLiteral("CREATE TABLE IF NOT EXISTS migration (version INTEGER PRIMARY KEY, checksum TEXT NOT NULL,"
                          " applied_at TEXT NOT NULL)") +
           (dialect == Dialect::Sqlite ? QStringLiteral(" STRICT") : QString());
}

std::vector<QString> statementsOf(const std::string& text) {
    std::vector<QString> statements;
    for (const auto& part : QString::fromStdString(text).split(QStringLiteral("\n----\n")))
        if (!part.trimmed().isEmpty())
            statements.push_back(part);
    return statements;
}

/// The last step that the record notes; 0 where it notes none.
int notedVersion(const Connection& connection) {
    const auto notes = connection.ask(QStringLiteral("SELECT COUNT(*) FROM sqlite_master WHERE name = 'migration'"));
    if (notes.toLongLong() == 0)
        return 0;
    return connection.ask(QStringLiteral("SELECT COALESCE(MAX(version), 0) FROM migration")).toInt();
}

int sqliteVersion(const Connection& connection) {
    const auto id = connection.ask(QStringLiteral("PRAGMA application_id")).toLongLong();
    const auto tables = connection.ask(QStringLiteral("SELECT COUNT(*) FROM sqlite_master")).toLongLong();
    if (id == applicationId)
        return std::max(sqliteMark(connection), notedVersion(connection));
    if (id != 0 || tables != 0)
        throw StoreError(StoreFault::OtherProgramsFile);
    return 0;
}

int postgresVersion(const Connection& connection) {
    const auto tables =
        connection.ask(QStringLiteral("SELECT COUNT(*) FROM pg_tables WHERE schemaname = current_schema()"))
            .toLongLong();
    if (tables == 0)
        return 0;
    const auto ours = connection.ask(QStringLiteral("SELECT COUNT(*) FROM pg_tables WHERE schemaname = current_schema()"
                                                    " AND tablename IN ('migration', 'entry', 'writer')"));
    if (ours.toLongLong() != 3)
        throw StoreError(StoreFault::OtherProgramsTables);
    return connection.ask(QStringLiteral("SELECT COALESCE(MAX(version), 0) FROM migration")).toInt();
}

}

std::vector<MigrationStep> migrationSteps(Dialect dialect) {
    const std::string_view ending = dialect == Dialect::Sqlite ? ".sqlite.sql" : ".postgres.sql";
    std::vector<MigrationStep> steps;
    for (const auto& [name, text] : embedded::storeSchemaData())
        if (name.ends_with(ending))
            steps.push_back({std::stoi(std::string(name.substr(0, 3))), std::string(text)});
    return steps;
}

std::vector<QString> statementsOfAll(Dialect dialect) {
    std::vector<QString> all{migrationTable(dialect)};
    for (const auto& step : migrationSteps(dialect))
        for (auto& statement : statementsOf(step.text))
            all.push_back(std::move(statement));
    return all;
}

int sqliteMark(const Connection& connection) { return connection.ask(QStringLiteral("PRAGMA user_version")).toInt(); }

int schemaVersion(const Connection& connection) {
    return connection.dialect() == Dialect::Sqlite ? sqliteVersion(connection) : postgresVersion(connection);
}

void migrate(const Connection& connection, const std::vector<MigrationStep>& steps,
             const std::function<void()>& remake) {
    const bool isNew = schemaVersion(connection) == 0;
    for (const auto& step : steps) {
        if (step.version <= schemaVersion(connection))
            continue;
        Transaction transaction(connection);
        connection.run(migrationTable(connection.dialect()));
        for (const auto& statement : statementsOf(step.text))
            connection.run(statement);
        Statement note(connection, "INSERT INTO migration (version, checksum, applied_at) VALUES (?, ?, ?)");
        note.run(step.version, hex(sha256(step.text)),
                 QDateTime::currentDateTimeUtc().toString(Qt::ISODate).toStdString());
        if (connection.dialect() == Dialect::Sqlite) {
            connection.run(QStringLiteral("PRAGMA application_id = %1").arg(applicationId));
            connection.run(QStringLiteral("PRAGMA user_version = %1").arg(step.version));
        }
        if (remake && !isNew && step.version == steps.back().version)
            remake();
        transaction.commit();
    }
}

}
