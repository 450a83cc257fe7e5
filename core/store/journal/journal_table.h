// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The journal's table: rows come in at the end, each linked to its writer's previous one, and are read back as they
/// were written.

#include "record/amendment.h"
#include "record/journal.h"
#include "store/accounts/account_book.h"

#include <map>
#include <memory>
#include <optional>
#include <unordered_map>
#include <vector>

namespace crownring {

/// A row of the journal: the entry, or why it cannot be read; `entry` then has its id and day only.
struct Written {
    std::int64_t number = 0; ///< order of arrival, from 1
    Entry entry;
    std::optional<Unread> unread;
};

/// An entry with all that amends it. What cannot be read amends nothing.
struct AmendedEntry {
    std::int64_t number = 0;      ///< of the entry
    std::optional<Unread> unread; ///< why the entry cannot be read
    AmendmentTree tree;
};

class JournalTable {
public:
    explicit JournalTable(const Connection& connection);

    /// Reads where the journal and the writer's chain end. To be called inside the write transaction.
    /// @param now by the machine's clock
    void beginWriting(const WriterId& writer, const std::string& now);
    /// @param body the entry's text, known to be read again as this entry (`readableText`)
    /// @throws StoreError, also for an id that is there already
    std::int64_t write(const Entry& entry, const std::string& body);
    /// Stores the chain's new end. @return it
    Acknowledged finishWriting();
    /// Lets go of what was kept while writing, at the end of the transaction.
    void forget();

    /// What the chain keeps of when the writer's latest entry was written down; empty where there is none.
    [[nodiscard]] std::string lastRecorded(const WriterId& writer);
    [[nodiscard]] bool has(const EntryId& id);
    /// Whether the entry with which a chain once ended is there.
    [[nodiscard]] bool holds(const Acknowledged& end);
    /// Of each writer.
    [[nodiscard]] std::vector<Acknowledged> ends();
    [[nodiscard]] std::optional<JournalLine> line(const EntryId& id);
    /// The line of the entry that an amendment is about in the end; of the entry itself where it amends nothing.
    [[nodiscard]] std::optional<JournalLine> root(const EntryId& id);
    /// What an amendment is about in the end, as it stood when the amendment came.
    [[nodiscard]] std::optional<Entry> before(const EntryId& amendment);
    /// Latest arrival first.
    [[nodiscard]] std::vector<JournalLine> lines(const JournalQuery& query);
    /// All entries in the order of their arrival, one by one, to `take`.
    void each(const std::function<void(Written&& written)>& take);

    /// Beside the account that is kept of it.
    void noteAmendment(const EntryId& target, std::int64_t number);
    /// Of a record of another version, which may keep no account of what amends what, or another.
    void trustAmendments() { m_trusting = true; }
    [[nodiscard]] std::optional<Written> find(const EntryId& id);
    /// What an entry is about in the end, with all that amends it; null where the record holds no such entry. Read once
    /// while a transaction writes.
    [[nodiscard]] std::shared_ptr<AmendedEntry> around(const EntryId& id);
    /// Writes an amendment, and adds it to what it is about.
    void amend(const Entry& amendment, const std::string& body, const std::shared_ptr<AmendedEntry>& around);
    /// An entry with all that amends it. @throws StoreError when it is not there
    [[nodiscard]] AmendedEntry amendedBy(const EntryId& original);

    [[nodiscard]] Verdict verify(const std::function<bool(double)>& progress);

private:
    struct Head {
        std::int64_t writerNo = 0;
        std::int64_t sequence = 0;
        Digest hash{};
    };
    [[nodiscard]] std::map<std::int64_t, std::pair<WriterId, Head>> heads();
    [[nodiscard]] static JournalLine lineFrom(Statement& row);
    /// @throws StoreError where they are not those that were written
    [[nodiscard]] std::vector<Entry> amendmentsOf(const EntryId& id);
    [[nodiscard]] AccountBook& book();
    void addState(JournalLine& line);
    static void addState(JournalLine& line, const std::optional<Entry>& now);

    const Connection& m_connection;
    std::optional<AccountBook> m_book; ///< once it is asked: a record of an earlier version has none
    bool m_trusting = false;
    Statement m_lastNumber, m_lastRecorded, m_head, m_putWriter, m_setHead, m_put, m_has, m_holds, m_find, m_line,
        m_each;
    Statement m_putAmendment, m_amendments, m_heads, m_verify;
    std::int64_t m_number = 0;
    WriterId m_writer;
    Head m_end;
    std::string m_recordedAt;
    bool m_writing = false;
    std::unordered_map<EntryId, std::shared_ptr<AmendedEntry>> m_around; ///< by each entry in them, while writing
};

}
