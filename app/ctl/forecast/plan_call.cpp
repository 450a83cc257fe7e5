// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/plan/planned_visits.h"
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

Json answerOf(const FleetVisits& plan, const PlanAsked& asked) {
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
        row["until"] = plannedDay(kept.until);
        notKept.push_back(std::move(row));
    }
    Json leftOut = Json::array();
    for (const auto& row : plan.leftOut)
        leftOut.push_back(plannedJson(row.row, row));
    return {{"from", plan.first.iso()},       {"weeks", plan.weeks},
            {"known", asked.known.iso()},     {"risk", asked.risk},
            {"chance", plan.chance},          {"visits", std::move(visits)},
            {"cost", cents(plan.cost)},       {"cost_when_due", cents(plan.whenDue)},
            {"bound", cents(plan.bound)},     {"gap", plan.gap},
            {"not_kept", std::move(notKept)}, {"left_out", std::move(leftOut)}};
}

constexpr double mostGap = 0.05;

std::string nameOf(const PlannedRow& row) {
    return words::said(row.title).toStdString() + " (" + row.item.text() + ")";
}

void printPlan(const FleetVisits& plan, const PlanAsked& asked) {
    std::cout << counted(static_cast<std::int64_t>(plan.visits.size()), "visit", "visits") << " in " << plan.weeks
              << " weeks from " << plan.first.iso() << ", at " << plainly(PlanWords::money(plan.cost))
              << "; each thing done when it is due: " << plainly(PlanWords::money(plan.whenDue)) << ".\n"
              << "Of no balloon is the chance that something runs out before its visit more than " << plan.chance
              << " (asked: " << asked.risk << "). Within " << std::ceil(plan.gap * 10000) / 100
              << " % of the least that any plan costs.\n";
    for (const auto& stay : plan.visits) {
        std::cout << "\n"
                  << stay.week.iso() << "  " << stay.balloon.text() << "  " << stay.station << "  "
                  << plainly(PlanWords::money(stay.cost)) << (stay.isPinned ? "  pinned" : "") << "\n";
        for (const auto& work : stay.covers)
            std::cout << "  " << nameOf(work.row) << ": " << plainly(PlanWords::why(work.why)) << "\n";
    }
    if (!plan.notKept.empty())
        std::cout << "\nNot kept:\n";
    for (const auto& kept : plan.notKept)
        std::cout << "  " << kept.balloon.text() << "  " << nameOf(kept.row) << ": " << plainly(PlanWords::why(kept))
                  << "\n";
    if (!plan.leftOut.empty())
        std::cout << "\nNot planned for:\n";
    for (const auto& row : plan.leftOut)
        std::cout << "  " << nameOf(row.row) << ": " << plainly(PlanWords::why(row)) << "\n";
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

/// A plan that is far from the least that any could cost is told as none: it would say much of visits and prove little.
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
    std::cerr
        << "crownringctl: no plan is told: with so many things due apart the search was ended before it could say "
           "within "
        << std::lround(mostGap * 100) << " % what the cheapest visits are. Mend: ask for fewer months.\n";
    return AnswerIsNo;
}

int run(const PlanOptions& options, const Common& common) {
    const auto asked = askedBy(options);
    if (!asked)
        return refuse(asked.error());
    const auto record = openToAsk(common);
    if (!record)
        return BadInput;
    const auto plan = inFile(plannedVisits(*record, *asked), options.pins);
    if (!plan)
        return refuse(plan.error());
    if (plan->gap > mostGap)
        return tellUnproven(*plan, *asked, options.json);
    if (options.json)
        print(answerOf(*plan, *asked));
    else
        printPlan(*plan, *asked);
    return Done;
}

}
