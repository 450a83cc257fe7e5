// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/forecast/projected.h"

#include "answers/forecast/items_ahead.h"

#include <algorithm>

namespace crownring {

namespace {

/// Of a day that is still to come nothing is known of the days before it: it is not due before it was asked for.
void notBefore(DateBand& band, CivilDate day) {
    for (auto* place : {&band.p10, &band.p50, &band.p90})
        if (*place)
            **place = std::max(**place, day);
}

}

Result<std::vector<std::optional<DateBand>>> projected(Books& books, const DueList& due, CivilDate known) {
    auto items = ItemsAhead::read(books, due, known);
    if (!items)
        return tl::unexpected(items.error());
    std::vector<std::optional<DateBand>> bands;
    bands.reserve(due.rows.size());
    for (const auto& row : due.rows) {
        auto* ahead = hangsOnUse(row.state) ? items->datesOf(*row.item) : nullptr;
        bands.push_back(fallsDue(row.state, row.requirement->whichever, ahead, due.on));
        if (bands.back())
            notBefore(*bands.back(), due.on);
    }
    return bands;
}

}
