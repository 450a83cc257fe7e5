// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/events/awaited_events.h"

#include "answers/due.h"
#include "registry/known_events.h"
#include "rules/programme/programme.h"

#include <algorithm>

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

namespace {

/// Whether something that was ever adopted is triggered by it on what it happened to.
Result<bool> isAwaitedOn(Books& books, const EventReported& event, CivilDate on) {
    const auto adopted = books.adoptions(CivilDate::last());
    if (!adopted)
        return tl::unexpected(adopted.error());
    for (const auto& each : *adopted)
        on = std::max(on, each.stamp.at.on());
    Scope scope;
    if (const auto* item = itemOf(event))
        scope = {std::nullopt, {*item}, true};
    else
        scope.balloon = *balloonOf(event);
    const auto list = due(books, scope, on, Outside::AsInService);
    if (!list)
        return tl::unexpected(list.error());
    return std::ranges::any_of(list->rows, [&](const DueRow& row) {
        return std::ranges::find(row.requirement->triggeredBy, event.event) != row.requirement->triggeredBy.end();
    });
}

std::string subjectOf(const EventReported& event) {
    return itemOf(event) ? itemOf(event)->text() : balloonOf(event)->text();
}

}

Result<std::vector<UnawaitedEvent>> unawaitedEvents(Books& books, std::span<const NumberedEntry> entries) {
    std::vector<UnawaitedEvent> unawaited;
    std::optional<std::set<std::string>> awaited;
    std::size_t asked = 0;
    for (const auto& [entry, line] : entries) {
        const auto* reported = std::get_if<EventReported>(&entry.body);
        if (!reported)
            continue;
        if (!awaited) {
            auto names = awaitedEvents(books);
            if (!names)
                return tl::unexpected(names.error());
            awaited = std::move(*names);
        }
        if (!awaited->contains(reported->event)) {
            unawaited.push_back({reported->event, line});
            continue;
        }
        if (++asked > mostAsked)
            continue;
        const auto isAwaited = isAwaitedOn(books, *reported, entry.on);
        if (!isAwaited)
            return tl::unexpected(isAwaited.error());
        if (!*isAwaited)
            unawaited.push_back({reported->event, line, subjectOf(*reported)});
    }
    return unawaited;
}

}
