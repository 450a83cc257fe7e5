// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/record_file.h"

#include "problem/faults/entry_fault.h"
#include "record/chain/recorded.h"
#include "record/new_id.h"
#include "store/backup.h"
#include "store/schema/migration.h"
#include "store/schema/schema_flaw.h"
#include "store/sql_record.h"
#include "store/verify/replay.h"
#include "text/legible.h"

#include <QtCore/QDateTime>
#include <QtCore/QFileInfo>
#include <QtCore/QSysInfo>

namespace crownring {

namespace {

WriterId thisMachine() {
    const auto id = QSysInfo::machineUniqueId();
    const auto name = id.isEmpty() ? QSysInfo::machineHostName().toUtf8() : id;
    return WriterId("m-" + hex(sha256(name.toStdString())).substr(0, 16));
}

/// What it keeps beside its file has to be made there.
std::optional<Problem> whyOnlyRead(const std::string& location) {
    const QFileInfo file(QString::fromStdString(location));
    if (!file.exists())
        return std::nullopt;
    if (!file.isWritable())
        return Problem{StoreFault::ReadOnlyFile};
    if (!isFolderWritable(location))
        return Problem{StoreFault::ReadOnlyFolder, {file.absolutePath().toStdString()}};
    return std::nullopt;
}

/// Nothing is written into what would write something else. What a server keeps is compared by `verify` alone: building
/// all of it anew takes longer than opening.
std::optional<Problem> whyNotWritten(const Connection& connection) {
    if (connection.dialect() == Dialect::Postgres)
        return std::nullopt;
    if (const auto part = schemaFlaw(connection))
        return Problem{StoreFault::OtherSchema, {*part}};
    if (const auto step = stepFlaw(connection))
        return Problem{StoreFault::OtherSchema, {"step " + std::to_string(*step)}};
    return std::nullopt;
}

std::unique_ptr<SqlRecord> open(const std::string& location, OpenMode mode, const WriterId& writer) {
    if (!writer.empty() && !(isUsableName(writer.text()) && isLegible(writer.text())))
        throw StoreError(Problem{EntryFault::NotLegible, {writer}});
    const bool shared = isPostgres(location);
    const QFileInfo file(QString::fromStdString(location));
    if (const auto why = whyNoRecordAt(location))
        throw StoreError(*why);
    if (!shared && mode != OpenMode::OrCreate && (!file.exists() || file.size() == 0))
        throw StoreError(file.exists() ? StoreFault::EmptyFile : StoreFault::NoRecord, {location});

    auto readOnly = shared                     ? std::nullopt
                    : mode == OpenMode::ToRead ? std::optional(Problem{StoreFault::ReadOnlyFile})
                                               : whyOnlyRead(location);
    auto connection = std::make_unique<Connection>(location, readOnly ? Access::ReadOnly : Access::ReadWrite);
    const auto steps = migrationSteps(connection->dialect());
    const int version = schemaVersion(*connection);
    const int newest = steps.back().version;
    if (version == 0 && mode != OpenMode::OrCreate)
        throw StoreError(StoreFault::NoRecord, {location});
    if (version > newest) {
        readOnly = Problem{StoreFault::Newer, {version, newest}};
    } else if (version > 0 && version < newest && readOnly) {
        throw StoreError(StoreFault::Older, {version, newest});
    } else if (version < newest) {
        migrateWithBackup(*connection, steps, location, [&] {
            Names names(*connection);
            JournalTable journal(*connection);
            Projector projector(*connection, names);
            Tallies tallies(*connection, names, projector.totals());
            remake(journal, projector, tallies);
        });
    }
    if (!readOnly)
        readOnly = whyNotWritten(*connection);
    auto record = std::make_unique<SqlRecord>(std::move(connection), writer.empty() ? thisMachine() : writer, readOnly);
    if (version == 0)
        record->keepProven();
    return record;
}

}

std::optional<Problem> whyNoRecordAt(const std::string& location) {
    if (isPostgres(location))
        return std::nullopt;
    const QFileInfo file(QString::fromStdString(location));
    if (file.isDir())
        return Problem{StoreFault::IsAFolder, {location}};
    // SQLite takes these two names for no file at all.
    if (location.empty() || location == ":memory:" || (file.exists() && !file.isFile()))
        return Problem{StoreFault::NoFile, {location}};
    return std::nullopt;
}

SqlRecord::SqlRecord(std::unique_ptr<Connection> connection, WriterId writer, std::optional<Problem> readOnlyReason)
    : m_connection(std::move(connection)), m_writer(std::move(writer)), m_readOnlyReason(std::move(readOnlyReason)),
      m_proven(m_connection->location()), m_names(*m_connection), m_journal(*m_connection),
      m_projector(*m_connection, m_names) {
    m_otherVersion = isOfAnotherSchema(*m_connection);
    if (m_otherVersion)
        m_journal.trustAmendments();
    m_projector.beforeTouch([this](const Touch& touch) { tallies().check(touch); });
    heedClock(m_journal, m_writer);
}

void SqlRecord::heedClock(JournalTable& journal, const WriterId& writer) {
    const auto last = guarded([&] { return recordedFrom(journal.lastRecorded(writer)).at; });
    const auto at = QDateTime::fromString(QString::fromStdString(last.value_or(std::string())), Qt::ISODate);
    const QDateTime begin(QDate(1970, 1, 1), QTime(0, 0), Qt::UTC);
    if (at.isValid())
        newIdsAfter(std::chrono::seconds(begin.secsTo(at) + 1));
}

Tallies& SqlRecord::tallies() {
    if (!m_tallies)
        m_tallies = std::make_unique<Tallies>(*m_connection, m_names, m_projector.totals());
    return *m_tallies;
}

Result<void> SqlRecord::backUpTo(const std::string& file, Replace replace) {
    const Interrupted interrupted(*this); // a copy is not made inside a transaction
    auto answer = guarded([&] { return backUp(*m_connection, file, replace); });
    return answer ? std::move(*answer) : tl::unexpected(answer.error());
}

Result<std::unique_ptr<Record>> openRecord(const std::string& location, OpenMode mode, const WriterId& writer) {
    try {
        return open(location, mode, writer);
    } catch (const StoreError& error) {
        auto problem = error.problem();
        problem.where.file = location;
        return tl::unexpected(std::move(problem));
    }
}

}
