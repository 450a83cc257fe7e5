// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/entry_json.h"

#include "problem/faults/entry_fault.h"
#include "record/json/object_reader.h"
#include "record/json/strict_json.h"
#include "record/json/written.h"

#include <algorithm>

namespace crownring {

using nlohmann::json;

Result<Entry> entryFrom(const json& object) {
    if (!object.is_object())
        return problem(EntryFault::NotAnEntry);
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

json toJson(const Entry& entry) {
    json object = json::object();
    object["entry"] = kindName(entry.body);
    writeText(object, "id", entry.id.text());
    object["on"] = entry.on.iso();
    if (entry.time)
        object["time"] = entry.time->iso();
    writeText(object, "by", entry.by);
    writeText(object, "note", entry.note);
    writeBody(object, entry.body);
    return object;
}

std::string canonicalText(const Entry& entry) { return toJson(entry).dump(); }

Result<std::string> readableText(const Entry& entry) {
    std::string text;
    try {
        text = canonicalText(entry);
    } catch (const json::exception&) {
        return problem(EntryFault::NotUtf8);
    }
    const auto read = entryFrom(text);
    if (!read)
        return tl::unexpected(read.error());
    if (*read != entry)
        return problem(EntryFault::NotReadAgain);
    return text;
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
