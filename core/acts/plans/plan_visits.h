// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The visits of a plan become visits that are planned in the record, all of them or none.

#include "answers/plan/calendar_change.h"
#include "record/journal.h"

#include <string>

namespace crownring {

/// @param reason why visits that were let go of are taken back, in the words of who writes
[[nodiscard]] Results<Receipt> planVisits(Journal& journal, Books& books, const CalendarChange& change, CivilDate on,
                                          const std::string& by, const std::string& reason);

}
