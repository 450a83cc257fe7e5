// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/parts/fuel.h"

#include <algorithm>
#include <vector>

namespace crownring {

namespace {

constexpr int mostRead = 1000;
constexpr int monthsCompared = 24;

struct Flown {
    Stamp stamp;
    FlightLogged flight;
};

/// Free flights that say what they burnt, in order.
std::vector<Flown> burningFlights(const std::vector<JournalLine>& lines, CivilDate since) {
    std::vector<Flown> flown;
    for (const auto& line : lines) {
        const auto* flight = line.voided || line.unread ? nullptr : std::get_if<FlightLogged>(&nowOf(line).body);
        if (flight && !flight->tethered && (flight->fuelWeighed || flight->fuelRead) && nowOf(line).on >= since)
            flown.push_back({stampOf(nowOf(line)), *flight});
    }
    std::ranges::sort(flown, {}, &Flown::stamp);
    return flown;
}

Result<bool> reportedSince(Books& books, const Registration& balloon, const Stamp& since, CivilDate on) {
    const auto items = books.facts({balloon, {}}, on);
    if (!items)
        return tl::unexpected(items.error());
    return std::ranges::any_of(*items, [&](const ItemFacts& item) {
        return std::ranges::any_of(item.events, [&](const Occurrence& event) {
            return event.event == "increased-fuel-use" && event.stamp.at.on() >= since.at.on();
        });
    });
}

}

Result<std::optional<FuelTold>> fuelTold(Books& books, const Registration& balloon, CivilDate on) {
    const auto lines = books.history(balloon, std::nullopt, on, mostRead);
    if (!lines)
        return tl::unexpected(lines.error());
    auto flown = burningFlights(*lines, addMonths(on, -monthsCompared, DayRule::Same));
    if (flown.empty())
        return std::optional<FuelTold>();
    FuelTold told;
    const bool isWeighed = flown.back().flight.fuelWeighed.has_value();
    told.unit = isWeighed ? FuelTold::Unit::Kilograms : FuelTold::Unit::Litres;
    std::vector<FuelFlight> flights;
    std::vector<Stamp> stamps;
    for (const auto& [stamp, flight] : flown) {
        if (isWeighed ? !flight.fuelWeighed : !flight.fuelRead)
            continue;
        flights.push_back({hoursOf(flight.use.minutes),
                           isWeighed ? flight.fuelWeighed->value() : flight.fuelRead->value(), flight.outside,
                           flight.load});
        stamps.push_back(stamp);
    }
    told.flights = flights.size();
    const auto rise = fuelRise(flights);
    if (!rise) {
        told.why = rise.error();
        return std::optional(told);
    }
    told.rise = *rise;
    told.since = stamps[stamps.size() - latestCompared];
    const auto reported = reportedSince(books, balloon, *told.since, on);
    if (!reported)
        return tl::unexpected(reported.error());
    told.isReported = *reported;
    return std::optional(told);
}

}
