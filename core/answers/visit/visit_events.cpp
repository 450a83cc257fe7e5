// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/visit/visit_events.h"

#include "answers/due.h"

#include <algorithm>
#include <map>

namespace crownring {

namespace {

/// The events after which a piece of work is due: by its rule, and by the lines of the list that are there for it.
std::vector<std::string> eventsBefore(const BenchFile& file, const Work& work, const ItemFacts& item,
                                      const Requirement* rule) {
    auto events = rule ? rule->triggeredBy : std::vector<std::string>();
    for (const auto& line : file.inspection.checklist.lines)
        if (line.isFor(work.requirement) && std::ranges::find(line.kinds, item.kind) != line.kinds.end())
            events.insert(events.end(), line.after.begin(), line.after.end());
    return events;
}

/// When it was done last before the visit.
const Stamp* doneBefore(const BenchFile& file, const Work& work, const ItemFacts& item) {
    const Stamp* last = nullptr;
    for (const auto& done : item.done)
        if (done.requirement == work.requirement && done.stamp < file.inspection.opened.stamp)
            last = &done.stamp;
    return last;
}

}

Result<void> readVisitEvents(Books& books, BenchFile& file) {
    const auto obligations = obligationsOn(books, file.on);
    if (!obligations)
        return tl::unexpected(obligations.error());
    const auto& closed = file.inspection.closed;
    const auto& stated = file.inspection.opened.body.work;
    std::map<Stamp, VisitEvent> events;
    for (const auto& work : stated.empty() ? file.owed : stated) {
        const auto* item = file.item(work.item);
        if (!item)
            continue;
        const auto names =
            eventsBefore(file, work, *item, obligations->of(item->id, item->balloon).find(work.requirement));
        const auto* done = doneBefore(file, work, *item);
        for (const auto& event : item->events)
            if (std::ranges::find(names, event.event) != names.end() && (!done || *done < event.stamp) &&
                (!closed || event.stamp < closed->stamp)) {
                auto& told = events[event.stamp];
                told.event = event;
                told.madeDue.push_back(work);
            }
    }
    for (auto& [stamp, event] : events)
        file.events.push_back(std::move(event));
    return {};
}

}
