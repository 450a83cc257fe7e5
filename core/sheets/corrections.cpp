// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/quantity.h"
#include "record/entry_json.h"
#include "sheets/sheet_parts.h"

#include <nlohmann/json.hpp>

#include <set>

namespace crownring {

namespace {

using nlohmann::json;

/// A text without its quotes; nothing where the key is not there.
std::string written(const json& entry, const std::string& key, const Speech& in) {
    const auto found = entry.find(key);
    if (found == entry.end())
        return in.say(SheetPhrase::Nothing);
    if (key == "quantity" && found->is_string())
        return in.say(quantityTerm(found->get<std::string>()));
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
void compare(paper::Table& table, const Said<What>& said, const Speech& in) {
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
        table.rows.push_back({said.id.text(), std::string(kindName(said.first->body)), key, written(first, key, in),
                              written(now, key, in)});
}

template <class What>
void compare(paper::Table& table, const std::vector<Said<What>>& all, const Speech& in) {
    for (const auto& said : all)
        compare(table, said, in);
}

}

paper::Table correctionsTable(const BenchFile& file, const Speech& in) {
    using paper::Align;
    paper::Table table;
    table.columns = {{in.say(SheetPhrase::Entry), Align::Left, 1.8},
                     {in.say(SheetPhrase::Kind), Align::Left, 1.3},
                     {in.say(SheetPhrase::What), Align::Left, 1},
                     {in.say(SheetPhrase::FirstWritten), Align::Left, 2.4},
                     {in.say(SheetPhrase::SaysNow), Align::Left, 2.4}};
    const auto& inspection = file.inspection;
    compare(table, inspection.opened, in);
    compare(table, inspection.lines, in);
    compare(table, inspection.readings, in);
    compare(table, inspection.found, in);
    compare(table, inspection.deferred, in);
    compare(table, inspection.cleared, in);
    compare(table, inspection.repairs, in);
    compare(table, inspection.parts, in);
    if (inspection.closed)
        compare(table, *inspection.closed, in);
    return table;
}

}
