// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/events/awaited_events.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/entry_fault.h"
#include "registry/known_events.h"
#include "text/near.h"

#include <algorithm>

namespace crownring {

Findings askEvents(const Batch& batch) {
    std::vector<Problem> problems;
    std::optional<std::set<std::string>> awaited;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<EventReported>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        if (!*now)
            continue;
        const auto& reported = std::get<EventReported>((*now)->body);
        const auto& event = reported.event;
        if (const auto* known = knownEvent(event)) {
            if (known->of && balloonOf(reported))
                problems.push_back(asAmended(
                    Problem{EntryFault::EventOfAnItem, {event, termOf(*known->of)}, {{}, line, "balloon"}}, entry));
            continue;
        }
        if (!awaited) {
            auto asked = awaitedEvents(batch.books);
            if (!asked)
                return tl::unexpected(atLine(asked.error(), line));
            awaited = std::move(*asked);
        }
        if (awaited->contains(event))
            continue;
        const auto near =
            std::ranges::find_if(*awaited, [&](const std::string& each) { return isNearly(event, each); });
        if (near != awaited->end())
            problems.push_back(
                asAmended(Problem{EntryFault::NearlyAnEventKnown, {event, *near}, {{}, line, "event"}}, entry));
    }
    return problems;
}

}
