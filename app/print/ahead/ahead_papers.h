// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What lies ahead, on paper: the month sheet, its table, and the letter to the station about a visit.

#include "answers/forecast/planned.h"
#include "answers/forecast/station_letter.h"
#include "paper/document.h"
#include "rules/due/due_list.h"

#include <vector>

namespace crownring::print {

struct DueAhead {
    const DueRow* row = nullptr;
    std::optional<DateBand> band;
};
/// What stands on the sheets of some months.
struct MonthsAhead {
    CivilDate on;    ///< of which the record speaks
    CivilDate first; ///< of a month
    int months = 1;
    std::optional<Registration> balloon; ///< only of this one
    std::vector<DueAhead> dues;
    std::vector<VisitAhead> visits;
    std::vector<FlightAhead> flights;
};

/// The day on which a row stands in a calendar: the one that is foretold with even chance, or where it is past the day
/// that it was due; what has no day of its own, and will not wait, stands on the day asked.
[[nodiscard]] std::optional<CivilDate> dayOfDue(const DueRow& row, const std::optional<DateBand>& band, CivilDate on);

/// A line for each visit, planned flight and due of these months, by day, after what was due before them and is not
/// done: for spreadsheets.
[[nodiscard]] paper::Table aheadTable(const MonthsAhead& ahead);
/// What was due before these months and is not done; then a page for each month: its weeks, and under them what stands
/// in them.
[[nodiscard]] paper::Document monthSheet(const MonthsAhead& ahead);
/// The letter: who sends what, when, and the work that is wanted. It is no release and no contract.
[[nodiscard]] paper::Document letter(const StationLetter& letter);

}
