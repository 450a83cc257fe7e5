// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/forecast/suppose_call.h"

#include "answers/forecast/agenda.h"
#include "answers/forecast/projected.h"
#include "ctl/answer_json.h"
#include "ctl/due_table.h"
#include "ctl/forecast/visit_json.h"
#include "measure/duration_text.h"
#include "problem/faults/use_fault.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <charconv>
#include <iostream>
#include <limits>
#include <set>

namespace crownring::ctl {

namespace {

using Json = nlohmann::ordered_json;

/// "REG:MINUTES:DATE"; a registration may hold a colon.
Result<SupposedFlight> flightFrom(const std::string& text) {
    const Problem bad{UseFault::NotAFlight, {text}};
    const auto day = text.rfind(':');
    const auto minutes = day == std::string::npos || day == 0 ? day : text.rfind(':', day - 1);
    if (day == std::string::npos || minutes == std::string::npos || minutes == 0)
        return tl::unexpected(bad);
    const auto on = CivilDate::parse(text.substr(day + 1));
    if (!on)
        return tl::unexpected(on.error());
    std::int64_t count = 0;
    const auto* end = text.data() + day;
    const auto read = std::from_chars(text.data() + minutes + 1, end, count);
    if (read.ec != std::errc() || read.ptr != end || count < 1 || Minutes(count) > longestFlight)
        return tl::unexpected(bad);
    return SupposedFlight{Registration(text.substr(0, minutes)), {Minutes(count), Landings(1), Inflations(1)}, *on, {}};
}

Json flightJson(const SupposedFlight& flight) {
    return {{"balloon", flight.balloon.text()}, {"minutes", flight.use.minutes.value()}, {"on", flight.on.iso()}};
}

Json answerOf(const Supposed& supposed, const std::vector<SupposedFlight>& flights,
              const std::vector<std::optional<DateBand>>& bands) {
    Json answer{{"on", supposed.after.on.iso()}, {"supposed", Json::array()}, {"rows", Json::array()}};
    for (const auto& flight : flights)
        answer["supposed"].push_back(flightJson(flight));
    const std::set<ItemId> flown(supposed.flown.begin(), supposed.flown.end());
    for (std::size_t i = 0; i < supposed.after.rows.size(); ++i) {
        const auto& row = supposed.after.rows[i];
        auto json = rowJson(row);
        json["projected"] = projectedJson(bands[i]);
        if (flown.contains(row.item->id))
            json["supposed"] = true;
        for (const auto& made : supposed.makes)
            if (made.after == &row)
                json["standing_before"] = standingText(made.before->state.standing);
        answer["rows"].push_back(std::move(json));
    }
    return answer;
}

void printText(const Supposed& supposed, const std::vector<SupposedFlight>& flights, std::size_t most) {
    for (const auto& flight : flights)
        std::cout << "Supposed, and not written: " << flight.balloon.text() << " flies "
                  << hoursAndMinutes(flight.use.minutes) << " h on " << flight.on.iso() << ".\n";
    if (supposed.makes.empty())
        std::cout << "Nothing more is due by it.\n";
    for (const auto& made : supposed.makes)
        std::cout << "Makes due: " << madeDueText(made) << "\n";
    std::cout << "\n";
    ctl::printTable(std::cout, supposed.after, most == 0 ? std::numeric_limits<std::size_t>::max() : most);
}

}

int suppose(const DueOptions& options, const Common& common) {
    std::vector<SupposedFlight> flights;
    for (const auto& text : options.supposed) {
        auto flight = flightFrom(text);
        if (!flight)
            return refuse(flight.error());
        flights.push_back(std::move(*flight));
    }
    const auto last = std::ranges::max(flights, {}, &SupposedFlight::on).on;
    const auto record = openToAsk(common, options.on.empty() ? last.iso() : options.on);
    if (!record)
        return BadInput;
    auto scope = scopeOf(options.balloon);
    scope.items = std::vector<ItemId>(options.items.begin(), options.items.end());
    const auto supposed = supposeFlights(*record, flights, scope, record.on,
                                         options.outOfService ? Outside::AsInService : Outside::LeftOut);
    if (!supposed)
        return refuse(supposed.error());
    if (!options.json) {
        printText(*supposed, flights, options.most);
        return Done;
    }
    const auto bands = projected(*record, supposed->after, std::min(record.on, today()));
    if (!bands)
        return refuse(bands.error());
    auto answer = answerOf(*supposed, flights, *bands);
    if (const auto added = addUnread(answer, *record); !added)
        return refuse(added.error());
    print(answer);
    return Done;
}

}
