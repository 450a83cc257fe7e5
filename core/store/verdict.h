// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The whole verification of a record: its pages, its chain, its schema and photographs, and what was computed from it.

#include "store/journal/journal_table.h"
#include "store/tally/tallies.h"

#include <functional>

namespace crownring {

/// @param progress is told the share done (0 to 1) and may answer false to stop
/// @throws StoreError where the database is busy
[[nodiscard]] Verdict verdictOf(const Connection& connection, JournalTable& journal, Tallies& tallies,
                                const std::function<bool(double)>& progress);

}
