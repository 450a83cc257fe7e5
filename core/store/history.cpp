// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/use_fault.h"
#include "store/sql_record.h"

namespace crownring {

namespace {

/// All entries about an item: its own, the flights and events of the balloons that it was on while it was, and the
/// flights that name it.
constexpr const char* ofItem =
    "SELECT at, entry_id FROM ("
    "SELECT at, entry_id FROM item_entered WHERE item_no = ?"
    " UNION ALL SELECT at, entry_id FROM fitting WHERE item_no = ?"
    " UNION ALL SELECT at, entry_id FROM done WHERE item_no = ?"
    " UNION ALL SELECT at, entry_id FROM reading WHERE item_no = ?"
    " UNION ALL SELECT at, entry_id FROM kit_flight WHERE item_no = ?"
    " UNION ALL SELECT at, entry_id FROM occurrence WHERE sort = 1 AND subject_no = ?"
    " UNION ALL SELECT at, entry_id FROM told WHERE sort = 1 AND subject_no = ?"
    " UNION ALL SELECT at, entry_id FROM defect_mark WHERE item_no = ?"
    " UNION ALL SELECT f.at, f.entry_id FROM stay s JOIN flight f ON f.balloon_no = s.balloon_no AND f.counted = 1"
    " AND (f.at, f.entry_id) >= (s.from_at, s.from_id)"
    " AND (s.until_at IS NULL OR (f.at, f.entry_id) < (s.until_at, s.until_id)) WHERE s.item_no = ?"
    " UNION ALL SELECT o.at, o.entry_id FROM stay s JOIN occurrence o ON o.sort = 2 AND o.subject_no = s.balloon_no"
    " AND (o.at, o.entry_id) >= (s.from_at, s.from_id)"
    " AND (s.until_at IS NULL OR (o.at, o.entry_id) < (s.until_at, s.until_id)) WHERE s.item_no = ?"
    ") AS told WHERE at < ? ORDER BY at DESC, entry_id DESC LIMIT ?";

constexpr const char* ofBalloon = "SELECT at, entry_id FROM ("
                                  "SELECT at, entry_id FROM balloon_entered WHERE balloon_no = ?"
                                  " UNION ALL SELECT at, entry_id FROM fitting WHERE balloon_no = ?"
                                  " UNION ALL SELECT at, entry_id FROM flight WHERE balloon_no = ?"
                                  " UNION ALL SELECT at, entry_id FROM occurrence WHERE sort = 2 AND subject_no = ?"
                                  " UNION ALL SELECT at, entry_id FROM told WHERE sort = 2 AND subject_no = ?"
                                  ") AS told WHERE at < ? ORDER BY at DESC, entry_id DESC LIMIT ?";

}

Result<std::vector<JournalLine>> SqlRecord::history(const std::optional<Registration>& balloon,
                                                    const std::optional<ItemId>& item, CivilDate on, int limit) {
    return guarded([&]() -> Result<std::vector<JournalLine>> {
               const auto number = item ? m_names.find(*item) : balloon ? m_names.find(*balloon) : std::nullopt;
               if (!number)
                   return problem(UseFault::NoSubject);
               Statement rows(*m_connection, item ? ofItem : ofBalloon);
               for (int i = 0; i < (item ? 10 : 5); ++i)
                   rows.bind(*number);
               rows.bind(Moment::endOf(on).minutes());
               rows.bind(limit);
               rows.runBound();
               std::vector<JournalLine> told;
               while (rows.next()) {
                   rows.skip();
                   if (auto line = m_journal.line(rows.read<EntryId>()); line && !line->unread)
                       told.push_back(std::move(*line));
               }
               return told;
           })
        .and_then([](auto&& answer) { return std::forward<decltype(answer)>(answer); });
}

}
