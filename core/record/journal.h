// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a journal is: entries come in, all of a batch or none; they can be read in the order of their arrival, and the
/// chain over them can be verified. `store` implements it.

#include "problem/problem.h"
#include "record/chain/acknowledged.h"
#include "record/entry.h"
#include "record/entry_json.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace crownring {

struct Receipt {
    std::vector<EntryId> ids;        ///< of the entries posted, in their order
    std::optional<Acknowledged> end; ///< of the writer's chain, with the last of them; nothing where none was posted
};

/// What stands in the journal although our reader refuses it: an earlier program let it in. Nothing follows from it,
/// and it is asked about until it is voided.
struct Unread {
    std::string kind; ///< "programme.adopted" …
    std::string text; ///< as it stands
    Problem why;
    bool operator==(const Unread&) const = default;
};

/// An entry as it stands in the journal, with what has become of it.
struct JournalLine {
    std::int64_t number = 0;      ///< order of arrival, from 1
    Entry entry;                  ///< as written; of one that cannot be read only the id and the day
    std::optional<Unread> unread; ///< why it cannot be read
    std::string recordedAt;       ///< as the chain keeps it (record/chain/recorded.h)
    WriterId writer;
    Digest hash{};
    bool voided = false;
    std::optional<Entry> current; ///< what it says now, where corrections changed it
};

/// An entry that was voided, with what voids it.
struct TakenOut {
    Entry entry; ///< as it was written
    Entry taken;
};

/// What it says now.
[[nodiscard]] inline const Entry& nowOf(const JournalLine& line) { return line.current ? *line.current : line.entry; }

struct JournalQuery {
    std::string text;                   ///< words that must all occur in the entry's text, any case; empty: all
    std::optional<std::string> kind;    ///< "flight.logged" …
    std::optional<std::int64_t> before; ///< only entries that arrived before this number
    int limit = 100;
};

struct Verdict {
    std::int64_t entries = 0;
    bool intact = true;
    std::optional<EntryId> firstBad; ///< the first entry, by arrival, that is not what was written
    std::optional<Phrase> reason;    ///< why not, or that it was stopped
    bool rebuildMends = false;       ///< not intact, but all entries are: what was computed from them is wrong
    std::string projection;          ///< with `rebuildMends`: the table that is not what the journal gives
    std::optional<EntryId> behind;   ///< with `rebuildMends`: the entry behind the row that differs
};

/// A photograph that entries name by its digest.
struct Picture {
    std::string media; ///< "image/jpeg" or "image/png"
    std::string bytes;
    bool operator==(const Picture&) const = default;
};

class Journal {
public:
    virtual ~Journal() = default;

    /// Appends all entries in one durable transaction, or none and says why, with file, line and key. Entries without
    /// an id get one. References to items and balloons may point anywhere into the record or the batch; an amended
    /// entry must be in the record or earlier in the batch.
    /// @param judge is asked when all is written and nothing is durable yet; with any problem everything is rolled back
    using Judge = std::function<std::vector<Problem>(std::span<const NumberedEntry> written)>;
    virtual Results<Receipt> append(std::vector<NumberedEntry> entries, const std::string& file,
                                    const Judge& judge = {}) = 0;
    /// Latest arrival first.
    virtual Result<std::vector<JournalLine>> lines(const JournalQuery& query) = 0;
    virtual Result<std::optional<JournalLine>> line(const EntryId& id) = 0;
    /// The line of the entry that an amendment is about in the end, since amendments may stand on one another; of the
    /// entry itself where it amends nothing.
    virtual Result<std::optional<JournalLine>> root(const EntryId& id) = 0;
    /// What the entry that an amendment is about in the end said before it, by all that amended it until then; nothing
    /// where it was voided or cannot be read, and for what is no amendment.
    virtual Result<std::optional<Entry>> before(const EntryId& amendment) = 0;
    /// Keeps a photograph durably. @return the SHA-256 of its bytes, 64 hex digits, by which entries name it
    virtual Result<std::string> keepPicture(const Picture& picture) = 0;
    virtual Result<std::optional<Picture>> picture(const std::string& digest) = 0;
    /// Recomputes every hash, holds every projection against what the journal gives, photographs against their digests
    /// and the schema against that of this version, and lets the database check its pages. @param progress is told the
    /// share done (0 to 1) and may answer false to stop.
    virtual Result<Verdict> verify(const std::function<bool(double)>& progress = {}) = 0;
};

}
