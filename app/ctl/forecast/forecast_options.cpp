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

void addCalendar(CLI::App& app, Chosen& chosen) {
    const auto [call, options] =
        begin<CalendarOptions>(app, chosen, "calendar", "Dues and open visits as a file for calendars (iCalendar)");
    call->add_option("--out", options->out, "The file to write")->required()->type_name("FILE.ics");
    addDay(*call, options->on, "The day (default: today)");
    call->add_option("--balloon", options->balloon, "Only of this balloon")->type_name("REG");
    call->add_option("--months", options->months, "How far ahead (default: 24)")->check(CLI::Range(1, 240));
    call->add_flag("--force", options->force, "Replace a file that is there; never a record or another database");
    call->footer(
        "Each due keeps its UID, so that reading the file again updates what a calendar holds. What use limits\n"
        "stands on the day that it falls due with even chance; its text says between which days.");
}

}

void addForecast(CLI::App& app, Chosen& chosen) {
    addUse(app, chosen);
    addCalendar(app, chosen);
}

}
