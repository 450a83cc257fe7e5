// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/fabric_record.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "ctl/fabric_answer.h"
#include "fabric/ageing_sampler.h"

#include <algorithm>
#include <cmath>
#include <iomanip>
#include <iostream>

namespace crownring::ctl {

namespace {

using Json = nlohmann::ordered_json;

struct Forecast {
    FabricRecord record;
    SetOutlook outlook; ///< of the panels that the envelope came with
    YearlyPace pace{};
    CivilDate on;
    std::size_t readings = 0; ///< of those panels
    double worstRHat = 1;
    std::size_t draws = 0;

    /// The day on which this many hours are flown; nothing where that is not within sight.
    [[nodiscard]] std::optional<std::string> dayOf(double hours) const {
        const auto days = endOfMonth(on).day();
        const PointOfMonth now{on.year(), on.month(), (on.day() - 1.0) / days};
        const auto at = reachedAt(now, hours - outlook.use.hours, pace);
        const auto first = at ? CivilDate::fromYearMonthDay(at->year, at->month, 1) : std::nullopt;
        if (!first)
            return std::nullopt;
        return addDays(*first, static_cast<std::int64_t>(at->gone * endOfMonth(*first).day())).iso();
    }
};

Result<std::string> typeOf(Books& books, const ItemId& envelope, CivilDate on) {
    const auto facts = books.facts({std::nullopt, {envelope}}, on);
    if (!facts)
        return tl::unexpected(facts.error());
    if (facts->empty() || facts->front().kind != ItemKind::Envelope)
        return problem(Code::UnknownReference, "'" + envelope.text() + "' is no envelope in the record on " + on.iso(),
                       "ask for another, or a later day");
    if (!facts->front().type)
        return problem(Code::MissingKey, "the type of '" + envelope.text() + "' is not known",
                       "correct its entry: without a type there is no limit", {{}, 0, "type"});
    return *facts->front().type;
}

Result<Forecast> forecastOf(Books& books, const FabricForecastOptions& options, CivilDate on) {
    const ItemId envelope(options.envelope);
    const auto type = typeOf(books, envelope, on);
    if (!type)
        return tl::unexpected(type.error());
    auto record = fabricRecord(books, *type, on);
    const auto pace = paceOfItem(books, envelope, on);
    if (!record || !pace)
        return tl::unexpected(record ? pace.error() : record.error());
    const auto columns = fleetColumns(record->fleet);
    if (!columns)
        return tl::unexpected(columns.error());
    const auto at =
        static_cast<std::size_t>(std::ranges::find(record->envelopes, envelope) - record->envelopes.begin());
    const auto set =
        static_cast<std::size_t>(std::ranges::find(record->envelopeOfSet, at) - record->envelopeOfSet.begin());
    const auto prior = priorFor(columns->fabrics, record->limit);
    auto settings = settingsFor(*columns);
    settings.seed = options.seed;
    const auto posterior = sampledPosterior(*columns, prior, settings);
    Forecast forecast;
    forecast.outlook = outlookOf(*columns, prior, *posterior, set, std::log(record->limit), record->useOfSet[set]);
    forecast.readings = columns->firstOfSet[set + 1] - columns->firstOfSet[set];
    forecast.pace = *pace;
    forecast.on = on;
    forecast.worstRHat = worstRHat(*posterior);
    forecast.draws = posterior->draws();
    forecast.record = std::move(*record);
    return forecast;
}

Json answerOf(const Forecast& forecast, const std::string& envelope) {
    const auto& outlook = forecast.outlook;
    Json days;
    if (outlook.grounds.ground == Ground::Enough && outlook.life.life) {
        const auto day = [&](double hours) {
            const auto found = forecast.dayOf(hours);
            return found ? Json(*found) : Json();
        };
        days = {{"p05", day(outlook.life.life->low)},
                {"p50", day(outlook.life.life->middle)},
                {"p95", day(outlook.life.life->high)}};
    }
    return {{"envelope", envelope},
            {"on", forecast.on.iso()},
            {"type", forecast.record.type},
            {"limit", {{"value", forecast.record.limit}, {"unit", "N"}, {"source", forecast.record.source}}},
            {"hours_now", outlook.use.hours},
            {"strength", jsonOf(outlook.strength)},
            {"life", jsonOf(outlook.life.life)},
            {"reached_already", outlook.life.reachedAlready},
            {"dates", days},
            {"fails_next", outlook.failsNext},
            {"below_by_next", outlook.belowByNext},
            {"enough", outlook.grounds.ground == Ground::Enough},
            {"ground", wordOf(outlook.grounds.ground)},
            {"beyond_flown", outlook.grounds.isBeyondFlown},
            {"readings", forecast.readings},
            {"fleet",
             {{"envelopes", forecast.record.envelopes.size()},
              {"readings", forecast.record.fleet.readings.size()},
              {"left_out", forecast.record.leftOut}}},
            {"convergence", {{"rhat_max", forecast.worstRHat}, {"draws", forecast.draws}}}};
}

void printForecast(const Forecast& forecast, const std::string& envelope) {
    const auto& outlook = forecast.outlook;
    std::cout << std::fixed << std::setprecision(0) << envelope << ", " << forecast.record.type << ", on "
              << forecast.on.iso() << ": " << outlook.use.hours << " h flown, " << forecast.readings
              << " strength tests; limit " << forecast.record.limit << " N (" << forecast.record.source << ")\n"
              << "  strength of the crown now   " << outlook.strength.low << " to " << outlook.strength.high
              << " N, middle " << outlook.strength.middle << " N\n";
    if (const auto& life = outlook.life.life; life && outlook.grounds.ground == Ground::Enough) {
        std::cout << "  to the limit at             " << life->low << " to " << life->high << " h, middle "
                  << life->middle << " h";
        if (const auto day = forecast.dayOf(life->low))
            std::cout << "; earliest " << *day;
        std::cout << "\n";
    } else if (life) {
        std::cout << "  not before                  " << life->low << " h\n";
    }
    std::cout << std::setprecision(2) << "  the next pull fails         " << outlook.failsNext << " (chance, in "
              << std::lround(nextTestAfter) << " h)\n";
    if (const auto words = sentenceOf(outlook.grounds); !words.empty())
        std::cout << "  " << words << "\n";
    std::cout << noSubstitute << "\n";
}

}

int run(const FabricForecastOptions& options, const Common& common) {
    const auto on = dayFrom(options.on);
    if (!on)
        return refuse(on.error());
    const auto record = open(common);
    if (!record)
        return BadInput;
    const auto forecast = forecastOf(*record, options, *on);
    if (!forecast)
        return refuse(forecast.error());
    if (options.json)
        print(answerOf(*forecast, options.envelope));
    else
        printForecast(*forecast, options.envelope);
    return Done;
}

}
