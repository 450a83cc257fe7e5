// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/backup.h"

#include "store/journal/journal_table.h"

#include <QtCore/QDateTime>
#include <QtCore/QFile>
#include <unistd.h>

namespace crownring {

namespace {

void checkCopy(const QString& file) {
    const Connection copy(file.toStdString(), Access::ReadOnly);
    if (copy.ask(QStringLiteral("PRAGMA integrity_check")) != QStringLiteral("ok"))
        throw StoreError(StoreFault::CopyDamaged);
    if (!copy.ask(QStringLiteral("PRAGMA foreign_key_check")).isEmpty())
        throw StoreError(StoreFault::CopyDangles);
    const auto verdict = JournalTable(copy).verify({});
    if (!verdict.intact)
        throw StoreError(StoreFault::CopyBroken, {*verdict.reason});
}

void flushToDisk(const QString& file) {
    QFile copy(file);
    if (!copy.open(QIODevice::ReadWrite) || ::fsync(copy.handle()) != 0)
        throw StoreError(StoreFault::CopyNotWritten);
}

}

void backUp(const Connection& connection, const std::string& file) {
    const auto target = QString::fromStdString(file);
    const auto draft = target + QStringLiteral(".part");
    if (connection.dialect() != Dialect::Sqlite)
        throw StoreError(StoreFault::SharedRecord);
    if (QFile::exists(target))
        throw StoreError(StoreFault::FileExists, {file});
    QFile::remove(draft);
    try {
        auto quoted = draft;
        quoted.replace(QLatin1Char('\''), QStringLiteral("''"));
        connection.run(QStringLiteral("VACUUM INTO '%1'").arg(quoted));
        checkCopy(draft);
        flushToDisk(draft);
        if (!QFile::rename(draft, target))
            throw StoreError(StoreFault::CopyNotNamed, {file});
    } catch (...) {
        QFile::remove(draft);
        throw;
    }
}

void migrateWithBackup(const Connection& connection, const std::vector<MigrationStep>& steps, const std::string& file,
                       const std::function<void()>& remake) {
    const int version = schemaVersion(connection);
    const int newest = steps.back().version;
    if (version > 0 && version < newest && connection.dialect() == Dialect::Sqlite)
        backUp(connection,
               file + ".before-" + std::to_string(newest) + "-" +
                   QDateTime::currentDateTimeUtc().toString(QStringLiteral("yyyyMMddhhmmss")).toStdString());
    migrate(connection, steps, remake);
}

}
