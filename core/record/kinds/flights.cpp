// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/flights.h"

#include "problem/faults/entry_fault.h"
#include "record/json/object_reader.h"
#include "record/json/words.h"
#include "record/json/written.h"

namespace crownring {

namespace {

std::optional<Celsius> readTemperature(ObjectReader& reader, std::string_view key) {
    const auto number = reader.optionalNumber(key, coldestTaken.value(), hottestTaken.value());
    return number ? std::optional(Celsius(*number)) : std::nullopt;
}

template <class AmountOf>
std::optional<AmountOf> readAmount(ObjectReader& reader, std::string_view key, AmountOf least, AmountOf most) {
    const auto number = reader.optionalNumber(key, least.value(), most.value());
    return number ? std::optional(AmountOf(*number)) : std::nullopt;
}

constexpr Words<informedCount> informedWords = {"authority", "holder"};

/// Of what an event, or what is told of it, speaks.
std::variant<Registration, ItemId> readSubject(ObjectReader& reader) {
    const auto balloon = reader.optionalName<Registration>("balloon");
    const auto item = reader.optionalName<ItemId>("item");
    if (balloon.has_value() == item.has_value())
        reader.refuse("balloon", EntryFault::EventOfNothing);
    else if (item)
        return *item;
    return balloon.value_or(Registration());
}

/// "HH:MM", without a zone.
std::optional<TimeOfDay> readTakeOff(ObjectReader& reader) {
    if (!reader.has("take_off"))
        return std::nullopt;
    const auto time = TimeOfDay::parse(reader.text("take_off") + "Z");
    if (!time)
        reader.refuse("take_off", EntryFault::NotATimeWithoutZone);
    return time.value_or(TimeOfDay());
}

std::optional<TrackSource> readTrack(ObjectReader& reader) {
    std::optional<TrackSource> track;
    reader.object("track", [&](ObjectReader& inner) {
        constexpr std::int64_t mostFixes = 10'000'000;
        track.emplace();
        track->file = inner.saying("file");
        track->fixesSkipped = static_cast<int>(inner.optionalCount("skipped", 0, mostFixes).value_or(0));
        track->beganAloft = inner.optionalBool("began_aloft");
        track->endedAloft = inner.optionalBool("ended_aloft");
        track->highest = readAmount(inner, "highest_m", lowestTaken, highestTaken);
    });
    return track;
}

nlohmann::json written(const TrackSource& track) {
    nlohmann::json into = {{"file", track.file}};
    if (track.fixesSkipped > 0)
        into["skipped"] = track.fixesSkipped;
    if (track.beganAloft)
        into["began_aloft"] = true;
    if (track.endedAloft)
        into["ended_aloft"] = true;
    writeAmount(into, "highest_m", track.highest);
    return into;
}

}

Usage readUse(ObjectReader& reader) {
    return {Minutes(reader.count("minutes", 1, longestFlight.value())),
            Landings(reader.optionalCount("landings", 0, mostOfOneFlight).value_or(1)),
            Inflations(reader.optionalCount("inflations", 0, mostOfOneFlight).value_or(1))};
}

void writeUse(nlohmann::json& into, const Usage& use) {
    into["minutes"] = use.minutes.value();
    if (use.landings != Landings(1))
        into["landings"] = use.landings.value();
    if (use.inflations != Inflations(1))
        into["inflations"] = use.inflations.value();
}

FlightLogged Kind<FlightLogged>::read(ObjectReader& reader) {
    FlightLogged body;
    body.balloon = reader.name<Registration>("balloon");
    body.use = readUse(reader);
    body.kit = reader.optionalNames<ItemId>("kit");
    body.hottest = readTemperature(reader, "max_temp_c");
    body.tethered = reader.optionalBool("tethered");
    body.takeOff = readTakeOff(reader);
    body.track = readTrack(reader);
    body.fuelWeighed = readAmount(reader, "fuel_kg", leastFuelTaken, mostFuelTaken);
    body.fuelRead = readAmount(reader, "fuel_l", leastLitresTaken, mostLitresTaken);
    body.outside = readTemperature(reader, "oat_c");
    body.load = readAmount(reader, "load_kg", leastLoadTaken, mostLoadTaken);
    return body;
}

void Kind<FlightLogged>::write(nlohmann::json& into, const FlightLogged& body) {
    into["balloon"] = body.balloon.text();
    writeUse(into, body.use);
    if (body.kit)
        into["kit"] = namesOf(*body.kit);
    writeAmount(into, "max_temp_c", body.hottest);
    if (body.tethered)
        into["tethered"] = true;
    if (body.takeOff)
        into["take_off"] = body.takeOff->iso().substr(0, 5);
    if (body.track)
        into["track"] = written(*body.track);
    writeAmount(into, "fuel_kg", body.fuelWeighed);
    writeAmount(into, "fuel_l", body.fuelRead);
    writeAmount(into, "oat_c", body.outside);
    writeAmount(into, "load_kg", body.load);
}

EventReported Kind<EventReported>::read(ObjectReader& reader) {
    EventReported body;
    body.event = reader.slug("event");
    body.subject = readSubject(reader);
    body.hottest = readTemperature(reader, "temp_c");
    if (const auto minutes = reader.optionalCount("minutes", 1, longestFlight.value()))
        body.lasted = Minutes(*minutes);
    body.altitude = readAmount(reader, "altitude_m", lowestTaken, highestTaken);
    return body;
}

void Kind<EventReported>::write(nlohmann::json& into, const EventReported& body) {
    if (const auto* item = itemOf(body))
        into["item"] = item->text();
    if (const auto* balloon = balloonOf(body))
        into["balloon"] = balloon->text();
    into["event"] = body.event;
    writeAmount(into, "temp_c", body.hottest);
    if (body.lasted)
        into["minutes"] = body.lasted->value();
    writeAmount(into, "altitude_m", body.altitude);
}

std::string_view informedName(Informed informed) { return informedWords[static_cast<std::size_t>(informed)]; }
std::optional<Informed> informedFrom(std::string_view name) { return among<Informed>(informedWords, name); }

EventNotified Kind<EventNotified>::read(ObjectReader& reader) {
    EventNotified body;
    body.subject = readSubject(reader);
    body.event = reader.name<EntryId>("event");
    body.to = reader.word("to", informedFrom, "authority, holder");
    body.ref = reader.optionalText("ref");
    return body;
}

void Kind<EventNotified>::write(nlohmann::json& into, const EventNotified& body) {
    if (const auto* item = notifiedItem(body))
        into["item"] = item->text();
    if (const auto* balloon = notifiedBalloon(body))
        into["balloon"] = balloon->text();
    into["event"] = body.event.text();
    into["to"] = informedName(body.to);
    writeText(into, "ref", body.ref);
}

}
