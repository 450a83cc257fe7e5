// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/plan/stations.h"

#include "problem/faults/use_fault.h"
#include "rules/programme/document_schema.h"

#include <algorithm>

namespace crownring::embedded {

const std::vector<std::pair<std::string_view, std::string_view>>& planSchemaData();

}

namespace crownring {

namespace {

using nlohmann::json;

constexpr DocumentFaults planFileFaults{UseFault::PlanFileTooDeep,       UseFault::PlanFileNotAnObject,
                                        UseFault::PlanFileKeyTwice,      UseFault::PlanFileValueNotAllowed,
                                        UseFault::PlanFileKeyMissing,    UseFault::PlanFileKeyNotAllowed,
                                        UseFault::PlanFileNotOfThisKind, UseFault::PlanFileCannotBeChecked};

DocumentSchema made(std::string_view kind) {
    std::string_view schema;
    for (const auto& [file, text] : embedded::planSchemaData())
        if (file.starts_with(kind))
            schema = text;
    return {std::string(kind), schema, planFileFaults};
}

Result<json> documentOf(std::string_view text, const DocumentSchema& schema) {
    auto document = schema.read(text);
    if (!document)
        return document;
    if (auto breach = schema.breachIn(*document))
        return tl::unexpected(std::move(*breach));
    return document;
}

Result<CivilDate> dayAt(const json& value, const std::string& place) {
    auto day = CivilDate::parse(value.get<std::string>());
    if (!day) {
        day.error().where = atKey(place);
        return day;
    }
    return day;
}

Result<DaysBetween> daysAt(const json& value, const std::string& place) {
    const auto from = dayAt(value.at("from"), place + "/from");
    if (!from)
        return tl::unexpected(from.error());
    const auto to = dayAt(value.at("to"), place + "/to");
    if (!to)
        return tl::unexpected(to.error());
    if (*to < *from)
        return problem(UseFault::DaysTurnedRound, {*from, *to}, atKey(place + "/to"));
    return DaysBetween{*from, *to};
}

template <class Name>
std::vector<Name> namesAt(const json& value, const char* key) {
    std::vector<Name> names;
    if (value.contains(key))
        for (const auto& name : value.at(key))
            names.emplace_back(name.get<std::string>());
    return names;
}

Result<Station> stationAt(const json& value, const std::string& place) {
    Station station{value.at("station").get<std::string>(),
                    value.at("visit").get<double>(),
                    value.value("transport", 0.0),
                    value.at("at_once").get<int>(),
                    {},
                    namesAt<RequirementId>(value, "does")};
    if (!value.contains("open"))
        return station;
    station.open.emplace();
    for (std::size_t nth = 0; nth < value.at("open").size(); ++nth) {
        const auto days = daysAt(value.at("open")[nth], place + "/open/" + std::to_string(nth));
        if (!days)
            return tl::unexpected(days.error());
        station.open->push_back(*days);
    }
    return station;
}

}

bool Station::isOpen(CivilDate first, CivilDate last) const {
    return !open || std::ranges::any_of(*open, [&](const auto& days) { return days.holds(first, last); });
}

bool Station::carriesOut(const RequirementId& requirement) const {
    return does.empty() || std::ranges::find(does, requirement) != does.end();
}

bool Stations::isFlying(const Registration& balloon, CivilDate first, CivilDate last) const {
    return std::ranges::any_of(flying, [&](const KeptFree& kept) {
        return kept.days.touches(first, last) &&
               (kept.balloons.empty() || std::ranges::find(kept.balloons, balloon) != kept.balloons.end());
    });
}

double Stations::costOf(const RequirementId& requirement, ItemKind kind) const {
    for (const auto& each : work)
        if (each.requirement == requirement && each.kind == kind)
            return each.cost;
    for (const auto& each : work)
        if (each.requirement == requirement && !each.kind)
            return each.cost;
    return otherWork;
}

std::optional<std::size_t> Stations::find(std::string_view name) const {
    const auto found = std::ranges::find(stations, name, &Station::name);
    return found == stations.end() ? std::nullopt : std::optional<std::size_t>(found - stations.begin());
}

Result<Stations> stationsFrom(std::string_view text) {
    static const auto schema = made("stations");
    const auto document = documentOf(text, schema);
    if (!document)
        return tl::unexpected(document.error());
    Stations stations;
    stations.dryingDays = document->value("drying_days", 0);
    stations.otherWork = document->value("other_work", stations.otherWork);
    const auto& listed = document->at("stations");
    for (std::size_t nth = 0; nth < listed.size(); ++nth) {
        const auto place = "/stations/" + std::to_string(nth);
        auto station = stationAt(listed[nth], place);
        if (!station)
            return tl::unexpected(station.error());
        if (stations.find(station->name))
            return problem(UseFault::StationTwice, {station->name}, atKey(place + "/station"));
        stations.stations.push_back(std::move(*station));
    }
    if (document->contains("flying"))
        for (std::size_t nth = 0; nth < document->at("flying").size(); ++nth) {
            const auto& kept = document->at("flying")[nth];
            const auto days = daysAt(kept, "/flying/" + std::to_string(nth));
            if (!days)
                return tl::unexpected(days.error());
            stations.flying.push_back({*days, namesAt<Registration>(kept, "balloons")});
        }
    if (document->contains("work"))
        for (const auto& each : document->at("work"))
            stations.work.push_back(
                {RequirementId(each.at("requirement").get<std::string>()),
                 each.contains("kind") ? itemKindFrom(each.at("kind").get<std::string>()) : std::nullopt,
                 each.at("cost").get<double>()});
    return stations;
}

Result<std::vector<VisitPin>> pinsFrom(std::string_view text) {
    static const auto schema = made("pins");
    const auto document = documentOf(text, schema);
    if (!document)
        return tl::unexpected(document.error());
    std::vector<VisitPin> pins;
    const auto& listed = document->at("pins");
    for (std::size_t nth = 0; nth < listed.size(); ++nth) {
        const auto& each = listed[nth];
        const auto place = "/pins/" + std::to_string(nth);
        const auto day = dayAt(each.at("week"), place + "/week");
        if (!day)
            return tl::unexpected(day.error());
        pins.push_back({Registration(each.at("balloon").get<std::string>()), *day,
                        each.contains("station") ? std::optional(each.at("station").get<std::string>()) : std::nullopt,
                        each.value("forbid", false), place});
    }
    return pins;
}

}
