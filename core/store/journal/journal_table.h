// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The journal's table: rows come in at the end, each linked to its writer's previous one, and are read back as they
/// were written.

#include "record/amendment.h"
#include "record/journal.h"
#include "store/connection/statement.h"

#include <map>
#include <memory>
#include <optional>
#include <unordered_map>
#include <vector>

namespace crownring {

class JournalTable {
public:
    explicit JournalTable(const Connection& connection);

    /// Reads where the journal and the writer's chain end. To be called inside the write transaction.
    void beginWriting(const WriterId& writer, const std::string& recordedAt);
    /// @throws StoreError, also for an id that is there already
    std::int64_t write(const Entry& entry);
    /// Stores the chain's new end.
    void finishWriting();
    /// Lets go of what was kept while writing, at the end of the transaction.
    void forget();

    [[nodiscard]] bool has(const EntryId& id);
    [[nodiscard]] std::optional<JournalLine> line(const EntryId& id);
    /// The line of the entry that an amendment is about in the end; of the entry itself where it amends nothing.
    [[nodiscard]] std::optional<JournalLine> root(const EntryId& id);
    /// Latest arrival first.
    [[nodiscard]] std::vector<JournalLine> lines(const JournalQuery& query);
    /// All entries in the order of their arrival, one by one, to `take`.
    void each(const std::function<void(std::int64_t number, Entry&& entry)>& take);

    void noteAmendment(const EntryId& target, std::int64_t number);
    /// What an entry is about in the end, with all that amends it; null where the record holds no such entry. Read once
    /// while a transaction writes.
    [[nodiscard]] std::shared_ptr<AmendmentTree> around(const EntryId& id);
    /// Writes an amendment, and adds it to what it is about.
    void amend(const Entry& amendment, const std::shared_ptr<AmendmentTree>& around);
    /// An entry with all that amends it. @throws StoreError when it is not there
    [[nodiscard]] AmendmentTree amendedBy(const EntryId& original);

    [[nodiscard]] Verdict verify(const std::function<bool(double)>& progress);

private:
    struct Head {
        std::int64_t writerNo = 0;
        std::int64_t sequence = 0;
        Digest hash{};
    };
    [[nodiscard]] std::map<std::int64_t, std::pair<WriterId, Head>> heads();
    [[nodiscard]] static JournalLine lineFrom(Statement& row);
    [[nodiscard]] std::optional<Entry> find(const EntryId& id);
    [[nodiscard]] std::vector<Entry> amendmentsOf(const EntryId& id);
    void addState(JournalLine& line);
    static void addState(JournalLine& line, const std::optional<Entry>& now);

    const Connection& m_connection;
    Statement m_lastNumber, m_head, m_putWriter, m_setHead, m_put, m_has, m_find, m_line, m_each;
    Statement m_putAmendment, m_amendments, m_heads, m_verify;
    std::int64_t m_number = 0;
    WriterId m_writer;
    Head m_end;
    std::string m_recordedAt;
    bool m_writing = false;
    std::unordered_map<EntryId, std::shared_ptr<AmendmentTree>> m_around; ///< by each entry in them, while writing
};

}
