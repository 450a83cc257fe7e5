// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/forecast/visits_told.h"

#include "answers/due.h"
#include "answers/forecast/projected.h"

#include <set>

namespace crownring {

Result<VisitsTold> visitsTold(Books& books, const std::vector<VisitAhead>& visits, CivilDate on, CivilDate known) {
    VisitsTold told;
    told.due.on = on;
    std::set<ItemId> items;
    std::set<Registration> balloons;
    for (const auto& each : visits) {
        const auto covered = itemsToVisit(each.visit);
        items.insert(covered.begin(), covered.end());
        if (!balloons.insert(each.visit.balloon).second)
            continue;
        const auto fitted = books.facts({each.visit.balloon, {}}, on);
        if (!fitted)
            return tl::unexpected(fitted.error());
        for (const auto& item : *fitted)
            items.insert(item.id);
    }
    if (!items.empty()) {
        auto list = due(books, {std::nullopt, {items.begin(), items.end()}}, on);
        if (!list)
            return tl::unexpected(list.error());
        told.due = std::move(*list);
        auto bands = projected(books, told.due, known);
        if (!bands)
            return tl::unexpected(bands.error());
        told.bands = std::move(*bands);
    }
    for (const auto& each : visits)
        told.outlooks.push_back(outlookOf(each.visit, told.due.rows, told.bands, each.visit.from));
    return told;
}

}
