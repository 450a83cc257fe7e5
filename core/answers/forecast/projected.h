// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// When the rows of a due list fall due, by how their items are flown.

#include "forecast/dates.h"
#include "registry/books.h"
#include "rules/due/due_list.h"

#include <optional>
#include <vector>

namespace crownring {

/// In the order of the rows; nothing for one that is unproven, past, closed or without a limit. What is out of service
/// is not flown: only the calendar limits it. The logs of the whole fleet are read wherever use limits a row, so that
/// one balloon is told as in the whole list.
/// @param known the last day of which the record is taken to hold what was flown: today, or the day asked where that is
/// earlier
[[nodiscard]] Result<std::vector<std::optional<DateBand>>> projected(Books& books, const DueList& due, CivilDate known);

}
