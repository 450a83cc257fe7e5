// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/entry_json.h"

#include "record/bench_reader.h"
#include "record/chain.h"
#include "record/json/strict_json.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace crownring {

namespace {

constexpr std::int64_t longestFlight = 7 * 24 * 60; // minutes

using nlohmann::json;

template <class Read>
void readFigures(ObjectReader& reader, std::string_view key, Figures& figures, Read read) {
    reader.object(key, [&](ObjectReader& inner) {
        read(inner, "minutes", figures.minutes);
        read(inner, "landings", figures.landings);
        read(inner, "inflations", figures.inflations);
    });
}

/// A figure that is left out is zero, one that is null is unknown.
Figures readBroughtForward(ObjectReader& reader) {
    Figures figures = newFigures;
    readFigures(reader, "brought_forward", figures,
                []<class C>(ObjectReader& inner, std::string_view name, std::optional<C>& figure) {
                    if (inner.takeNull(name))
                        figure.reset();
                    else if (const auto value = inner.optionalCount(name, 0, largestCount))
                        figure = C(*value);
                });
    return figures;
}

/// What a paper states: at least one figure.
Figures readStatedClock(ObjectReader& reader) {
    Figures figures;
    readFigures(
        reader, "clock", figures, []<class C>(ObjectReader& inner, std::string_view name, std::optional<C>& figure) {
            if (inner.empty())
                inner.refuse(Code::BadValue, name, "a clock without a figure", "state one, or leave the key out");
            else if (const auto value = inner.optionalCount(name, 0, largestCount))
                figure = C(*value);
        });
    return figures;
}

ItemEntered readItemEntered(ObjectReader& reader) {
    ItemEntered body;
    body.item = reader.name<ItemId>("item");
    const auto kind = reader.text("kind");
    if (const auto known = itemKindFrom(kind))
        body.kind = *known;
    else
        reader.refuse(Code::BadValue, "kind", "'" + kind + "' is no kind of item",
                      "one of envelope, basket, burner, cylinder, hose, instrument, other");
    body.serial = reader.nullableText("serial");
    body.type = reader.nullableText("type");
    if (const auto made = reader.nullableText("made")) {
        if (const auto date = DayOrMonth::parse(*made))
            body.made = *date;
        else
            reader.refuse("made", date.error());
    }
    body.broughtForward = readBroughtForward(reader);
    return body;
}

BalloonEntered readBalloonEntered(ObjectReader& reader) {
    return {reader.name<Registration>("balloon"), reader.optionalText("title"), reader.optionalSlugs("operations")};
}

template <class Fitting>
Fitting readFitting(ObjectReader& reader) {
    return {reader.name<Registration>("balloon"), reader.name<ItemId>("item"), reader.optionalText("place")};
}

FlightLogged readFlight(ObjectReader& reader) {
    constexpr std::int64_t mostLandings = 200;
    FlightLogged body;
    body.balloon = reader.name<Registration>("balloon");
    body.use.minutes = Minutes(reader.count("minutes", 1, longestFlight));
    body.use.landings = Landings(reader.optionalCount("landings", 0, mostLandings).value_or(1));
    body.use.inflations = Inflations(reader.optionalCount("inflations", 0, mostLandings).value_or(1));
    body.kit = reader.optionalNames<ItemId>("kit");
    body.maxCelsius = reader.optionalNumber("max_temp_c", -60, 400);
    body.tethered = reader.optionalBool("tethered");
    return body;
}

RequirementDone readDone(ObjectReader& reader) {
    return {reader.name<ItemId>("item"), reader.name<RequirementId>("requirement"), readStatedClock(reader),
            reader.optionalSlug("method"), reader.optionalText("ref")};
}

Bound readBound(ObjectReader& reader) {
    auto balloons = reader.optionalNames<Registration>("balloons");
    auto items = reader.optionalNames<ItemId>("items");
    const bool everything = reader.optionalBool("everything");
    if (reader.has("everything") && !everything)
        reader.refuse(Code::BadValue, "everything", "only true says something here", "leave the key out");
    if ((balloons ? 1 : 0) + (items ? 1 : 0) + (everything ? 1 : 0) != 1) {
        reader.refuse(Code::MissingKey, "balloons", "whom the programme binds is not said exactly once",
                      "give one of balloons [registration, …], items [id, …] or everything true");
        return BoundEverything{};
    }
    if (balloons)
        return BoundBalloons{std::move(*balloons)};
    if (items)
        return BoundItems{std::move(*items)};
    return BoundEverything{};
}

ProgrammeAdopted readAdopted(ObjectReader& reader) {
    ProgrammeAdopted body;
    body.programme = reader.name<ProgrammeId>("programme");
    body.bound = readBound(reader);
    body.document = reader.optionalObjectText("document");
    body.digest = reader.optionalText("digest");
    if (reader.has("digest") && !digestFromHex(body.digest))
        reader.refuse(Code::BadValue, "digest", "not a digest", "leave it out, it is computed from the document");
    return body;
}

EventReported readEvent(ObjectReader& reader) {
    EventReported body;
    body.event = reader.slug("event");
    const auto balloon = reader.optionalName<Registration>("balloon");
    const auto item = reader.optionalName<ItemId>("item");
    if (balloon.has_value() == item.has_value())
        reader.refuse(Code::MissingKey, "balloon", "an event concerns either a balloon or an item",
                      "give one of balloon and item");
    else if (item)
        body.subject = *item;
    else
        body.subject = *balloon;
    body.celsius = reader.optionalNumber("temp_c", -60, 400);
    if (const auto minutes = reader.optionalCount("minutes", 1, longestFlight))
        body.lasted = Minutes(*minutes);
    return body;
}

EntryCorrected readCorrected(ObjectReader& reader) {
    EntryCorrected body;
    body.replaces = reader.name<EntryId>("replaces");
    body.with = reader.objectText("with");
    if (!reader.good())
        return body;
    const auto patch = json::parse(body.with);
    if (patch.empty())
        reader.refuse(Code::BadValue, "with", "a correction that changes nothing", "name the keys to change");
    for (const auto* fixed : {"id", "entry", "replaces", "voids"})
        if (patch.contains(fixed))
            reader.refuse(Code::CannotAmend, std::string("with/") + fixed, "this key of an entry cannot change",
                          "void the entry and write a new one");
    return body;
}

EntryVoided readVoided(ObjectReader& reader) { return {reader.name<EntryId>("voids"), reader.saying("reason")}; }

Body readBody(ObjectReader& reader, std::string_view kind) {
    using Read = Body (*)(ObjectReader&);
    static const std::vector<Read> readers = {
        [](ObjectReader& r) -> Body { return readItemEntered(r); },
        [](ObjectReader& r) -> Body { return readBalloonEntered(r); },
        [](ObjectReader& r) -> Body { return readFitting<ItemFitted>(r); },
        [](ObjectReader& r) -> Body { return readFitting<ItemRemoved>(r); },
        [](ObjectReader& r) -> Body { return readFlight(r); },
        [](ObjectReader& r) -> Body { return readDone(r); },
        [](ObjectReader& r) -> Body { return readAdopted(r); },
        [](ObjectReader& r) -> Body { return readReading(r); },
        [](ObjectReader& r) -> Body { return readEvent(r); },
        [](ObjectReader& r) -> Body { return readCorrected(r); },
        [](ObjectReader& r) -> Body { return readVoided(r); },
        [](ObjectReader& r) -> Body { return readInspectionOpened(r); },
        [](ObjectReader& r) -> Body { return readLineSettled(r); },
        [](ObjectReader& r) -> Body { return readDefectFound(r); },
        [](ObjectReader& r) -> Body { return readDefectDeferred(r); },
        [](ObjectReader& r) -> Body { return readDefectCleared(r); },
        [](ObjectReader& r) -> Body { return readRepairMade(r); },
        [](ObjectReader& r) -> Body { return readPartReplaced(r); },
        [](ObjectReader& r) -> Body { return readInspectionClosed(r); },
        [](ObjectReader& r) -> Body { return readPersonEntitled(r); },
        [](ObjectReader& r) -> Body { return readTesterCalibrated(r); },
        [](ObjectReader& r) -> Body { return readTypeDescribed(r); },
        [](ObjectReader& r) -> Body { return readLimitStated(r); },
        [](ObjectReader& r) -> Body { return readChecklistAdopted(r); },
        [](ObjectReader& r) -> Body { return readFabricStated(r); },
    };
    const auto& names = kindNames();
    for (std::size_t i = 0; i < names.size(); ++i)
        if (names[i] == kind)
            return readers[i](reader);
    reader.refuse(Code::UnknownKind, "entry", "'" + std::string(kind) + "' is no kind of entry",
                  "see crownringctl post --help for the kinds");
    return {};
}

}

Result<Entry> entryFrom(const json& object) {
    if (!object.is_object())
        return problem(Code::BadJson, "an entry is one JSON object",
                       "write { \"entry\": …, \"on\": …, … } on one line");
    ObjectReader reader(object);
    Entry entry;
    const auto kind = reader.text("entry");
    entry.id = reader.optionalName<EntryId>("id").value_or(EntryId{});
    const auto on = reader.text("on");
    if (const auto date = CivilDate::parse(on))
        entry.on = *date;
    else
        reader.refuse("on", date.error());
    if (reader.has("time")) {
        if (const auto time = TimeOfDay::parse(reader.text("time")))
            entry.time = *time;
        else
            reader.refuse("time", time.error());
    }
    entry.by = reader.optionalText("by");
    entry.note = reader.optionalText("note");
    entry.body = readBody(reader, kind);
    if (reader.good())
        reader.refuseUnknownKeys(kind);
    if (const auto& problem = reader.problem())
        return tl::unexpected(*problem);
    return entry;
}

Result<Entry> entryFrom(std::string_view line) {
    return strictJson(line).and_then([](const json& object) { return entryFrom(object); });
}

Results<std::vector<NumberedEntry>> entriesFrom(std::string_view text, const std::string& file) {
    std::vector<NumberedEntry> entries;
    std::vector<Problem> problems;
    entries.reserve(static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n')) + 1);
    int number = 0;
    while (!text.empty()) {
        const auto end = text.find('\n');
        auto line = text.substr(0, end);
        text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
        ++number;
        if (number == 1 && line.starts_with("\xEF\xBB\xBF"))
            line.remove_prefix(3);
        if (line.find_first_not_of(" \t\r") == std::string_view::npos)
            continue;
        auto entry = entryFrom(line);
        if (entry) {
            entries.push_back({std::move(*entry), number});
        } else {
            auto problem = std::move(entry.error());
            problem.where.file = file;
            problem.where.line = number;
            problems.push_back(std::move(problem));
        }
    }
    if (!problems.empty())
        return tl::unexpected(std::move(problems));
    return entries;
}

}
