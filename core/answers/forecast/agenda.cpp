// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/forecast/agenda.h"

#include "answers/due.h"
#include "answers/kit_at.h"

#include <algorithm>
#include <map>
#include <utility>

namespace crownring {

namespace {

/// Of the flights of the first day as many are flown as were logged for their balloon.
Result<std::vector<FlightAhead>> stillAhead(Books& books, std::vector<FlightAhead> flights, CivilDate from,
                                            CivilDate to) {
    std::map<Registration, std::size_t> logged;
    std::vector<FlightAhead> ahead;
    for (auto& each : flights) {
        const auto on = each.at.at.on();
        if (on < from || to < on)
            continue;
        if (on == from) {
            auto known = logged.find(each.flight.balloon);
            if (known == logged.end()) {
                const auto flown = books.flights(each.flight.balloon, from, from);
                if (!flown)
                    return tl::unexpected(flown.error());
                known = logged.emplace(each.flight.balloon, flown->size()).first;
            }
            if (known->second > 0) {
                --known->second;
                continue;
            }
        }
        ahead.push_back(std::move(each));
    }
    return ahead;
}

Result<AgendaFlight> told(SupposingBooks& books, FlightAhead planned) {
    AgendaFlight flight{std::move(planned), {}, {}, {}, {}, {}};
    const auto on = flight.planned.at.at.on();
    const auto& said = flight.planned.flight;
    if (said.kit) {
        flight.kit = *said.kit;
    } else {
        auto kit = kitAt(books, said.balloon, flight.planned.at);
        if (!kit)
            return tl::unexpected(kit.error());
        flight.kit = std::move(*kit);
    }
    if (flight.kit.empty())
        return flight;
    auto check = checkRigUp(books, flight.kit, on, {.use = said.use});
    if (!check)
        return tl::unexpected(check.error());
    flight.check = std::make_shared<RigUpAnswer>(std::move(*check));
    if (const auto flown = books.suppose({said.balloon, said.use, on, flight.kit}); !flown)
        return tl::unexpected(flown.error());
    auto after = checkRigUp(books, flight.kit, on, {});
    if (!after)
        return tl::unexpected(after.error());
    flight.after = std::make_shared<DueList>(std::move(after->due));
    flight.makes = madeDue(flight.check->due, *flight.after);
    return flight;
}

}

std::vector<MadeDue> madeDue(const DueList& before, const DueList& after) {
    std::map<std::pair<ItemId, RequirementId>, const DueRow*> was;
    for (const auto& row : before.rows)
        was.emplace(std::pair(row.item->id, row.requirement->id), &row);
    std::vector<MadeDue> makes;
    for (const auto& row : after.rows) {
        const auto known = was.find({row.item->id, row.requirement->id});
        if (known != was.end() && row.state.standing < known->second->state.standing)
            makes.push_back({known->second, &row});
    }
    return makes;
}

Result<Agenda> agendaOf(Books& books, CivilDate from, CivilDate to, CivilDate known) {
    auto planned = plannedFrom(books, from, known);
    if (!planned)
        return tl::unexpected(planned.error());
    auto flights = stillAhead(books, std::move(planned->flights), from, to);
    if (!flights)
        return tl::unexpected(flights.error());
    Agenda agenda;
    SupposingBooks supposing(books);
    for (auto& each : *flights) {
        auto flight = told(supposing, std::move(each));
        if (!flight)
            return tl::unexpected(flight.error());
        const auto on = flight->planned.at.at.on();
        for (const auto& ahead : planned->visits)
            if (ahead.visit.balloon == flight->planned.flight.balloon && ahead.visit.from <= on && on <= ahead.visit.to)
                flight->at = ahead.visit;
        agenda.flights.push_back(std::move(*flight));
    }
    for (auto& visit : planned->visits)
        if (visit.visit.from <= to)
            agenda.visits.push_back(std::move(visit));
    return agenda;
}

Result<Supposed> supposeFlights(Books& books, const std::vector<SupposedFlight>& flights, const Scope& scope,
                                CivilDate on, Outside outside) {
    SupposingBooks supposing(books);
    for (const auto& flight : flights)
        if (const auto flown = supposing.suppose(flight); !flown)
            return tl::unexpected(flown.error());
    auto before = due(books, scope, on, outside);
    if (!before)
        return tl::unexpected(before.error());
    auto after = due(supposing, scope, on, outside);
    if (!after)
        return tl::unexpected(after.error());
    Supposed supposed{std::move(*before), std::move(*after), {}, {}};
    supposed.makes = madeDue(supposed.before, supposed.after);
    for (const auto& item : supposed.after.items)
        if (supposing.isSupposed(item.id, on))
            supposed.flown.push_back(item.id);
    return supposed;
}

}
