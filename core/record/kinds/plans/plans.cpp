// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/plans/plans.h"

#include "problem/faults/entry_fault.h"
#include "record/json/object_reader.h"
#include "record/json/written.h"
#include "record/kinds/flights.h"

#include <algorithm>

namespace crownring {

namespace {

/// "from" and, where it is there, "to"; not the other way round.
std::optional<CivilDate> readLast(ObjectReader& reader, CivilDate from) {
    const auto to = reader.optionalDate("to");
    if (to && *to < from)
        reader.refuse("to", EntryFault::FirstAfterLast);
    return to;
}

}

UsePlanned Kind<UsePlanned>::read(ObjectReader& reader) {
    UsePlanned body;
    const auto balloon = reader.optionalName<Registration>("balloon");
    const auto item = reader.optionalName<ItemId>("item");
    if (balloon.has_value() == item.has_value())
        reader.refuse("balloon", EntryFault::PlannedForNothing);
    else if (item)
        body.subject = *item;
    else
        body.subject = *balloon;
    body.from = reader.date("from");
    body.to = readLast(reader, body.from);
    body.times = reader.optionalNumber("times", 0, mostOfPace);
    body.flightsAWeek = reader.optionalNumber("flights_a_week", 0, mostOfPace);
    if (body.times.has_value() == body.flightsAWeek.has_value())
        reader.refuse("times", EntryFault::PaceNotOnce);
    return body;
}

void Kind<UsePlanned>::write(nlohmann::json& into, const UsePlanned& body) {
    if (const auto* item = itemAhead(body))
        into["item"] = item->text();
    if (const auto* balloon = balloonAhead(body))
        into["balloon"] = balloon->text();
    into["from"] = body.from.iso();
    writeDate(into, "to", body.to);
    writeValue(into, "times", body.times);
    writeValue(into, "flights_a_week", body.flightsAWeek);
}

FlightPlanned Kind<FlightPlanned>::read(ObjectReader& reader) {
    FlightPlanned body;
    body.balloon = reader.name<Registration>("balloon");
    body.use = readUse(reader);
    body.kit = reader.optionalNames<ItemId>("kit");
    return body;
}

void Kind<FlightPlanned>::write(nlohmann::json& into, const FlightPlanned& body) {
    into["balloon"] = body.balloon.text();
    writeUse(into, body.use);
    if (body.kit)
        into["kit"] = namesOf(*body.kit);
}

std::vector<ItemId> itemsToVisit(const VisitPlanned& visit) {
    std::vector<ItemId> items;
    for (const auto& work : visit.covers)
        if (std::ranges::find(items, work.item) == items.end())
            items.push_back(work.item);
    return items;
}

VisitPlanned Kind<VisitPlanned>::read(ObjectReader& reader) {
    VisitPlanned body;
    body.balloon = reader.name<Registration>("balloon");
    body.station = reader.saying("station");
    body.from = reader.date("from");
    body.to = reader.date("to");
    if (body.to < body.from)
        reader.refuse("to", EntryFault::FirstAfterLast);
    reader.objects("covers", [&](ObjectReader& inner) {
        PlannedWork work{inner.name<ItemId>("item"), inner.name<RequirementId>("requirement")};
        if (std::ranges::find(body.covers, work) != body.covers.end())
            inner.refuse("requirement", EntryFault::NamedTwice, {work.requirement});
        body.covers.push_back(std::move(work));
    });
    return body;
}

void Kind<VisitPlanned>::write(nlohmann::json& into, const VisitPlanned& body) {
    into["balloon"] = body.balloon.text();
    into["station"] = body.station;
    into["from"] = body.from.iso();
    into["to"] = body.to.iso();
    for (const auto& work : body.covers)
        into["covers"].push_back({{"item", work.item.text()}, {"requirement", work.requirement.text()}});
}

}
