// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/forecast/agenda.h"
#include "answers/forecast/visits_told.h"
#include "ctl/answer_json.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "ctl/forecast/visit_json.h"
#include "ctl/rig_up_answer.h"
#include "measure/duration_text.h"
#include "problem/faults/use_fault.h"
#include "words/ahead/visit_words.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <iostream>

namespace crownring::ctl {

namespace {

using Json = nlohmann::ordered_json;

Json flightJson(const AgendaFlight& flight) {
    const auto& said = flight.planned.flight;
    Json kit = Json::array();
    for (const auto& item : flight.kit)
        kit.push_back(item.text());
    Json json{{"entry", flight.planned.at.id.text()},
              {"on", flight.planned.at.at.on().iso()},
              {"balloon", said.balloon.text()},
              {"minutes", said.use.minutes.value()},
              {"kit", std::move(kit)},
              {"may_fly", flight.mayFly()},
              {"reasons", Json::array()},
              {"in_tolerance", Json::array()},
              {"makes_due", Json::array()},
              {"at_visit", nullptr}};
    if (flight.at)
        json["at_visit"] = {
            {"station", flight.at->station}, {"from", flight.at->from.iso()}, {"to", flight.at->to.iso()}};
    if (flight.check)
        for (const auto& reason : flight.check->verdict.reasons)
            json["reasons"].push_back(reasonJson(reason));
    if (flight.check)
        for (const auto& use : flight.check->verdict.tolerances)
            json["in_tolerance"].push_back({{"item", use.row->item->id.text()},
                                            {"requirement", use.row->requirement->id.text()},
                                            {"text", toleranceText(use)}});
    for (const auto& made : flight.makes)
        json["makes_due"].push_back(madeDueJson(made));
    return json;
}

void printFlight(const AgendaFlight& flight) {
    const auto& said = flight.planned.flight;
    std::cout << flight.planned.at.at.on().iso() << "  " << said.balloon.text() << " flies "
              << hoursAndMinutes(said.use.minutes) << " h: "
              << (flight.mayFly()      ? "nothing stands against it by the record"
                  : flight.kit.empty() ? "nothing is fitted that could fly"
                                       : "by the record it may not")
              << "\n";
    if (flight.at)
        std::cout << "            but its visit to " << flight.at->station << " is planned from "
                  << flight.at->from.iso() << " to " << flight.at->to.iso() << "\n";
    if (flight.check)
        for (const auto& reason : flight.check->verdict.reasons)
            std::cout << "            " << reasonText(reason) << "\n";
    if (flight.check)
        for (const auto& use : flight.check->verdict.tolerances)
            std::cout << "            in its tolerance: " << toleranceText(use) << "\n";
    for (const auto& made : flight.makes)
        std::cout << "            makes due: " << madeDueText(made) << "\n";
}

void printVisit(const VisitAhead& ahead, const VisitOutlook& outlook) {
    std::cout << ahead.visit.from.iso() << "  visit of " << ahead.visit.balloon.text() << " to " << ahead.visit.station
              << ", until " << ahead.visit.to.iso() << "\n";
    for (const auto& line : words::VisitWords::works(outlook.covers))
        std::cout << "            covers " << plainly(line) << "\n";
    for (const auto& line : words::VisitWords::before(outlook.before))
        std::cout << "            " << plainly(line) << "\n";
}

}

int run(const AgendaOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    auto to = Result<CivilDate>(addDays(record.on, daysOfAgenda - 1));
    if (!options.to.empty())
        to = CivilDate::parse(options.to);
    if (!to)
        return refuse(to.error());
    if (*to < record.on)
        return refuse(Problem{UseFault::DaysNotAhead, {record.on, *to, UseAhead::horizonYears}});
    const auto known = std::min(record.on, today());
    const auto agenda = agendaOf(*record, record.on, *to, known);
    if (!agenda)
        return refuse(agenda.error());
    const auto visits = visitsTold(*record, agenda->visits, record.on, known);
    if (!visits)
        return refuse(visits.error());
    if (!options.json) {
        if (agenda->flights.empty() && agenda->visits.empty())
            std::cout << "Nothing is planned from " << record.on.iso() << " to " << to->iso() << ".\n";
        for (const auto& flight : agenda->flights)
            printFlight(flight);
        for (std::size_t i = 0; i < agenda->visits.size(); ++i)
            printVisit(agenda->visits[i], visits->outlooks[i]);
        return Done;
    }
    Json answer{{"on", record.on.iso()}, {"to", to->iso()}, {"flights", Json::array()}, {"visits", Json::array()}};
    for (const auto& flight : agenda->flights)
        answer["flights"].push_back(flightJson(flight));
    for (std::size_t i = 0; i < agenda->visits.size(); ++i)
        answer["visits"].push_back(visitJson(agenda->visits[i], visits->outlooks[i]));
    print(answer);
    return Done;
}

}
