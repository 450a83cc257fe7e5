// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Reads lists of discrepancies from the record: what is on one, what of it still stands on a day, and all that an
/// approval of the return to service is judged by.

#include "bench/returns/discrepancies.h"
#include "registry/books.h"
#include "rules/due/obligations.h"

namespace crownring {

/// The list that an inspection was closed with, and what of it still stands at the end of a day, whether it is pending
/// or not. ListAnswered where it was closed with none.
[[nodiscard]] Result<Discrepancies> discrepancies(Books& books, const InspectionId& inspection, CivilDate on);

/// Lists that are pending on that day, the latest first. @param balloon only its own
[[nodiscard]] Result<std::vector<Discrepancies>> pendingLists(Books& books, const std::optional<Registration>& balloon,
                                                              CivilDate on);

/// Says of each list that grounds an item how many of its items still stand.
[[nodiscard]] Result<void> countLists(Books& books, std::vector<ItemFacts>& items, const Obligations& obligations,
                                      CivilDate on);

/// @param approval left out, where it is in the record by now: with the time that it states, what was cleared after
/// that
///        on its day still stands
[[nodiscard]] Result<ReturnFile> returnFile(Books& books, const InspectionId& inspection, CivilDate on,
                                            const Entry* approval = nullptr);

}
