// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The days by which wear meets the limit of the manual: how far along its line each place is, and how its item will be
/// flown. Told only where the trend warrants a time (`answers/parts/wear.h`). It plans work; no standing follows from
/// it.

#include "answers/parts/wear.h"
#include "forecast/dates.h"
#include "registry/books.h"
#include "rules/due/due_list.h"

#include <vector>

namespace crownring {

struct WearAhead {
    const ItemFacts* item; ///< of the list
    WearSeries series;
    DateBand met;
};

/// Of the items of a due list that are on a balloon and in service, in its order. @param due must outlive the answer
/// @param known the last day of which the record is taken to hold what was flown
[[nodiscard]] Result<std::vector<WearAhead>> wearAhead(Books& books, const DueList& due, CivilDate known);

}
