// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/post.h"
#include "answers/events/awaited_events.h"
#include "ctl/call.h"
#include "ctl/calls.h"
#include "text/shown.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace crownring::ctl {

namespace {

/// Some seven million flights at once.
constexpr std::size_t largestBatch = std::size_t{1024} * 1024 * 1024;

std::string noteOn(const UnawaitedEvent& event) {
    const auto line = "line " + std::to_string(event.line);
    if (!event.of.empty())
        return line + ": no requirement that is adopted for " + event.of + " waits for the event '" + event.event +
               "': it is kept, and makes nothing due; the manufacturer's instructions decide what has to be done";
    return line + ": nothing waits for the event '" + event.event + "': it is kept, and makes nothing due";
}

/// What was posted and follows from nothing: said, since nobody would miss it.
Results<nlohmann::ordered_json> notesOn(Record& record, const std::vector<NumberedEntry>& entries) {
    const auto unawaited = unawaitedEvents(record, entries);
    if (!unawaited)
        return tl::unexpected(std::vector{unawaited.error()});
    auto notes = nlohmann::ordered_json::array();
    for (const auto& each : *unawaited) {
        notes.push_back({{"line", each.line}, {"event", each.event}, {"text", noteOn(each)}});
        std::cerr << shownOnOneLine("Note: " + noteOn(each)) << "\n";
    }
    return notes;
}

}

int run(const PostOptions& options, const Common& common) {
    const auto content = contentOf(options.file, largestBatch);
    if (!content)
        return refuse(content.error());
    const auto file = options.file == "-" ? std::string("standard input") : options.file;
    const auto entries = entriesFrom(*content, file);
    if (!entries)
        return refuse(entries.error());
    return write(common, [&](Record& record) {
        return post(record, record, *entries, file).and_then([&](const Receipt& receipt) -> Results<std::string> {
            nlohmann::ordered_json answer{{"posted", receipt.ids.size()}};
            if (const auto& end = receipt.end) {
                answer["writer"] = end->writer.text();
                answer["sequence"] = end->sequence;
                answer["hash"] = hex(end->hash);
            }
            return notesOn(record, *entries).map([&](const nlohmann::ordered_json& notes) {
                if (!notes.empty())
                    answer["notes"] = notes;
                return escapedJson(answer.dump());
            });
        });
    });
}

}
