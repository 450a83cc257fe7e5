// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/call.h"
#include "ctl/calls.h"
#include "record/chain/recorded.h"
#include "record/entry_json.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace crownring::ctl {

namespace {

/// "17692  2026-11-21 08:16Z  Defect on …, insp. 14": what it says now.
void printLine(const JournalLine& line, const words::Titles& titles) {
    const auto& entry = nowOf(line);
    std::cout << line.number << "  " << entry.on.iso() << (entry.time ? " " + entry.time->iso() : "") << "  "
              << (line.voided    ? "VOIDED: "
                  : line.current ? "corrected: "
                                 : "")
              << plainly(words::Sentences::of(line, titles));
    if (line.unread)
        std::cout << "; there stands: " << line.unread->text;
    if (!entry.by.empty())
        std::cout << ", by " << entry.by;
    if (!entry.note.empty())
        std::cout << "; " << entry.note;
    std::cout << "\n";
}

/// What cannot be read as an entry is shown as it stands: as JSON where it is some, else as text.
nlohmann::ordered_json entryJson(const JournalLine& line) {
    if (!line.unread)
        return toJson(line.entry);
    auto standing = nlohmann::ordered_json::parse(line.unread->text, nullptr, false);
    return standing.is_discarded() ? nlohmann::ordered_json(line.unread->text) : standing;
}

}

int run(const JournalOptions& options, const Common& common) {
    const auto record = openToAsk(common);
    if (!record)
        return BadInput;
    JournalQuery query;
    query.text = options.text;
    if (!options.kind.empty())
        query.kind = options.kind;
    query.limit = options.most;
    const auto lines = record->lines(query);
    if (!lines)
        return refuse(lines.error());
    if (!options.json) {
        const auto titles = titlesIn(*record);
        for (const auto& line : *lines)
            printLine(line, titles);
        return Done;
    }
    auto rows = nlohmann::ordered_json::array();
    for (const auto& line : *lines) {
        const auto recorded = recordedFrom(line.recordedAt);
        nlohmann::ordered_json row{{"number", line.number},      {"entry", entryJson(line)},
                                   {"voided", line.voided},      {"writer", line.writer.text()},
                                   {"recorded_at", recorded.at}, {"hash", hex(line.hash)}};
        if (!recorded.clockSaid.empty())
            row["clock_said"] = recorded.clockSaid;
        if (line.unread)
            row["unreadable"] = text(line.unread->why);
        if (line.current)
            row["current"] = nlohmann::ordered_json(toJson(*line.current));
        rows.push_back(std::move(row));
    }
    print({{"lines", rows}});
    return Done;
}

}
