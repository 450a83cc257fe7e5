// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/bench_keys.h"

#include "problem/faults/entry_fault.h"
#include "record/chain/chain.h"
#include "record/json/words.h"
#include "record/json/written.h"

namespace crownring {

namespace {

constexpr Words<zoneCount> zones = {"envelope", "parachute", "turning-vent", "mouth"};
constexpr Words<basketPlaceCount> basketPlaces = {
    "floor",    "long-side-1", "corner-1",  "short-side-1", "corner-2", "long-side-2", "corner-3", "short-side-2",
    "corner-4", "rim",         "partition", "runner-1",     "runner-2", "runner-3",    "runner-4"};
constexpr Words<sideCount> sides = {"inside", "outside"};

}

std::string_view zoneName(Zone zone) { return zones[static_cast<std::size_t>(zone)]; }
std::optional<Zone> zoneFrom(std::string_view name) { return among<Zone>(zones, name); }
std::string_view basketPlaceName(BasketPlace place) { return basketPlaces[static_cast<std::size_t>(place)]; }
std::optional<BasketPlace> basketPlaceFrom(std::string_view name) { return among<BasketPlace>(basketPlaces, name); }
std::string_view sideName(Side side) { return sides[static_cast<std::size_t>(side)]; }
std::optional<Side> sideFrom(std::string_view name) { return among<Side>(sides, name); }

std::optional<int> readSmallCount(ObjectReader& reader, std::string_view key) {
    const auto number = reader.optionalCount(key, 1, 1000);
    return number ? std::optional<int>(static_cast<int>(*number)) : std::nullopt;
}

std::optional<Zone> readZone(ObjectReader& reader) {
    if (!reader.has("zone"))
        return std::nullopt;
    return reader.word("zone", zoneFrom, "envelope, parachute, turning-vent, mouth");
}

PanelPlace readPlace(ObjectReader& reader) {
    const auto zone = readZone(reader);
    PanelPlace place{readSmallCount(reader, "gore"), readSmallCount(reader, "row"), zone.value_or(Zone::Envelope), {}};
    if (reader.has("place"))
        place.basket = reader.word("place", basketPlaceFrom,
                                   "floor, rim, partition, long-side-1 and -2, short-side-1 and -2, corner-1 to -4, "
                                   "runner-1 to -4");
    if (place.basket && (place.gore || place.row || zone))
        reader.refuse("place", EntryFault::OnTwoItems);
    return place;
}

void writePlace(nlohmann::json& into, const PanelPlace& place) {
    writeValue(into, "gore", place.gore);
    writeValue(into, "row", place.row);
    if (place.zone != Zone::Envelope)
        into["zone"] = zoneName(place.zone);
    if (place.basket)
        into["place"] = basketPlaceName(*place.basket);
}

TestConditions readConditions(ObjectReader& reader) {
    TestConditions conditions;
    if (reader.has("direction")) {
        conditions.direction = reader.text("direction");
        if (*conditions.direction != "warp" && *conditions.direction != "weft")
            reader.refuse("direction", EntryFault::NoDirection);
    }
    conditions.jaw = readAmount<Millimetres>(reader, "jaw_mm");
    conditions.pressure = readAmount<Pascals>(reader, "pressure_pa");
    conditions.area = readAmount<SquareCentimetres>(reader, "area_cm2");
    return conditions;
}

void writeConditions(nlohmann::json& into, const TestConditions& conditions) {
    writeValue(into, "direction", conditions.direction);
    writeAmount(into, "jaw_mm", conditions.jaw);
    writeAmount(into, "pressure_pa", conditions.pressure);
    writeAmount(into, "area_cm2", conditions.area);
}

TestCircumstances readCircumstances(ObjectReader& reader) {
    TestCircumstances circumstances;
    circumstances.seconds = reader.optionalNumber("hold_s", 0, longestHold);
    if (reader.has("dry"))
        circumstances.dry = reader.optionalBool("dry");
    if (reader.has("side"))
        circumstances.side = reader.word("side", sideFrom, "inside, outside");
    if (const auto celsius = reader.optionalNumber("temp_c", coldestTaken.value(), hottestTaken.value()))
        circumstances.temperature = Celsius(*celsius);
    return circumstances;
}

void writeCircumstances(nlohmann::json& into, const TestCircumstances& circumstances) {
    writeValue(into, "hold_s", circumstances.seconds);
    writeValue(into, "dry", circumstances.dry);
    if (circumstances.side)
        into["side"] = sideName(*circumstances.side);
    writeAmount(into, "temp_c", circumstances.temperature);
}

void checkDigest(ObjectReader& reader, std::string_view key, const std::string& digest) {
    if (!digestFromHex(digest))
        reader.refuse(key, EntryFault::NotADigest);
}

std::vector<std::string> readPhotographs(ObjectReader& reader) {
    auto photographs = reader.optionalTexts("photographs");
    for (const auto& digest : photographs)
        checkDigest(reader, "photographs", digest);
    return photographs;
}

void writePhotographs(nlohmann::json& into, const std::vector<std::string>& photographs) {
    if (!photographs.empty())
        into["photographs"] = photographs;
}

Figures readStatedClock(ObjectReader& reader) {
    Figures figures;
    readFigures(reader, "clock", figures,
                []<class C>(ObjectReader& inner, std::string_view name, std::optional<C>& figure) {
                    if (inner.empty())
                        inner.refuse(name, EntryFault::ClockWithoutFigure);
                    else if (const auto value = inner.optionalCount(name, 0, largestCount))
                        figure = C(*value);
                });
    return figures;
}

void writeFigures(nlohmann::json& into, const char* key, const Figures& figures, const Figures& implied) {
    auto object = nlohmann::json::object();
    const auto write = [&](const char* name, const auto& figure, const auto& unsaid) {
        if (figure == unsaid)
            return;
        if (figure)
            object[name] = figure->value();
        else
            object[name] = nullptr;
    };
    write("minutes", figures.minutes, implied.minutes);
    write("landings", figures.landings, implied.landings);
    write("inflations", figures.inflations, implied.inflations);
    if (!object.empty())
        into[key] = std::move(object);
}

void readWhich(ObjectReader& reader, std::optional<TextId>& text, std::optional<ChecklistId>& checklist) {
    text = reader.optionalName<TextId>("text");
    checklist = reader.optionalName<ChecklistId>("checklist");
    if (text.has_value() == checklist.has_value())
        reader.refuse("text", EntryFault::TextOrChecklist);
}

std::vector<ConfirmedText> readConfirmed(ObjectReader& reader) {
    std::vector<ConfirmedText> confirmed;
    reader.objects("confirmed", [&](ObjectReader& inner) {
        ConfirmedText each;
        readWhich(inner, each.text, each.checklist);
        each.revision = inner.saying("revision");
        each.digest = inner.text("digest");
        checkDigest(inner, "digest", each.digest);
        each.by = inner.name<PersonId>("by");
        each.licence = inner.optionalText("licence");
        each.on = inner.date("on");
        each.against = inner.saying("against");
        confirmed.push_back(std::move(each));
    });
    return confirmed;
}

void writeConfirmed(nlohmann::json& into, const std::vector<ConfirmedText>& confirmed) {
    for (const auto& each : confirmed) {
        nlohmann::json object = {{"revision", each.revision},
                                 {"digest", each.digest},
                                 {"by", each.by.text()},
                                 {"on", each.on.iso()},
                                 {"against", each.against}};
        writeName(object, "text", each.text);
        writeName(object, "checklist", each.checklist);
        writeText(object, "licence", each.licence);
        into["confirmed"].push_back(std::move(object));
    }
}

}
