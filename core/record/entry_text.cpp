// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/bench_writer.h"
#include "record/entry_json.h"

namespace crownring {

namespace {

using nlohmann::json;

void writeFigures(json& into, const char* key, const Figures& figures, const Figures& implied) {
    json object = json::object();
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

struct BodyWriter {
    json& into;

    template <class OfTheBench>
    void operator()(const OfTheBench& body) const {
        writeBody(into, body);
    }
    void operator()(const ItemEntered& body) const {
        into["item"] = body.item.text();
        into["kind"] = itemKindName(body.kind);
        if (body.serial)
            into["serial"] = *body.serial;
        if (body.type)
            into["type"] = *body.type;
        if (body.made)
            into["made"] = body.made->iso();
        writeFigures(into, "brought_forward", body.broughtForward, newFigures);
    }
    void operator()(const BalloonEntered& body) const {
        into["balloon"] = body.balloon.text();
        writeText(into, "title", body.title);
        if (!body.operations.empty())
            into["operations"] = body.operations;
    }
    void fitting(const Registration& balloon, const ItemId& item, const std::string& place) const {
        into["balloon"] = balloon.text();
        into["item"] = item.text();
        writeText(into, "place", place);
    }
    void operator()(const ItemFitted& body) const { fitting(body.balloon, body.item, body.place); }
    void operator()(const ItemRemoved& body) const { fitting(body.balloon, body.item, body.place); }
    void operator()(const FlightLogged& body) const {
        into["balloon"] = body.balloon.text();
        into["minutes"] = body.use.minutes.value();
        if (body.use.landings != Landings(1))
            into["landings"] = body.use.landings.value();
        if (body.use.inflations != Inflations(1))
            into["inflations"] = body.use.inflations.value();
        if (body.kit)
            into["kit"] = namesOf(*body.kit);
        if (body.maxCelsius)
            into["max_temp_c"] = *body.maxCelsius;
        if (body.tethered)
            into["tethered"] = true;
    }
    void operator()(const RequirementDone& body) const {
        into["item"] = body.item.text();
        into["requirement"] = body.requirement.text();
        writeFigures(into, "clock", body.clock, {});
        writeText(into, "method", body.method);
        writeText(into, "ref", body.ref);
    }
    void operator()(const ProgrammeAdopted& body) const {
        into["programme"] = body.programme.text();
        if (const auto* balloons = std::get_if<BoundBalloons>(&body.bound))
            into["balloons"] = namesOf(balloons->balloons);
        else if (const auto* items = std::get_if<BoundItems>(&body.bound))
            into["items"] = namesOf(items->items);
        else
            into["everything"] = true;
        if (!body.document.empty())
            into["document"] = json::parse(body.document);
        writeText(into, "digest", body.digest);
    }
    void operator()(const EventReported& body) const {
        if (const auto* item = std::get_if<ItemId>(&body.subject))
            into["item"] = item->text();
        else
            into["balloon"] = std::get<Registration>(body.subject).text();
        into["event"] = body.event;
        if (body.celsius)
            into["temp_c"] = *body.celsius;
        if (body.lasted)
            into["minutes"] = body.lasted->value();
    }
    void operator()(const EntryCorrected& body) const {
        into["replaces"] = body.replaces.text();
        into["with"] = json::parse(body.with);
    }
    void operator()(const EntryVoided& body) const {
        into["voids"] = body.voids.text();
        into["reason"] = body.reason;
    }
};

}

json toJson(const Entry& entry) {
    json object = json::object();
    object["entry"] = kindName(entry.body);
    writeText(object, "id", entry.id.text());
    object["on"] = entry.on.iso();
    if (entry.time)
        object["time"] = entry.time->iso();
    writeText(object, "by", entry.by);
    writeText(object, "note", entry.note);
    std::visit(BodyWriter{object}, entry.body);
    return object;
}

std::string canonicalText(const Entry& entry) { return toJson(entry).dump(); }

}
