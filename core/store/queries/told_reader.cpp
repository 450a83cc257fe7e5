// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/told_reader.h"

#include "store/projection/kept.h"

#include <string>

namespace crownring {

namespace {

constexpr const char* historyOfItem =
    "SELECT at, entry_id FROM ("
    "SELECT at, entry_id FROM item_entered WHERE item_no = ?"
    " UNION ALL SELECT at, entry_id FROM fitting WHERE item_no = ?"
    " UNION ALL SELECT at, entry_id FROM fitting WHERE carrier_no = ?"
    " UNION ALL SELECT at, entry_id FROM done WHERE item_no = ?"
    " UNION ALL SELECT at, entry_id FROM reading WHERE item_no = ?"
    " UNION ALL SELECT at, entry_id FROM kit_flight WHERE item_no = ?"
    " UNION ALL SELECT at, entry_id FROM occurrence WHERE sort = 1 AND subject_no = ?"
    " UNION ALL SELECT at, entry_id FROM told WHERE sort = 1 AND subject_no = ?"
    " UNION ALL SELECT at, entry_id FROM defect_mark WHERE item_no = ?"
    " UNION ALL SELECT f.at, f.entry_id FROM stay s JOIN flight f ON f.balloon_no = s.balloon_no AND f.counted = 1"
    " AND (f.at, f.entry_id) >= (s.from_at, s.from_id)"
    " AND (s.until_at IS NULL OR (f.at, f.entry_id) < (s.until_at, s.until_id)) WHERE s.item_no = ?"
    " UNION SELECT o.at, o.entry_id FROM stay s JOIN occurrence o ON o.sort = 2 AND o.subject_no = s.balloon_no"
    " AND (o.at, o.entry_id) >= (s.from_at, s.from_id)"
    " AND (s.until_at IS NULL OR (o.at, o.entry_id) < (s.until_at, s.until_id)) WHERE s.item_no = ?"
    ") AS told WHERE at < ? ORDER BY at DESC, entry_id DESC LIMIT ?";

/// Inspections that were opened of the balloon: closings and what came after stand under these alone.
#define ITS_INSPECTIONS                                                                                                \
    " (SELECT o.inspection FROM stay s JOIN opening o ON o.item_no = s.item_no JOIN told b ON b.sort = 2"              \
    " AND b.subject_no = s.balloon_no AND b.at = o.at AND b.entry_id = o.entry_id WHERE s.balloon_no = ?)"

constexpr const char* historyOfBalloon =
    "SELECT at, entry_id FROM ("
    "SELECT at, entry_id FROM balloon_entered WHERE balloon_no = ?"
    " UNION ALL SELECT at, entry_id FROM fitting WHERE balloon_no = ?"
    " UNION ALL SELECT at, entry_id FROM flight WHERE balloon_no = ?"
    " UNION ALL SELECT at, entry_id FROM occurrence WHERE sort = 2 AND subject_no = ?"
    " UNION ALL SELECT at, entry_id FROM told WHERE sort = 2 AND subject_no = ?"
    " UNION ALL SELECT d.at, d.entry_id FROM stay s JOIN done d ON d.item_no = s.item_no"
    " AND (d.at, d.entry_id) >= (s.from_at, s.from_id)"
    " AND (s.until_at IS NULL OR (d.at, d.entry_id) < (s.until_at, s.until_id)) WHERE s.balloon_no = ?"
    " UNION ALL SELECT m.at, m.entry_id FROM stay s JOIN defect_mark m ON m.item_no = s.item_no"
    " AND (m.at, m.entry_id) >= (s.from_at, s.from_id)"
    " AND (s.until_at IS NULL OR (m.at, m.entry_id) < (s.until_at, s.until_id)) WHERE s.balloon_no = ?"
    " UNION ALL SELECT at, entry_id FROM closing WHERE inspection IN" ITS_INSPECTIONS
    " UNION ALL SELECT at, entry_id FROM approval WHERE inspection IN" ITS_INSPECTIONS
    " UNION ALL SELECT at, entry_id FROM revocation WHERE inspection IN" ITS_INSPECTIONS
    ") AS told WHERE at < ? ORDER BY at DESC, entry_id DESC LIMIT ?";

#undef ITS_INSPECTIONS

/// Of rows of stamps.
std::vector<EntryId> idsFrom(Statement& rows) {
    std::vector<EntryId> ids;
    while (rows.next()) {
        rows.skip();
        if (auto id = rows.read<EntryId>(); ids.empty() || ids.back() != id) // told by its own rows and by its subject
            ids.push_back(std::move(id));
    }
    return ids;
}

/// What the journal lacks is among them, for whoever reads it there to tell.
std::string anyOf(std::size_t kinds) {
    std::string text = " AND (e.kind IS NULL";
    for (std::size_t i = 0; i < kinds; ++i)
        text += " OR e.kind = ?";
    return text + ")";
}

}

std::vector<EntryId> ToldReader::told(const Told& asked, std::optional<std::int64_t> number) {
    const bool ofKinds = !asked.kinds.empty();
    const auto text = "SELECT DISTINCT t.at, t.entry_id FROM told t" +
                      std::string(ofKinds ? " LEFT JOIN entry e ON e.entry_id = t.entry_id" : "") +
                      " WHERE t.sort = ? AND t.at < ?" + (number ? " AND t.subject_no = ?" : "") +
                      (ofKinds ? anyOf(asked.kinds.size()) : "") + " ORDER BY t.at, t.entry_id";
    Statement rows(m_connection, text.c_str());
    rows.bind(static_cast<int>(asked.subject));
    rows.bind(Moment::endOf(asked.on).minutes());
    if (number)
        rows.bind(*number);
    for (const auto kind : asked.kinds)
        rows.bind(std::string(kind));
    rows.runBound();
    return idsFrom(rows);
}

std::vector<std::pair<EntryId, EntryId>> ToldReader::voided(std::string_view kind) {
    Statement rows(m_connection,
                   "SELECT d.entry_id, v.entry_id FROM entry v JOIN amendment a ON a.entry_no = v.entry_no"
                   " JOIN entry d ON d.entry_id = a.target_id WHERE v.kind = ? AND d.kind = ?"
                   " ORDER BY v.entry_no");
    rows.bind(std::string(kindName<EntryVoided>()));
    rows.bind(std::string(kind));
    rows.runBound();
    std::vector<std::pair<EntryId, EntryId>> found;
    while (rows.next()) {
        auto entry = rows.read<EntryId>();
        found.emplace_back(std::move(entry), rows.read<EntryId>());
    }
    return found;
}

Account ToldReader::account(Subject sort, std::optional<std::int64_t> number) {
    Account account{Part::Told, number.value_or(Account::ofSort(sort)), {}};
    const std::string text = "SELECT subject_no, at, entry_id FROM told WHERE sort = ?";
    Statement rows(m_connection, (text + (number ? " AND subject_no = ?" : "")).c_str());
    rows.bind(static_cast<int>(sort));
    if (number)
        rows.bind(*number);
    rows.runBound();
    while (rows.next()) {
        const auto subject = rows.read<std::int64_t>();
        Stamp stamp;
        stamp.at = rows.read<Moment>();
        stamp.id = rows.read<EntryId>();
        account.tally.add(toldDigest(sort, subject, stamp));
    }
    return account;
}

std::vector<EntryId> ToldReader::ofItem(std::int64_t item, CivilDate on, int limit) {
    constexpr int times = 11;
    return history(historyOfItem, times, item, on, limit);
}

std::vector<EntryId> ToldReader::ofBalloon(std::int64_t balloon, CivilDate on, int limit) {
    constexpr int times = 10;
    return history(historyOfBalloon, times, balloon, on, limit);
}

std::vector<EntryId> ToldReader::history(const char* text, int times, std::int64_t number, CivilDate on, int limit) {
    Statement rows(m_connection, text);
    for (int i = 0; i < times; ++i)
        rows.bind(number);
    rows.bind(Moment::endOf(on).minutes());
    rows.bind(limit);
    rows.runBound();
    return idsFrom(rows);
}

}
