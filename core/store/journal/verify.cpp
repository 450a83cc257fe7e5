// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/verdict_phrase.h"
#include "store/journal/journal_table.h"

#include <nlohmann/json.hpp>

namespace crownring {

namespace {

struct Row {
    std::int64_t number = 0;
    EntryId id;
    std::string kind;
    std::string on;
    std::int64_t writerNo = 0;
    std::int64_t sequence = 0;
    std::string recordedAt;
    QByteArray hash;
    std::string body;
};

Row rowFrom(Statement& statement) {
    Row row;
    row.number = statement.read<std::int64_t>();
    row.id = statement.read<EntryId>();
    row.kind = statement.read<std::string>();
    row.on = statement.read<std::string>();
    row.writerNo = statement.read<std::int64_t>();
    row.sequence = statement.read<std::int64_t>();
    row.recordedAt = statement.read<std::string>();
    row.hash = statement.read<QByteArray>();
    row.body = statement.read<std::string>();
    return row;
}

/// What the columns beside the body say differently. What cannot be read as an entry is an open question of the record;
/// as long as its text says which entry it is, it is what was written.
std::optional<Phrase> columnsDiffer(const Row& row) {
    const auto entry = entryFrom(row.body);
    bool agree = false;
    if (entry) {
        agree = entry->id == row.id && kindName(entry->body) == row.kind && entry->on.iso() == row.on;
    } else {
        const auto said = nlohmann::json::parse(row.body, nullptr, false);
        if (!said.is_object())
            return Phrase{VerdictPhrase::NoEntry, {messageOf(entry.error())}};
        const auto says = [&](const char* key, const std::string& column) {
            const auto found = said.find(key);
            return found != said.end() && *found == column;
        };
        agree = says("id", row.id.text()) && says("entry", row.kind) && says("on", row.on);
    }
    return agree ? std::nullopt : std::optional(Phrase{VerdictPhrase::ColumnsDiffer, {}});
}

}

std::map<std::int64_t, std::pair<WriterId, JournalTable::Head>> JournalTable::heads() {
    std::map<std::int64_t, std::pair<WriterId, Head>> found;
    m_heads.run();
    while (m_heads.next()) {
        Head head;
        head.writerNo = m_heads.read<std::int64_t>();
        const auto writer = m_heads.read<WriterId>();
        head.sequence = m_heads.read<std::int64_t>();
        const auto hash = m_heads.read<QByteArray>();
        std::copy_n(hash.begin(), std::min<qsizetype>(hash.size(), 32), head.hash.begin());
        found.emplace(head.writerNo, std::pair(writer, head));
    }
    return found;
}

std::vector<Acknowledged> JournalTable::ends() {
    std::vector<Acknowledged> ends;
    for (const auto& [number, end] : heads())
        ends.push_back({end.first, static_cast<std::uint64_t>(end.second.sequence), end.second.hash});
    return ends;
}

Verdict JournalTable::verify(const std::function<bool(double)>& progress) {
    Verdict verdict;
    const auto ends = heads();
    std::map<std::int64_t, Head> reached;
    m_lastNumber.run();
    m_lastNumber.next();
    const auto total = m_lastNumber.read<std::int64_t>();
    m_lastNumber.finish();
    const auto bad = [&](const EntryId& id, Phrase reason) {
        verdict.intact = false;
        verdict.firstBad = id;
        verdict.reason = std::move(reason);
    };
    std::int64_t expectedNumber = 1;
    m_verify.run();
    while (verdict.intact && m_verify.next()) {
        const auto row = rowFrom(m_verify);
        ++verdict.entries;
        const auto writer = ends.find(row.writerNo);
        auto& head = reached[row.writerNo];
        if (row.number != expectedNumber++ || row.sequence != head.sequence + 1) {
            bad(row.id, {VerdictPhrase::EntryBeforeMissing, {}});
        } else if (writer == ends.end()) {
            bad(row.id, {VerdictPhrase::WriterUnknown, {}});
        } else {
            const Link link{writer->second.first, static_cast<std::uint64_t>(row.sequence), row.recordedAt, head.hash};
            const auto hash = entryHash(link, row.body);
            const QByteArray stored(reinterpret_cast<const char*>(hash.data()), static_cast<qsizetype>(hash.size()));
            if (stored != row.hash)
                bad(row.id, {VerdictPhrase::HashDiffers, {}});
            else if (auto reason = columnsDiffer(row))
                bad(row.id, *std::move(reason));
            head = {row.writerNo, row.sequence, hash};
        }
        constexpr std::int64_t step = 5000;
        if (progress && verdict.entries % step == 0 &&
            !progress(static_cast<double>(verdict.entries) / static_cast<double>(std::max<std::int64_t>(total, 1)))) {
            verdict.reason = Phrase{VerdictPhrase::Stopped, {}};
            m_verify.finish();
            return verdict;
        }
    }
    m_verify.finish();
    for (const auto& [number, end] : ends) {
        const auto& head = reached[number];
        if (verdict.intact && (head.sequence != end.second.sequence || head.hash != end.second.hash)) {
            verdict.intact = false;
            verdict.reason = Phrase{VerdictPhrase::LastEntriesMissing, {end.first}};
        }
    }
    return verdict;
}

}
