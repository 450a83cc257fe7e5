// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/schema/server_schema.h"

#include "store/schema/migration.h"

#include <QtSql/QSqlError>
#include <QtSql/QSqlQuery>

#include <set>

namespace crownring {

namespace {

/// Table, kind and name, and what it is, of each part that decides what is kept in a table and what is read from it.
/// The catalogues: https://www.postgresql.org/docs/15/catalogs.html
/// Constraints and triggers that the server keeps for itself (tgisinternal) follow from those of the tables.
QString partsOf(const QString& space) {
    return QStringLiteral(R"(
WITH ours AS (SELECT c.oid, c.relname, c.relkind, c.relrowsecurity, c.relforcerowsecurity FROM pg_class c
    WHERE c.relnamespace = %1 AND c.relkind NOT IN ('i', 'I', 't', 'c', 'S')),
space AS (SELECT quote_ident(nspname) || '.' AS prefix FROM pg_namespace WHERE oid = %1),
parts(table_name, part, said) AS (
    SELECT relname, 'table ' || relname, concat_ws(' ', relkind, relrowsecurity, relforcerowsecurity,
        (SELECT COUNT(*) FROM pg_inherits h WHERE h.inhparent = ours.oid OR h.inhrelid = ours.oid)) FROM ours
    UNION ALL SELECT ours.relname, 'column ' || relname || '.' || a.attname, concat_ws(' ',
        format_type(a.atttypid, a.atttypmod), a.attnotnull, pg_get_expr(d.adbin, d.adrelid), l.collname,
        a.attidentity, a.attgenerated)
        FROM ours JOIN pg_attribute a ON a.attrelid = ours.oid AND a.attnum > 0 AND NOT a.attisdropped
        LEFT JOIN pg_attrdef d ON d.adrelid = a.attrelid AND d.adnum = a.attnum
        LEFT JOIN pg_collation l ON l.oid = a.attcollation
    UNION ALL SELECT ours.relname, 'index ' || c.relname, concat_ws(' ', pg_get_indexdef(i.indexrelid), i.indisvalid)
        FROM ours JOIN pg_index i ON i.indrelid = ours.oid JOIN pg_class c ON c.oid = i.indexrelid
    UNION ALL SELECT ours.relname, 'constraint ' || ours.relname || '.' || k.conname,
        concat_ws(' ', pg_get_constraintdef(k.oid), k.convalidated)
        FROM ours JOIN pg_constraint k ON k.conrelid = ours.oid
    UNION ALL SELECT ours.relname, 'trigger ' || t.tgname, concat_ws(' ', pg_get_triggerdef(t.oid), t.tgenabled, p.prosrc)
        FROM ours JOIN pg_trigger t ON t.tgrelid = ours.oid AND NOT t.tgisinternal JOIN pg_proc p ON p.oid = t.tgfoid
    UNION ALL SELECT ours.relname, 'disabled trigger of ' || relname, MIN(CAST(t.tgenabled AS text))
        FROM ours JOIN pg_trigger t ON t.tgrelid = ours.oid AND t.tgisinternal AND t.tgenabled <> 'O' GROUP BY ours.relname
    UNION ALL SELECT ours.relname, 'rule ' || relname || '.' || w.rulename, concat_ws(' ', pg_get_ruledef(w.oid), w.ev_enabled)
        FROM ours JOIN pg_rewrite w ON w.ev_class = ours.oid
    UNION ALL SELECT ours.relname, 'policy ' || relname || '.' || y.polname,
        concat_ws(' ', y.polcmd, pg_get_expr(y.polqual, y.polrelid), pg_get_expr(y.polwithcheck, y.polrelid))
        FROM ours JOIN pg_policy y ON y.polrelid = ours.oid)
SELECT table_name, part, regexp_replace(replace(said, space.prefix, ''), 'pg_temp(_[0-9]+)?\.', '', 'g') FROM parts, space)")
        .arg(space);
}

struct Part {
    std::string table, name, said;
};

std::vector<Part> parts(const Connection& connection, const QString& space) {
    QSqlQuery query(connection.database());
    const auto statement = partsOf(space);
    if (!query.exec(statement))
        throw errorOf(query.lastError(), statement);
    std::vector<Part> found;
    while (query.next())
        found.push_back({query.value(0).toString().toStdString(), query.value(1).toString().toStdString(),
                         query.value(2).toString().toStdString()});
    return found;
}

/// Functions are looked for in no temporary schema that is not named.
QString temporarily(QString statement) {
    return statement.replace(QStringLiteral(" journal_is"), QStringLiteral(" pg_temp.journal_is"));
}

}

Schema schemaOnServer(const Connection& connection, const Schema& made) {
    Schema schema;
    for (auto& [table, name, said] : parts(connection, QStringLiteral("CAST(current_schema() AS regnamespace)")))
        if (made.contains("table " + table))
            schema.emplace(std::move(name), std::move(said));
    return schema;
}

Schema madeOnServer(const std::string& location) {
    const Connection alone(location, Access::ReadWrite);
    const Transaction never(alone);
    try {
        alone.run(QStringLiteral("SET LOCAL search_path TO pg_temp"));
        for (const auto& statement : statementsOfAll(Dialect::Postgres))
            alone.run(temporarily(statement));
    } catch (const StoreError& error) {
        if (error.is(StoreFault::Lost) || error.code() == Code::StoreBusy)
            throw;
        throw StoreError(StoreFault::RightsMissing, error.problem().arguments);
    }
    Schema schema;
    for (auto& [table, name, said] : parts(alone, QStringLiteral("pg_my_temp_schema()")))
        schema.emplace(std::move(name), std::move(said));
    return schema;
}

}
