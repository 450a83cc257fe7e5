// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/backup.h"

#include "problem/faults/writing_fault.h"
#include "store/journal/journal_table.h"
#include "store/older_copy.h"
#include "store/schema/schema_flaw.h"
#include "store/verdict.h"
#include "writing/draft.h"

#include <QtCore/QDateTime>

namespace crownring {

namespace {

/// A copy of an earlier schema, as one is made before the schema is changed, holds other tables than are known here; so
/// does one of a later.
Verdict verdictOfCopy(const Connection& copy) {
    JournalTable journal(copy);
    if (isOfAnotherSchema(copy))
        return journal.verify({});
    Names names(copy);
    FlightTotals totals(copy);
    Tallies tallies(copy, names, totals);
    return verdictOf(copy, journal, tallies, {});
}

void checkCopy(const std::string& file) {
    const Connection copy(file, Access::ReadOnly);
    if (copy.ask(QStringLiteral("PRAGMA integrity_check")) != QStringLiteral("ok"))
        throw StoreError(StoreFault::CopyDamaged);
    if (!copy.ask(QStringLiteral("PRAGMA foreign_key_check")).isEmpty())
        throw StoreError(StoreFault::CopyDangles);
    if (const auto verdict = verdictOfCopy(copy); !verdict.intact)
        throw StoreError(StoreFault::CopyBroken, {*verdict.reason});
}

}

Result<void> backUp(const Connection& connection, const std::string& file, Replace replace) {
    if (connection.dialect() != Dialect::Sqlite)
        throw StoreError(StoreFault::SharedRecord);
    if (foundAt(file) == Found::Record) {
        if (auto why = whyNoOlderCopy(connection, file))
            return tl::unexpected(std::move(*why));
        if (replace == Replace::Never)
            return problem(WritingFault::Exists, {}, {file, 0, {}});
        replace = Replace::Copy;
    }
    auto draft = Draft::of(file, replace);
    if (!draft)
        return tl::unexpected(draft.error());
    auto quoted = QString::fromStdString(draft->path());
    quoted.replace(QLatin1Char('\''), QStringLiteral("''"));
    connection.run(QStringLiteral("VACUUM INTO '%1'").arg(quoted));
    checkCopy(draft->path());
    return draft->keep();
}

void migrateWithBackup(const Connection& connection, const std::vector<MigrationStep>& steps, const std::string& file,
                       const std::function<void()>& remake) {
    const int version = schemaVersion(connection);
    const int newest = steps.back().version;
    if (version > 0 && version < newest && connection.dialect() == Dialect::Sqlite)
        if (const auto copied =
                backUp(connection,
                       file + ".before-" + std::to_string(newest) + "-" +
                           QDateTime::currentDateTimeUtc().toString(QStringLiteral("yyyyMMddhhmmss")).toStdString(),
                       Replace::Never);
            !copied)
            throw StoreError(copied.error());
    migrate(connection, steps, remake);
}

}
