// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/entry_json.h"
#include "sheets/sheet_parts.h"

#include <nlohmann/json.hpp>

#include <set>

namespace crownring {

namespace {

using nlohmann::json;

/// A text without its quotes; nothing where the key is not there.
std::string words(const json& entry, const std::string& key) {
    const auto found = entry.find(key);
    if (found == entry.end())
        return "nothing";
    return found->is_string() ? found->get<std::string>() : found->dump();
}

template <class What>
json nowOf(const Said<What>& said) {
    Entry entry;
    entry.id = said.id;
    entry.on = said.stamp.at.on();
    const auto minute = static_cast<int>(said.stamp.at.minutes() - Moment::startOf(entry.on).minutes());
    if (const TimeOfDay time(minute / 60, minute % 60); said.first->time || time != defaultTime(said.body))
        entry.time = time;
    entry.by = said.by;
    entry.note = said.note;
    entry.body = said.body;
    return toJson(entry);
}

template <class What>
void compare(paper::Table& table, const Said<What>& said) {
    if (!said.first)
        return;
    const json first = toJson(*said.first);
    const json now = nowOf(said);
    std::set<std::string> keys;
    for (const auto& each : {first, now})
        for (const auto& [key, value] : each.items())
            if (!first.contains(key) || !now.contains(key) || first[key] != now[key])
                keys.insert(key);
    for (const auto& key : keys)
        table.rows.push_back(
            {said.id.text(), std::string(kindName(said.first->body)), key, words(first, key), words(now, key)});
}

template <class What>
void compare(paper::Table& table, const std::vector<Said<What>>& all) {
    for (const auto& said : all)
        compare(table, said);
}

}

paper::Table correctionsTable(const BenchFile& file) {
    using paper::Align;
    paper::Table table;
    table.columns = {{"Entry", Align::Left, 1.8},
                     {"Kind", Align::Left, 1.3},
                     {"What", Align::Left, 1},
                     {"First written", Align::Left, 2.4},
                     {"Says now", Align::Left, 2.4}};
    const auto& inspection = file.inspection;
    compare(table, inspection.opened);
    compare(table, inspection.lines);
    compare(table, inspection.readings);
    compare(table, inspection.found);
    compare(table, inspection.deferred);
    compare(table, inspection.cleared);
    compare(table, inspection.repairs);
    compare(table, inspection.parts);
    if (inspection.closed)
        compare(table, *inspection.closed);
    return table;
}

}
