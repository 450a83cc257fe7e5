// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/forecast/use_forecast.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "measure/decimal_text.h"
#include "measure/duration_text.h"
#include "problem/faults/use_fault.h"
#include "words/sentence.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <iomanip>
#include <iostream>

namespace crownring::ctl {

namespace {

using Json = nlohmann::ordered_json;

constexpr double mostTimes = 1000; ///< of the usual pace, or flights a week

/// "FIRST..LAST=TIMES", "FIRST..LAST=N/week".
Result<StatedPlan> planFrom(const std::string& text) {
    const Problem bad{UseFault::NotAPlan, {text}};
    const auto dots = text.find("..");
    const auto equals = text.find('=');
    if (dots == std::string::npos || equals == std::string::npos || equals < dots)
        return tl::unexpected(bad);
    const auto first = CivilDate::parse(text.substr(0, dots));
    const auto last = CivilDate::parse(text.substr(dots + 2, equals - dots - 2));
    if (!first)
        return tl::unexpected(first.error());
    if (!last)
        return tl::unexpected(last.error());
    auto pace = text.substr(equals + 1);
    constexpr std::string_view aWeek = "/week";
    const bool isWeekly = pace.ends_with(aWeek);
    if (isWeekly)
        pace.resize(pace.size() - aWeek.size());
    const auto number = parseDecimal(pace);
    if (!number || *number < 0 || *number > mostTimes || *last < *first)
        return tl::unexpected(bad);
    StatedPlan plan{*first, *last, {}, {}};
    (isWeekly ? plan.flightsAWeek : plan.times) = *number;
    return plan;
}

Json bandJson(const UseBand& band) {
    return {{"p10", std::llround(band.p10)}, {"p50", std::llround(band.p50)}, {"p90", std::llround(band.p90)}};
}

Json answerOf(const UseForecast& forecast, const UseAsked& asked) {
    Json periods = Json::array();
    for (const auto& period : forecast.periods)
        periods.push_back({{"on", period.on.iso()},
                           {"minutes", bandJson(period.use[0])},
                           {"landings", bandJson(period.use[1])},
                           {"inflations", bandJson(period.use[2])}});
    Json answer{{"known", asked.known.iso()}, {"from", asked.from.iso()}, {"to", asked.to.iso()}};
    if (forecast.out)
        answer["out_of_service"] = true;
    answer["flights"] = std::llround(forecast.flights);
    answer[forecast.inMonths ? "months" : "days"] = std::move(periods);
    return answer;
}

void printPeriods(const UseForecast& forecast) {
    const auto hours = [](double minutes) { return hoursAndMinutes(Minutes(std::llround(minutes))); };
    std::cout << "From the log of " << std::llround(forecast.flights)
              << " flights; with one chance in ten less than the "
              << "first figure, with one in ten more than the last.\n";
    if (forecast.out)
        std::cout << "It is " << plainly(words::said(reasonOf(*forecast.out))) << ": nothing is flown.\n";
    for (const auto& period : forecast.periods) {
        const auto& [minutes, landings, inflations] = period.use;
        std::cout << period.on.iso() << "  " << std::right << std::setw(9) << hours(minutes.p10) << std::setw(9)
                  << hours(minutes.p50) << std::setw(9) << hours(minutes.p90) << "   landings "
                  << std::llround(landings.p10) << ", " << std::llround(landings.p50) << ", "
                  << std::llround(landings.p90) << "\n";
    }
}

Result<UseAsked> askedBy(const ForecastOptions& options) {
    UseAsked asked;
    const auto to = CivilDate::parse(options.to);
    if (!to)
        return tl::unexpected(to.error());
    asked.to = *to;
    const auto known = dayFrom(options.on);
    if (!known)
        return tl::unexpected(known.error());
    asked.known = *known;
    asked.from = addDays(*known, 1);
    if (!options.from.empty()) {
        const auto from = CivilDate::parse(options.from);
        if (!from)
            return tl::unexpected(from.error());
        asked.from = *from;
        if (options.on.empty())
            asked.known = std::min(asked.known, addDays(*from, -1));
    }
    if (!options.balloon.empty())
        asked.balloon = Registration(options.balloon);
    if (!options.item.empty())
        asked.item = ItemId(options.item);
    for (const auto& text : options.plans) {
        const auto plan = planFrom(text);
        if (!plan)
            return tl::unexpected(plan.error());
        asked.plans.push_back(*plan);
    }
    return asked;
}

}

int run(const ForecastOptions& options, const Common& common) {
    const auto asked = askedBy(options);
    if (!asked)
        return refuse(asked.error());
    const auto record = openToAsk(common);
    if (!record)
        return BadInput;
    const auto forecast = useForecast(*record, *asked);
    if (!forecast)
        return refuse(forecast.error());
    if (options.json)
        print(answerOf(*forecast, *asked));
    else
        printPeriods(*forecast);
    return Done;
}

}
