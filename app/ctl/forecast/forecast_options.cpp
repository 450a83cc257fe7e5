// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/forecast/forecast_calls.h"

namespace crownring::ctl {

namespace {

void addUse(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<ForecastOptions>(app, chosen, "forecast", "What will be flown, by days or by months, as a distribution");
    call->add_option("--from", options->from, "The first day (default: the day after the last that is known)")
        ->type_name("DATE");
    call->add_option("--to", options->to, "The last day; more than two months are told month by month")
        ->required()
        ->type_name("DATE");
    addDay(
        *call, options->on,
        "The last day that is taken to be known (default: today, or the day before the first where that is earlier)");
    auto* balloon = call->add_option("--balloon", options->balloon, "Of this balloon (default: of all together)");
    balloon->type_name("REG");
    call->add_option("--item", options->item, "Of this item, by its own clock")->type_name("ID")->excludes(balloon);
    call->add_option("--plan", options->plans,
                     "What is planned instead (may repeat): so many times the usual pace, 0 for a pause, or so many "
                     "flights a week")
        ->type_name("FIRST..LAST=TIMES|N/week");
    call->add_option("--seed", options->seed, "Taken and not needed: nothing is drawn")->type_name("N");
    call->add_flag("--json", options->json, "Answer as JSON");
    call->footer(
        "p10, p50, p90: in one case of ten it is no more than p10, in one of two no more than p50, in nine of\n"
        "ten no more than p90. By the log of the last five years: season, level, how both change; where it is\n"
        "short, by that of its balloon and of the fleet. A forecast plans work; it is no limit.");
}

void addAgenda(CLI::App& app, Chosen& chosen) {
    const auto [call, options] = begin<AgendaOptions>(
        app, chosen, "agenda", "The days to come: flights and visits that are planned, and what stands against them");
    addDay(*call, options->on, "The first day (default: today)");
    call->add_option("--to", options->to, "The last day (default: two weeks)")->type_name("DATE");
    call->add_flag("--json", options->json, "Answer as JSON");
    call->footer(
        "Each flight is held against the rules of its day, with what is planned before it flown and nothing of a\n"
        "visit done. A visit tells what it covers and what is due before it. A plan is written as flight.planned,\n"
        "visit.planned or use.planned, and taken back by entry.voided.");
}

void addPlan(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<PlanOptions>(app, chosen, "plan", "The visits of the months ahead: where, when, what each covers");
    call->add_option("--stations", options->stations,
                     "Stations with their open weeks, days kept free for flying, what things cost; - is standard input")
        ->required()
        ->type_name("FILE.json");
    call->add_option("--from", options->from, "The day from which on is planned (default: today)")->type_name("DATE");
    call->add_option("--months", options->months, "How far ahead (default: 24)")->check(CLI::Range(1, 36));
    call->add_option("--risk", options->risk,
                     "The chance that may be taken, of each balloon, that something of it runs out before its visit "
                     "(default: 0.05)")
        ->type_name("CHANCE");
    call->add_option("--pin", options->pins, "Visits that are fixed or forbidden")->type_name("FILE.json");
    call->add_flag("--without-planned", options->withoutPlanned,
                   "Visits that are planned in the record hold no place (default: they do, where they can)");
    call->add_option("--seed", options->seed, "Taken and not needed: nothing is drawn")->type_name("N");
    call->add_flag("--json", options->json, "Answer as JSON");
    call->footer(
        "At least cost of visits, transport and of life that is thrown away by doing a thing early. A tolerance is\n"
        "never planned into. What cannot be kept is told, with why. A plan is no release and moves no due date.\n"
        "Where the search for a large fleet is ended before it is within 5 % of the least cost no plan is told (exit "
        "1).");
}

void addCalendar(CLI::App& app, Chosen& chosen) {
    const auto [call, options] = begin<CalendarOptions>(
        app, chosen, "calendar", "Dues, visits and planned flights: for calendars (iCalendar), as a table, on paper");
    call->add_option("--out", options->out,
                     "The file to write: .ics for calendars, .csv a table, .pdf a sheet for each month")
        ->required()
        ->type_name("FILE");
    addDay(*call, options->on, "The day (default: today)");
    call->add_option("--balloon", options->balloon, "Only of this balloon")->type_name("REG");
    call->add_option("--months", options->months, "How far ahead (default: 24)")->check(CLI::Range(1, 240));
    call->add_option("--paper", options->paper, "a4 (default) or letter")->check(CLI::IsMember({"a4", "letter"}));
    call->add_flag("--without-fabric", options->withoutFabric,
                   "Fit nothing: limits of fabric are left out (default: they join where readings warrant a time)");
    call->add_flag("--force", options->force, "Replace a file that is there; never a record or another database");
    call->footer(
        "Each due keeps its UID, so that reading the file again updates what a calendar holds. What use limits\n"
        "stands on the day that it falls due with even chance; its text says between which days. Wear and fabric\n"
        "stand on the first day of their band, in the .ics only.");
}

void addLetter(CLI::App& app, Chosen& chosen) {
    const auto [call, options] = begin<LetterOptions>(
        app, chosen, "letter", "The letter to a station about a planned visit: the work wanted, what comes");
    call->add_option("VISIT", options->visit, "The entry that plans it, as agenda names it")->required();
    addDay(*call, options->on, "The day on which it is written (default: today)");
    call->add_option("--out", options->out,
                     "The file to write: .pdf, .txt, or .json for the station's own Crownring (default: as text here)")
        ->type_name("FILE");
    call->add_option("--paper", options->paper, "a4 (default) or letter")->check(CLI::IsMember({"a4", "letter"}));
    call->add_flag("--force", options->force, "Replace a file that is there; never a record or another database");
    call->footer(
        "The station opens it with: inspection open --letter FILE.json --visit … --by NAME. Its record has to\n"
        "hold the balloon and the items.");
}

}

void addForecast(CLI::App& app, Chosen& chosen) {
    addLetter(app, chosen);
    addUse(app, chosen);
    addAgenda(app, chosen);
    addPlan(app, chosen);
    addCalendar(app, chosen);
}

}
