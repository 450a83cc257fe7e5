// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/use_fault.h"
#include "store/queries/told_reader.h"
#include "store/sql_record.h"

namespace crownring {

/// What cannot be read is asked about elsewhere, and told of nobody.
std::vector<JournalLine> SqlRecord::readableLines(const std::vector<EntryId>& ids) {
    std::vector<JournalLine> lines;
    lines.reserve(ids.size());
    for (const auto& id : ids) {
        auto line = m_journal.line(id);
        if (!line) // what stands beside the journal speaks of it
            throw StoreError(StoreFault::JournalLacks, {id});
        if (!line->unread)
            lines.push_back(std::move(*line));
    }
    return lines;
}

Result<std::vector<JournalLine>> SqlRecord::told(const Told& asked) {
    return answered([&] {
        // The gate asks for names that are new; an answer says of none that it is unknown while one was altered.
        const auto number = !asked.name       ? std::nullopt
                            : m_inTransaction ? m_names.find(asked.subject, *asked.name)
                                              : m_names.look(asked.subject, *asked.name);
        if (asked.name && !number)
            return std::vector<JournalLine>();
        ToldReader reader(*m_connection);
        check({reader.account(asked.subject, number)});
        return readableLines(reader.told(asked, number));
    });
}

Result<std::vector<JournalLine>> SqlRecord::history(const std::optional<Registration>& balloon,
                                                    const std::optional<ItemId>& item, CivilDate on, int limit) {
    return answered([&] {
        const auto number = item ? m_names.look(*item) : balloon ? m_names.look(*balloon) : std::nullopt;
        if (!number)
            throw StoreError(Problem{UseFault::NoSubject});
        ToldReader reader(*m_connection);
        check({reader.account(item ? Subject::Item : Subject::Balloon, number)});
        return readableLines(item ? reader.ofItem(*number, on, limit) : reader.ofBalloon(*number, on, limit));
    });
}

Result<std::vector<JournalLine>> SqlRecord::lines(const JournalQuery& query) {
    return guarded([&] { return m_journal.lines(query); });
}

Result<std::optional<JournalLine>> SqlRecord::line(const EntryId& id) {
    return guarded([&] { return m_journal.line(id); });
}

Result<std::optional<JournalLine>> SqlRecord::root(const EntryId& id) {
    return guarded([&] { return m_journal.root(id); });
}

Result<std::optional<Entry>> SqlRecord::before(const EntryId& amendment) {
    return guarded([&] { return m_journal.before(amendment); });
}

}
