// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/parts/wear.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "registry/reading_said.h"
#include "words/sentence.h"

#include <nlohmann/json.hpp>

#include <iomanip>
#include <iostream>

namespace crownring::ctl {

namespace {

using Json = nlohmann::ordered_json;

constexpr double aHundredHours = 100;

const char* sentenceOf(NoForecast why) {
    switch (why) {
    case NoForecast::TooFewReadings:
        return "fewer than three readings whose hours are known";
    case NoForecast::SameHours:
        return "all readings were taken at the same hours";
    case NoForecast::MayNever:
        return "the interval of the slope includes zero: it may never be met";
    case NoForecast::WearsAway:
        return "the readings go away from the limit";
    case NoForecast::NoLimit:
        return "no limit is stated for the type";
    case NoForecast::Beyond:
        return "the latest reading is beyond the limit";
    case NoForecast::ClockUnknown:
        return "the item's clock is not known on that day";
    }
    return "";
}

Json seriesJson(const WearSeries& series) {
    const auto place = placeSlug(series.place);
    Json json{{"quantity", series.quantity},
              {"place", place.empty() ? Json() : Json(place)},
              {"n", series.readings},
              {"left_out", series.leftOut},
              {"value", series.latest.value()},
              {"unit", series.latest.unit().symbol},
              {"slope_per_100h", Json()},
              {"interval", Json()},
              {"limit", series.limit ? Json(series.limit->value()) : Json()},
              {"hours_to_limit", Json()},
              {"met_on", Json()}};
    if (series.trend) {
        const auto& slope = series.trend->slope;
        json["slope_per_100h"] = slope.middle * aHundredHours;
        json["interval"] = {slope.low * aHundredHours, slope.high * aHundredHours};
    }
    if (series.toLimit)
        json["hours_to_limit"] = {series.toLimit->low.value(), series.toLimit->middle.value(),
                                  series.toLimit->high.value()};
    if (series.metOn)
        json["met_on"] = {series.metOn->low.iso(), series.metOn->middle.iso(), series.metOn->high.iso()};
    if (series.why)
        json["why"] = sentenceOf(*series.why);
    return json;
}

void printSeries(const WearSeries& series) {
    const auto what = inPlace(quantityTerm(series.quantity), series.place);
    std::cout << plainly(words::said(what)) << ": " << plainly(words::said(Argument(series.latest)));
    if (series.trend) {
        const auto& slope = series.trend->slope;
        std::cout << std::fixed << std::setprecision(2) << ", " << slope.middle * aHundredHours << " each 100 h ("
                  << slope.low * aHundredHours << " to " << slope.high * aHundredHours << ") by " << series.readings
                  << " readings";
    }
    if (series.limit)
        std::cout << "; limit " << plainly(words::said(Argument(*series.limit)));
    if (series.toLimit)
        std::cout << std::fixed << std::setprecision(0) << ", met in " << series.toLimit->low.value() << " to "
                  << series.toLimit->high.value() << " h, middle " << series.toLimit->middle.value();
    std::cout << "\n";
    if (series.why)
        std::cout << "  no forecast: " << sentenceOf(*series.why) << "\n";
}

}

int run(const WearOptions& options, const Common& common) {
    const auto record = openToAsk(common, options.on);
    if (!record)
        return BadInput;
    const auto wear = wearOf(*record, ItemId(options.item), record.on);
    if (!wear)
        return refuse(wear.error());
    if (options.json) {
        Json series = Json::array();
        for (const auto& each : *wear)
            series.push_back(seriesJson(each));
        print({{"item", options.item}, {"on", record.on.iso()}, {"series", series}});
        return Done;
    }
    for (const auto& each : *wear)
        printSeries(each);
    if (wear->empty())
        std::cout << "Nothing that wears was read of " << options.item << ".\n";
    return Done;
}

}
