// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is told of events: what each made due that is still open, and the clock of a report that the law may ask for.
/// Nobody computes here whether a report is owed, and that one was made is said where an entry says so alone.

#include "record/journal.h"
#include "registry/books.h"
#include "rules/due/due_list.h"

#include <optional>
#include <string_view>
#include <vector>

namespace crownring {

/// Within which a reportable occurrence is reported, from when whoever reports it became aware of it: Regulation (EU)
/// 376/2014 Art. 4(7), from memory.
inline constexpr int hoursToReport = 72;
inline constexpr std::string_view reportRule = "Regulation (EU) 376/2014 Art. 4(7) (from memory)";
/// Who holds the type certificate reports failures by a clock of its own, and has to hear of them first: 14 CFR 21.3,
/// from memory.
inline constexpr std::string_view holderRule = "14 CFR 21.3 (from memory)";

/// What an event made due and was done since.
struct AnsweredRow {
    const DueRow* row = nullptr;
    const Accomplishment* by = nullptr; ///< the first after the event; it lives in the facts of the row's item
};

struct ToldEvent {
    Entry entry;                       ///< as it says now: an `EventReported`
    std::vector<const DueRow*> rows;   ///< that it made due and that are not released yet, worst first
    std::vector<AnsweredRow> answered; ///< in the order of the rows
    /// The earliest end of the time for a report, where one may be owed: counted from the event itself, of which
    /// nobody became aware before; from 00:00 where it states no time.
    std::optional<Moment> reportUntil;
    std::vector<Entry> reports; ///< that say that it was reported, by stamp: each an `EventNotified`

    [[nodiscard]] bool isTold(Informed to) const;
};

/// Those of the items, latest first: since a day, and what still makes rows due, whenever it happened.
/// @param rows of those items
[[nodiscard]] Result<std::vector<ToldEvent>> toldEvents(Books& books, Journal& journal,
                                                        const std::vector<const ItemFacts*>& items,
                                                        const std::vector<const DueRow*>& rows, CivilDate since,
                                                        CivilDate on);

/// For so many days after it the clock of a report is shown (our choice).
inline constexpr int daysOfReporting = 30;

}
