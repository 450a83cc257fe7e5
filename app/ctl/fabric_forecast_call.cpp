// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/fabric/forecast.h"
#include "bench/reading/quantity.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "ctl/fabric_answer.h"
#include "words/sentence.h"

#include <cmath>
#include <iomanip>
#include <iostream>

namespace crownring::ctl {

namespace {

using Json = nlohmann::ordered_json;

struct Told {
    FabricFit fit;
    Ahead ahead;
    std::size_t envelope = 0;
    EnvelopeForecast forecast;

    [[nodiscard]] const SetForecast& weakest() const { return forecast.sets[forecast.weakest]; }
    [[nodiscard]] const FollowedEnvelope& of() const { return fit.record->envelopes[envelope]; }
    [[nodiscard]] std::string_view unit() const { return quantityNamed(fit.record->channel.quantity)->unit; }
};

Result<Told> toldOf(Books& books, const FabricForecastOptions& options, CivilDate on) {
    const ItemId envelope(options.envelope);
    const auto channels = channelsOf(books, envelope, on);
    if (!channels)
        return tl::unexpected(channels.error());
    const auto channel = chosenChannel(*channels, options.quantity);
    if (!channel)
        return tl::unexpected(channel.error());
    auto fit = fittedFleet(books, *channel, on, options.seed);
    auto ahead = aheadOf(books, envelope, on);
    if (!fit || !ahead)
        return tl::unexpected(fit ? ahead.error() : fit.error());
    const auto number = fit->record->numberOf(envelope);
    auto forecast = forecastOf(*fit, number, *ahead);
    return Told{std::move(*fit), std::move(*ahead), number, std::move(forecast)};
}

Json dayText(const std::optional<CivilDate>& day) { return day ? Json(day->iso()) : Json(); }

Json datesOf(const Told& told, const ToldOutlook& outlook) {
    if (!outlook.byReadings || !outlook.life.low)
        return {};
    const auto day = [&](const std::optional<Hours>& at) {
        return at ? dayText(told.ahead.dayAfter(*at - outlook.flown)) : Json();
    };
    return {{"p05", day(outlook.life.low)}, {"p50", day(outlook.life.middle)}, {"p95", day(outlook.life.high)}};
}

Json setJson(const Told& told, const SetForecast& set) {
    const auto& record = *told.fit.record;
    const auto& followed = record.sets[set.set];
    const auto& outlook = set.outlook;
    Json place;
    if (followed.patch)
        place = {{"gore", *followed.patch->gore}, {"row", *followed.patch->row}};
    return {{"lot", record.lots[followed.lot].empty() ? Json() : Json(record.lots[followed.lot])},
            {"panel", place},
            {"hours_now", outlook.flown.value()},
            {"dose", outlook.dose.value()},
            {"readings", set.readings},
            {"held", set.held},
            {"strength", ctl::jsonOf(outlook.strength)},
            {"life", ctl::jsonOf(outlook.life)},
            {"reached_already", ctl::jsonOf(outlook.reachedAlready)},
            {"dates", datesOf(told, outlook)},
            {"fails_next", ctl::jsonOf(outlook.failsNext)},
            {"below_by_next", ctl::jsonOf(outlook.belowByNext)},
            {"enough", outlook.byReadings},
            {"ground", wordOf(outlook.grounds.ground)},
            {"beyond_flown", outlook.grounds.isBeyondFlown}};
}

Json pullsJson(const Told& told) {
    Json pulls = Json::array();
    for (const auto& [pull, worth] : told.forecast.pulls)
        pulls.push_back({{"proof", pull.proof ? Json(*pull.proof) : Json()},
                         {"band_now", worth.bandNow},
                         {"band_then", worth.bandThen}});
    return pulls;
}

/// The weakest set stands for the envelope; all of them are told besides.
Json answerOf(const Told& told) {
    const auto& record = *told.fit.record;
    Json answer{{"envelope", told.of().id.text()},
                {"on", record.on.iso()},
                {"type", told.of().type},
                {"quantity", record.channel.quantity},
                {"limit", {{"value", told.of().limit.value()}, {"unit", told.unit()}, {"source", told.of().source}}},
                {"next", {{"on", dayText(told.ahead.day)}, {"hours", told.ahead.hours.value()}}}};
    answer["failed"] = Json::array();
    for (const auto& [quantity, what] : told.ahead.failed)
        answer["failed"].push_back({{"quantity", quantity}, {"text", words::said(what).toStdString()}});
    answer.update(setJson(told, told.weakest()));
    answer["sets"] = Json::array();
    for (const auto& set : told.forecast.sets)
        answer["sets"].push_back(setJson(told, set));
    answer["next_reading"] = pullsJson(told);
    answer["fleet"] = {{"envelopes", record.envelopes.size()},
                       {"readings", record.readings.size()},
                       {"left_out", record.leftOut.size()}};
    answer["convergence"] = {{"rhat_max", told.fit.worstRHat},
                             {"draws", told.fit.posterior.draws()},
                             {"effective_draws", told.weakest().effectiveDraws}};
    return answer;
}

void printPulls(const Told& told) {
    for (const auto& [pull, worth] : told.forecast.pulls) {
        std::cout << std::setprecision(0) << "  a test ";
        if (pull.proof)
            std::cout << "held up to " << *pull.proof << " " << told.unit();
        else
            std::cout << (told.fit.record->channel.rises ? "more" : "until it breaks");
        std::cout << " would narrow the life from " << worth.bandNow << " h to " << worth.bandThen << " h\n";
    }
}

void printStrength(const Told& told, const SetForecast& set) {
    const auto& strength = set.outlook.strength;
    std::cout << "  " << words::said(testedAs(told.fit.record->channel.series)).toStdString()
              << " at the weakest place now   ";
    if (strength.isWhole())
        std::cout << *strength.low << " to " << *strength.high << " " << told.unit() << ", middle " << *strength.middle;
    else if (strength.low)
        std::cout << "most likely above " << *strength.low << " " << told.unit();
    else if (strength.high)
        std::cout << "most likely below " << *strength.high << " " << told.unit();
    std::cout << ", by " << set.readings << " tests of these panels, of which " << set.held << " were held\n";
}

void printLife(const Told& told, const ToldOutlook& outlook) {
    const auto& life = outlook.life;
    if (life.isWhole()) {
        std::cout << "  to the limit at             " << life.low->value() << " to " << life.high->value()
                  << " h, middle " << life.middle->value() << " h";
        if (const auto day = told.ahead.dayAfter(*life.low - outlook.flown))
            std::cout << "; earliest " << day->iso();
        std::cout << "\n";
    } else if (life.low) {
        std::cout << "  not before                  " << life.low->value() << " h\n";
    }
}

void printForecast(const Told& told) {
    const auto& record = *told.fit.record;
    const auto& set = told.weakest();
    const auto& outlook = set.outlook;
    std::cout << std::fixed << std::setprecision(0) << told.of().id.text() << ", " << told.of().type << ", on "
              << record.on.iso() << ": " << told.of().hours.value() << " h flown; limit " << told.of().limit.value()
              << " " << told.unit() << " (" << told.of().source << ")\n";
    for (const auto& [quantity, what] : told.ahead.failed)
        std::cout << "  a place failed              " << words::said(what).toStdString() << "\n";
    if (!told.ahead.failed.empty())
        std::cout << "  What follows is of the fabric as a whole; it puts nothing right there.\n";
    printStrength(told, set);
    printLife(told, outlook);
    std::cout << std::setprecision(2);
    if (outlook.failsNext)
        std::cout << "  the next test fails         " << *outlook.failsNext << " (chance, in "
                  << std::lround(told.ahead.hours.value()) << " h)\n";
    if (outlook.belowByNext)
        std::cout << "  below the limit by then     " << *outlook.belowByNext << "\n";
    printPulls(told);
    if (const auto words = sentenceOf(outlook.grounds); !words.empty())
        std::cout << "  " << words << "\n";
    std::cout << noSubstitute << "\n";
}

}

int run(const FabricForecastOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    const auto told = toldOf(*record, options, record.on);
    if (!told)
        return refuse(told.error());
    if (options.json)
        print(answerOf(*told));
    else
        printForecast(*told);
    return Done;
}

}
