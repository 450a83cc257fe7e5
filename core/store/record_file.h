// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Opening a record: an SQLite file, or a shared PostgreSQL database ("postgresql://user@host/name").

#include "record/journal.h"
#include "registry/books.h"
#include "writing/target.h"

#include <memory>
#include <string>

namespace crownring {

/// While it lives, everything that the record is asked is answered from one state of it, whoever writes beside. What is
/// written through the same record ends that state, and another begins after it.
class Snapshot {
public:
    Snapshot() = default;
    Snapshot(const Snapshot&) = delete;
    Snapshot& operator=(const Snapshot&) = delete;
    virtual ~Snapshot() = default;
};

/// A record that is open. Belongs to the thread that opened it; one thread a record.
class Record : public Journal, public Books {
public:
    /// To be held for an answer that takes several questions, and let go of soon: before the record, and on its thread.
    virtual Result<std::unique_ptr<Snapshot>> snapshot() = 0;
    /// The end of this writer's chain with what was posted last here; empty before anything was.
    [[nodiscard]] virtual std::optional<Acknowledged> lastAcknowledged() const = 0;
    /// Whether another program has written since this was asked last; the first time nobody has. Cheap: to be asked
    /// several times a second. Between snapshots only.
    virtual Result<bool> othersWrote() = 0;
    /// Whether it was found intact as a whole once, by anything that this user ran, and nothing but this program has
    /// written to it since; true also of what is of another version, of which nothing can be told. Cheap.
    virtual Result<bool> isProven() = 0;
    /// What a verification beside it has found: of a record that is not intact nothing is said any more, and it may
    /// only be read, until it is rebuilt.
    virtual void heed(const Verdict& verdict) = 0;
    /// Throws all projections away and makes them anew from the journal, in one transaction.
    virtual Result<void> rebuild() = 0;
    /// Where the chain of each writer ends.
    virtual Result<std::vector<Acknowledged>> ends() = 0;
    /// Those of the ends of chains that were acknowledged once whose entry is not in the record, or is another one.
    virtual Result<std::vector<Acknowledged>> missing(const std::vector<Acknowledged>& expected) = 0;
    /// Writes a copy that was verified as a whole (SQLite only). What may be replaced, writing/target.h says;
    /// of records only an older copy of this one, all of whose entries and photographs it holds, that nobody has open.
    /// @return FileExists, FileUnwritable; StoreFailed where the copy does not pass
    virtual Result<void> backUpTo(const std::string& file, Replace replace = Replace::Never) = 0;
    /// Empty, or why the record may only be read: it is not intact, its file or folder cannot be written, or it is of a
    /// later version.
    [[nodiscard]] virtual std::optional<Problem> readOnlyReason() const = 0;
};

enum class OpenMode {
    Existing, ///< StoreUnopened when there is no such record
    ToRead,   ///< the same, and not a byte of it is written, not even when it is closed
    OrCreate, ///< made when there is none
};

/// Why there is no record and can be none: a folder, a device, a pipe, what is only in memory. Nothing is opened.
[[nodiscard]] std::optional<Problem> whyNoRecordAt(const std::string& location);

/// @param location a file name or a URL
/// @param writer who writes: names the chain; empty for this machine's own name
[[nodiscard]] Result<std::unique_ptr<Record>> openRecord(const std::string& location, OpenMode mode,
                                                         const WriterId& writer = {});

}
