// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/forecast/station_letter.h"

#include "problem/faults/use_fault.h"
#include "record/json/strict_json.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <initializer_list>

namespace crownring {

namespace {

using Json = nlohmann::ordered_json;

constexpr std::string_view form = "letter/1"; ///< of the file

Json figuresOf(const Figures& clock) {
    const auto orNull = [](const auto& figure) { return figure ? Json(figure->value()) : Json(); };
    return {{"minutes", orNull(clock.minutes)},
            {"landings", orNull(clock.landings)},
            {"inflations", orNull(clock.inflations)}};
}

Problem wrongAt(const std::string& key) {
    Problem problem{UseFault::NotALetter};
    problem.where = atKey(key);
    return problem;
}

/// Nothing but these keys.
bool hasOnly(const nlohmann::json& object, std::initializer_list<std::string_view> keys) {
    if (!object.is_object())
        return false;
    return std::ranges::all_of(object.items(),
                               [&](const auto& each) { return std::ranges::count(keys, each.key()) > 0; });
}

std::optional<std::string> nameIn(const nlohmann::json& object, const char* key) {
    const auto found = object.find(key);
    if (found == object.end() || !found->is_string())
        return std::nullopt;
    auto name = found->get<std::string>();
    return isUsableName(name) ? std::optional(std::move(name)) : std::nullopt;
}

Result<void> readOwner(Books& books, StationLetter& letter) {
    const auto told =
        books.told({Subject::Balloon, letter.planned.balloon.text(), {kindName<BalloonOwned>()}, letter.on});
    if (!told)
        return tl::unexpected(told.error());
    for (const auto& line : *told)
        if (const auto* owned = std::get_if<BalloonOwned>(&nowOf(line).body)) {
            letter.owner = owned->owner;
            letter.operatedBy = owned->operatedBy;
        }
    return {};
}

}

Result<StationLetter> letterOf(Books& books, const EntryId& visit, CivilDate on, CivilDate known) {
    auto planned = plannedFrom(books, on, known);
    if (!planned)
        return tl::unexpected(planned.error());
    const auto found = std::ranges::find(planned->visits, visit, [](const VisitAhead& each) { return each.stated.id; });
    if (found == planned->visits.end())
        return problem(UseFault::NoVisitPlanned, {visit});
    const auto told = visitsTold(books, {*found}, on, known);
    if (!told)
        return tl::unexpected(told.error());
    StationLetter letter{visit, found->visit, on, {}, {}, {}, {}};
    if (const auto read = readOwner(books, letter); !read)
        return tl::unexpected(read.error());
    for (const auto& item : told->due.items)
        letter.items.push_back({item.id, item.kind, item.serial, item.type, item.clock});
    std::ranges::sort(letter.items, {}, [](const LetterItem& each) { return std::pair(each.kind, each.item); });
    for (const auto& work : told->outlooks.front().covers)
        letter.works.push_back({work.work, work.row ? work.row->requirement->title : Argument(work.work.requirement),
                                work.row ? work.row->requirement->source : Argument(std::string()), work.band});
    return letter;
}

std::string letterText(const StationLetter& letter) {
    Json json{{"crownring", form},
              {"visit", letter.visit.text()},
              {"written", letter.on.iso()},
              {"balloon", letter.planned.balloon.text()},
              {"station", letter.planned.station},
              {"from", letter.planned.from.iso()},
              {"to", letter.planned.to.iso()},
              {"items", Json::array()},
              {"work", Json::array()}};
    for (const auto& item : letter.items)
        json["items"].push_back({{"item", item.item.text()},
                                 {"kind", itemKindName(item.kind)},
                                 {"serial", item.serial ? Json(*item.serial) : Json()},
                                 {"type", item.type ? Json(*item.type) : Json()},
                                 {"clock", figuresOf(item.clock)}});
    for (const auto& work : letter.works)
        json["work"].push_back({{"item", work.work.item.text()}, {"requirement", work.work.requirement.text()}});
    return json.dump(2) + "\n";
}

Result<LetterRead> letterFrom(std::string_view text) {
    const auto json = strictJson(text);
    if (!json)
        return tl::unexpected(json.error());
    if (!hasOnly(*json, {"crownring", "visit", "written", "balloon", "station", "from", "to", "items", "work"}) ||
        json->value("crownring", nlohmann::json()) != form)
        return tl::unexpected(wrongAt("crownring"));
    const auto visit = nameIn(*json, "visit");
    const auto balloon = nameIn(*json, "balloon");
    if (!visit || !balloon)
        return tl::unexpected(wrongAt(visit ? "balloon" : "visit"));
    LetterRead read{EntryId(*visit), Registration(*balloon), {}, {}};
    for (const auto* list : {"items", "work"})
        if (!json->contains(list) || !json->at(list).is_array())
            return tl::unexpected(wrongAt(list));
    for (const auto& each : json->at("items")) {
        const auto item =
            hasOnly(each, {"item", "kind", "serial", "type", "clock"}) ? nameIn(each, "item") : std::nullopt;
        if (!item)
            return tl::unexpected(wrongAt("items"));
        read.items.emplace_back(*item);
    }
    for (const auto& each : json->at("work")) {
        const bool isWork = hasOnly(each, {"item", "requirement"});
        const auto item = isWork ? nameIn(each, "item") : std::nullopt;
        const auto requirement = isWork ? nameIn(each, "requirement") : std::nullopt;
        if (!item || !requirement)
            return tl::unexpected(wrongAt("work"));
        read.works.push_back({ItemId(*item), RequirementId(*requirement)});
    }
    return read;
}

}
