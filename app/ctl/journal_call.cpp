// SPDX-License-Identifier: GPL-3.0-or-later
#include "ctl/call.h"
#include "record/entry_json.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace crownring::ctl {

namespace {

struct JournalOptions {
    std::string text;
    std::string kind;
    int most = 100;
    bool json = false;
};

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

void addJournal(CLI::App& app, Common& common, Chosen& chosen) {
    auto* call = app.add_subcommand("journal", "The entries as they came in, latest first");
    auto options = std::make_shared<JournalOptions>();
    call->add_option("--text", options->text, "Only entries that hold all these words")->type_name("WORDS");
    call->add_option("--kind", options->kind, "Only entries of this kind")->type_name("KIND");
    call->add_option("--most", options->most, "At most so many (default: 100)")->check(CLI::Range(1, 1'000'000));
    call->add_flag("--json", options->json, "Answer as JSON");
    call->callback([=, &common, &chosen] { chosen = [=, &common] { return run(*options, common); }; });
}

}
