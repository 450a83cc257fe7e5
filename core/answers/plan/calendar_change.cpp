// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/plan/calendar_change.h"

#include "answers/plan/plan_weeks.h"

#include <algorithm>

namespace crownring {

namespace {

std::vector<PlannedWork> worksOf(const PlannedStay& stay) {
    std::vector<PlannedWork> works;
    for (const auto& placed : stay.covers) {
        PlannedWork work{placed.row.item, placed.row.requirement};
        if (std::ranges::find(works, work) == works.end())
            works.push_back(std::move(work));
    }
    return works;
}

/// What is held, and then what was let go.
std::vector<StandingVisit> standingOf(const AlreadyPlanned& already) {
    auto standing = already.held;
    for (const auto& loose : already.loose)
        if (loose.why == LooseVisit::Why::LetGo)
            standing.push_back(loose.standing);
    return standing;
}

std::vector<StandingVisit>::const_iterator find(const std::vector<StandingVisit>& standing, const PlannedStay& stay) {
    const PlanWeeks weeks{stay.week, 1};
    return std::ranges::find_if(standing, [&](const StandingVisit& each) {
        return each.visit.balloon == stay.balloon && each.visit.station == stay.station &&
               weeks.weekOf(each.visit.to) == 0;
    });
}

}

std::optional<EntryId> entryOf(const PlannedStay& stay, const AlreadyPlanned& already) {
    const auto standing = standingOf(already);
    const auto found = find(standing, stay);
    return found == standing.end() ? std::nullopt : std::optional(found->entry);
}

CalendarChange calendarChange(const FleetVisits& plan, const AlreadyPlanned& already) {
    const auto standing = standingOf(already);
    std::vector<bool> isMet(standing.size(), false);
    CalendarChange change;
    for (const auto& stay : plan.visits) {
        auto works = worksOf(stay);
        const auto found = find(standing, stay);
        if (found == standing.end()) {
            change.added.push_back(
                {stay.balloon, stay.station, stay.week, PlanWeeks{stay.week, 1}.signedOn(0), std::move(works)});
            continue;
        }
        isMet[static_cast<std::size_t>(found - standing.begin())] = true;
        std::erase_if(works, [&](const PlannedWork& work) {
            return std::ranges::find(found->visit.covers, work) != found->visit.covers.end();
        });
        if (works.empty())
            change.stays.push_back(*found);
        else
            change.wider.push_back({*found, std::move(works)});
    }
    for (std::size_t nth = 0; nth < standing.size(); ++nth)
        if (!isMet[nth])
            (nth < already.held.size() ? change.stays : change.takenBack).push_back(standing[nth]);
    return change;
}

}
