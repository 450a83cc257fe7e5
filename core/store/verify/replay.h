// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a journal comes to, from its entries alone: nothing that stands beside them is read.

#include "store/journal/journal_table.h"
#include "store/projection/projector.h"
#include "store/tally/tallies.h"

#include <functional>
#include <utility>
#include <vector>

namespace crownring {

/// Which entry amends which, by its number: in the order of arrival.
using AmendmentTargets = std::vector<std::pair<EntryId, std::int64_t>>;

/// Projects every entry as it stands now, with all that amends it, and settles. What cannot be read projects nothing
/// and is asked about. @pre `into` is empty
/// @param goOn asked now and then; with false the rest is left out
/// @throws StoreError where an amendment points at nothing
AmendmentTargets replay(JournalTable& journal, Projector& into, const std::function<bool()>& goOn = {});

/// Throws the projections of a record away and makes them anew, inside the caller's transaction.
void remake(JournalTable& journal, Projector& projector, Tallies& tallies);

}
