// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/checklist/checklist.h"

#include <nlohmann/json.hpp>

namespace crownring {

namespace {

using nlohmann::json;

json textOf(const AskedReading& reading) {
    json object = {{"quantity", reading.quantity}};
    if (reading.required)
        object["required"] = true;
    if (reading.placed)
        object["placed"] = true;
    return object;
}

template <class List, class Written>
void put(json& object, const char* key, const List& list, Written written) {
    if (list.empty())
        return;
    auto& array = object[key] = json::array();
    for (const auto& each : list)
        array.push_back(written(each));
}

json textOf(const ChecklistLine& line) {
    json object = {{"id", line.id}, {"section", line.section}, {"title", line.title}, {"look_for", line.lookFor}};
    object["kinds"] = json::array();
    put(object, "kinds", line.kinds, [](ItemKind kind) { return json(itemKindName(kind)); });
    for (const auto& [regime, source] : line.sources)
        object["sources"][std::string(regimeName(regime))] = source;
    put(object, "visits", line.visits, [](Visit visit) { return json(visitName(visit)); });
    put(object, "only_with", line.onlyWith, [](const RequirementId& requirement) { return json(requirement.text()); });
    put(object, "serves", line.serves, [](const RequirementId& requirement) { return json(requirement.text()); });
    put(object, "after", line.after, [](const std::string& event) { return json(event); });
    put(object, "readings", line.readings, [](const AskedReading& reading) { return textOf(reading); });
    if (line.photograph)
        object["photograph"] = true;
    if (line.tester)
        object["tester"] = true;
    if (!line.ownerRule.empty())
        object["owner_rule"] = line.ownerRule;
    if (line.ownerWork) {
        auto& work = object["owner_work"] = json::array();
        if (line.ownerWork->repair)
            work.push_back("repair");
        if (line.ownerWork->part)
            work.push_back("part");
    }
    if (!line.required)
        object["required"] = false;
    if (line.ownLook)
        object["own_look"] = true;
    if (!line.asks.empty())
        object["asks"] = line.asks;
    return object;
}

}

std::string checklistText(const Checklist& checklist) {
    json document = {{"checklist", checklist.id},  {"revision", checklist.revision}, {"title", checklist.title},
                     {"source", checklist.source}, {"sections", json::array()},      {"lines", json::array()}};
    if (!checklist.note.empty())
        document["note"] = checklist.note;
    for (const auto& section : checklist.sections)
        document["sections"].push_back({{"id", section.id}, {"title", section.title}});
    for (const auto& line : checklist.lines)
        document["lines"].push_back(textOf(line));
    return document.dump();
}

}
