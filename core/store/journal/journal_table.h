// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The journal's table: rows come in at the end, each linked to its writer's previous one, and are read back as they
/// were written.

#include "record/journal.h"
#include "store/connection/statement.h"

#include <map>
#include <optional>
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

    [[nodiscard]] bool has(const EntryId& id);
    [[nodiscard]] std::optional<Entry> find(const EntryId& id);
    [[nodiscard]] std::optional<JournalLine> line(const EntryId& id);
    /// Latest arrival first.
    [[nodiscard]] std::vector<JournalLine> lines(const JournalQuery& query);
    /// All entries in the order of their arrival, one by one, to `take`.
    void each(const std::function<void(std::int64_t number, Entry&& entry)>& take);

    void noteAmendment(const EntryId& target, std::int64_t number);
    /// All that amend an entry, directly or through one another, in the order of their arrival.
    [[nodiscard]] std::vector<Entry> amendmentsOf(const EntryId& id);
    /// The entry that an amendment is about in the end: follows the targets to one that amends nothing.
    [[nodiscard]] Entry rootOf(const Entry& amendment);

    [[nodiscard]] Verdict verify(const std::function<bool(double)>& progress);

private:
    struct Head {
        std::int64_t writerNo = 0;
        std::int64_t sequence = 0;
        Digest hash{};
    };
    [[nodiscard]] std::map<std::int64_t, std::pair<WriterId, Head>> heads();
    [[nodiscard]] static JournalLine lineFrom(Statement& row);
    void addState(JournalLine& line);

    const Connection& m_connection;
    Statement m_lastNumber, m_head, m_putWriter, m_setHead, m_put, m_has, m_find, m_line, m_each;
    Statement m_putAmendment, m_amendments, m_heads, m_verify;
    std::int64_t m_number = 0;
    WriterId m_writer;
    Head m_end;
    std::string m_recordedAt;
};

}
