// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/call.h"
#include "ctl/calls.h"
#include "record/entry_json.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace crownring::ctl {

int run(const JournalOptions& options, const Common& common) {
    const auto record = open(common);
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
    auto rows = nlohmann::ordered_json::array();
    for (const auto& line : *lines) {
        if (!options.json) {
            std::cout << line.number
                      << (line.voided    ? " voided "
                          : line.current ? " corrected "
                                         : " ")
                      << canonicalText(line.entry) << "\n";
            continue;
        }
        nlohmann::ordered_json row{
            {"number", line.number},          {"entry", nlohmann::ordered_json(toJson(line.entry))},
            {"voided", line.voided},          {"writer", line.writer.text()},
            {"recorded_at", line.recordedAt}, {"hash", hex(line.hash)}};
        if (line.current)
            row["current"] = nlohmann::ordered_json(toJson(*line.current));
        rows.push_back(std::move(row));
    }
    if (options.json)
        print({{"lines", rows}});
    return Done;
}

}
