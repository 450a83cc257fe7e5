// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/plan/already_planned.h"
#include "answers/plan/proven.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "problem/faults/use_fault.h"
#include "words/ahead/plan_words.h"
#include "words/sentence.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <iostream>

namespace crownring::ctl {

namespace {

using Json = nlohmann::ordered_json;
using words::PlanWords;

double cents(double amount) { return std::round(amount * 100) / 100; }

template <class Value>
Json plannedJson(const PlannedRow& row, const Value& why) {
    return {{"item", row.item.text()}, {"requirement", row.requirement.text()}, {"why", plainly(PlanWords::why(why))}};
}

Json plannedDay(const std::optional<CivilDate>& day) { return day ? Json(day->iso()) : Json(nullptr); }

Json standingJson(const StandingVisit& standing) {
    return {{"entry", standing.entry.text()},
            {"balloon", standing.visit.balloon.text()},
            {"station", standing.visit.station},
            {"from", standing.visit.from.iso()},
            {"to", standing.visit.to.iso()}};
}

Json answerOf(const FleetVisits& plan, const PlanAsked& asked, const AlreadyPlanned& already) {
    Json visits = Json::array();
    for (const auto& stay : plan.visits) {
        Json covers = Json::array();
        for (const auto& work : stay.covers) {
            auto row = plannedJson(work.row, work.why);
            row["due"] = plannedDay(work.why.due);
            row["before"] = plannedDay(work.why.before);
            row["weeks_early"] = work.why.weeksEarly;
            row["keeps_date"] = work.why.keeps;
            row["thrown_away"] = cents(work.why.thrownAway);
            covers.push_back(std::move(row));
        }
        visits.push_back({{"station", stay.station},
                          {"week", stay.week.iso()},
                          {"balloon", stay.balloon.text()},
                          {"covers", std::move(covers)},
                          {"cost", cents(stay.cost)},
                          {"pinned", stay.isPinned}});
    }
    Json notKept = Json::array();
    for (const auto& kept : plan.notKept) {
        auto row = plannedJson(kept.row, kept);
        row["balloon"] = kept.balloon.text();
        row["due"] = plannedDay(kept.due);
        row["before"] = plannedDay(kept.before);
        row["until"] = plannedDay(kept.until);
        notKept.push_back(std::move(row));
    }
    Json leftOut = Json::array();
    for (const auto& row : plan.leftOut)
        leftOut.push_back(plannedJson(row.row, row));
    Json held = Json::array();
    for (const auto& standing : already.held)
        held.push_back(standingJson(standing));
    Json notHeld = Json::array();
    for (const auto& loose : already.loose) {
        auto row = standingJson(loose.standing);
        row["why"] = plainly(PlanWords::why(loose.why));
        notHeld.push_back(std::move(row));
    }
    return {{"from", plan.first.iso()},       {"weeks", plan.weeks},
            {"known", asked.known.iso()},     {"risk", asked.risk},
            {"chance", plan.chance},          {"visits", std::move(visits)},
            {"cost", cents(plan.cost)},       {"cost_when_due", cents(plan.whenDue)},
            {"bound", cents(plan.bound)},     {"gap", plan.gap},
            {"not_kept", std::move(notKept)}, {"left_out", std::move(leftOut)},
            {"held", std::move(held)},        {"not_held", std::move(notHeld)}};
}

void printPlan(const FleetVisits& plan, const PlanAsked& asked, const AlreadyPlanned& already) {
    for (const auto& said : PlanWords::worth(plan, asked.risk))
        std::cout << plainly(said) << "\n";
    for (const auto& stay : plan.visits) {
        std::cout << "\n"
                  << stay.week.iso() << "  " << stay.balloon.text() << "  " << stay.station << "  "
                  << plainly(PlanWords::money(stay.cost)) << (stay.isPinned ? "  pinned" : "") << "\n";
        for (const auto& line : PlanWords::covers(stay.covers))
            std::cout << "  " << plainly(line) << "\n";
    }
    if (!plan.notKept.empty())
        std::cout << "\nNot kept:\n";
    for (const auto& kept : plan.notKept)
        std::cout << "  " << kept.balloon.text() << "  " << plainly(PlanWords::named(kept.row)) << ": "
                  << plainly(PlanWords::why(kept)) << "\n";
    if (!plan.leftOut.empty())
        std::cout << "\nNot planned for:\n";
    for (const auto& row : plan.leftOut)
        std::cout << "  " << plainly(PlanWords::named(row.row)) << ": " << plainly(PlanWords::why(row)) << "\n";
    if (!already.loose.empty())
        std::cout << "\nPlanned in the record, and no part of this:\n";
    for (const auto& loose : already.loose)
        std::cout << "  " << plainly(PlanWords::named(loose.standing.visit)) << ": "
                  << plainly(PlanWords::why(loose.why)) << "\n";
}

/// With the file that it was read from.
template <class Value>
Result<Value> inFile(Result<Value> read, const std::string& file) {
    if (!read)
        read.error().where.file = file;
    return read;
}

Result<PlanAsked> askedBy(const PlanOptions& options) {
    PlanAsked asked;
    const auto from = dayFrom(options.from);
    if (!from)
        return tl::unexpected(from.error());
    asked.from = *from;
    asked.known = std::min(*from, today());
    asked.months = options.months;
    asked.risk = options.risk;
    if (!(asked.risk > 0 && asked.risk < 1))
        return problem(UseFault::NotARisk);
    const auto text = contentOf(options.stations);
    if (!text)
        return tl::unexpected(text.error());
    auto stations = inFile(stationsFrom(*text), options.stations);
    if (!stations)
        return tl::unexpected(stations.error());
    asked.stations = std::move(*stations);
    if (options.pins.empty())
        return asked;
    const auto written = contentOf(options.pins);
    if (!written)
        return tl::unexpected(written.error());
    auto pins = inFile(pinsFrom(*written), options.pins);
    if (!pins)
        return tl::unexpected(pins.error());
    asked.pins = std::move(*pins);
    return asked;
}

}

int tellUnproven(const FleetVisits& plan, const PlanAsked& asked, bool json) {
    if (json)
        print({{"from", plan.first.iso()},
               {"weeks", plan.weeks},
               {"known", asked.known.iso()},
               {"risk", asked.risk},
               {"visits", Json::array()},
               {"cost", nullptr},
               {"cost_when_due", cents(plan.whenDue)},
               {"gap", nullptr},
               {"unproven", true}});
    std::cerr << "crownringctl: " << plainly(PlanWords::unproven()) << "\n";
    return AnswerIsNo;
}

int run(const PlanOptions& options, const Common& common) {
    const auto asked = askedBy(options);
    if (!asked)
        return refuse(asked.error());
    const auto record = openToAsk(common);
    if (!record)
        return BadInput;
    const auto already = options.withoutPlanned ? Result<AlreadyPlanned>() : alreadyPlanned(*record, *asked);
    if (!already)
        return refuse(already.error());
    const auto plan = inFile(plannedVisits(*record, holding(*asked, *already)), options.pins);
    if (!plan)
        return refuse(plan.error());
    if (!isProven(*plan))
        return tellUnproven(*plan, *asked, options.json);
    if (options.json)
        print(answerOf(*plan, *asked, *already));
    else
        printPlan(*plan, *asked, *already);
    return Done;
}

}
