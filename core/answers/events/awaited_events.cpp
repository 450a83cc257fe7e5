// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/events/awaited_events.h"

#include "registry/known_events.h"
#include "rules/programme/programme.h"

namespace crownring {

Result<std::set<std::string>> awaitedEvents(Books& books) {
    const auto adopted = books.adoptions(CivilDate::last());
    if (!adopted)
        return tl::unexpected(adopted.error());
    std::set<std::string> events;
    for (const auto& each : knownEvents)
        events.emplace(each.name);
    std::set<std::string> read;
    for (const auto& each : *adopted)
        if (read.insert(each.digest).second)
            if (const auto programme = programmeFrom(*each.document))
                for (const auto& requirement : programme->requirements)
                    events.insert(requirement.triggeredBy.begin(), requirement.triggeredBy.end());
    return events;
}

Result<std::vector<UnawaitedEvent>> unawaitedEvents(Books& books, std::span<const NumberedEntry> entries) {
    std::vector<UnawaitedEvent> unawaited;
    std::optional<std::set<std::string>> awaited;
    for (const auto& [entry, line] : entries) {
        const auto* reported = std::get_if<EventReported>(&entry.body);
        if (!reported)
            continue;
        if (!awaited) {
            auto asked = awaitedEvents(books);
            if (!asked)
                return tl::unexpected(asked.error());
            awaited = std::move(*asked);
        }
        if (!awaited->contains(reported->event))
            unawaited.push_back({reported->event, line});
    }
    return unawaited;
}

}
