// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/forecast/visit_outlook.h"

#include "rules/due/headline.h"

#include <algorithm>

namespace crownring {

namespace {

std::optional<LapseChance> dueBefore(const DueRow& row, const std::optional<DateBand>& band, CivilDate from) {
    if (row.state.standing < Standing::Nearing)
        return LapseChance::Already;
    const auto isBefore = [&](const std::optional<CivilDate>& day) { return day && *day < from; };
    if (!band)
        return std::nullopt;
    if (isBefore(band->p90))
        return LapseChance::Surely;
    if (isBefore(band->p50))
        return LapseChance::Likely;
    return isBefore(band->p10) ? std::optional(LapseChance::Perhaps) : std::nullopt;
}

}

VisitOutlook outlookOf(const VisitPlanned& visit, std::span<const DueRow> rows,
                       std::span<const std::optional<DateBand>> bands, CivilDate from) {
    VisitOutlook outlook;
    const auto moved = movedTo(visit, from);
    const auto aboard = itemsToVisit(visit);
    for (const auto& work : visit.covers)
        outlook.covers.push_back({work, nullptr, {}});
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const auto& row = rows[i];
        const auto covered = std::ranges::find_if(outlook.covers, [&](const VisitWork& each) {
            return each.work == PlannedWork{row.item->id, row.requirement->id};
        });
        const bool isCovered = covered != outlook.covers.end();
        if (isCovered) {
            covered->row = &row;
            covered->band = bands[i];
        }
        const bool concerns = row.item->balloon == visit.balloon || std::ranges::count(aboard, row.item->id) > 0;
        if (!concerns || !isBinding(row))
            continue;
        if (const auto how = dueBefore(row, bands[i], from))
            outlook.before.push_back({&row, bands[i], *how, isCovered});
        else if (!isCovered && bands[i] && bands[i]->p50 && *bands[i]->p50 <= addDays(moved.to, nearbyDays))
            outlook.nearby.push_back({{row.item->id, row.requirement->id}, &row, bands[i]});
    }
    std::ranges::stable_sort(outlook.before, {}, &LapsesBefore::how);
    return outlook;
}

VisitPlanned movedTo(VisitPlanned visit, CivilDate from) {
    visit.to = addDays(visit.to, static_cast<int>(daysBetween(visit.from, from).value()));
    visit.from = from;
    return visit;
}

}
