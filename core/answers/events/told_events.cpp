// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/events/told_events.h"

#include "registry/known_events.h"

#include <algorithm>
#include <functional>
#include <map>

namespace crownring {

namespace {

/// The entry as it stands; nothing where it is voided or cannot be read.
Result<std::optional<Entry>> standing(Journal& journal, const EntryId& id) {
    const auto line = journal.line(id);
    if (!line)
        return tl::unexpected(line.error());
    if (!*line || (*line)->voided || (*line)->unread || !std::holds_alternative<EventReported>(nowOf(**line).body))
        return std::optional<Entry>();
    return std::optional(nowOf(**line));
}

Result<std::vector<Entry>> reportsOf(Books& books, const Entry& event, CivilDate on) {
    const auto& subject = std::get<EventReported>(event.body).subject;
    const auto told = std::visit(
        [&](const auto& name) {
            return books.told({subjectOf(name), name.text(), {kindName<EventNotified>()}, on});
        },
        subject);
    if (!told)
        return tl::unexpected(told.error());
    std::vector<Entry> reports;
    for (const auto& line : *told)
        if (const auto* said = line.voided ? nullptr : std::get_if<EventNotified>(&nowOf(line).body);
            said && said->event == event.id)
            reports.push_back(nowOf(line));
    return reports;
}

}

namespace {

/// What was done of a row since an event that made it due.
const Accomplishment* answerTo(const DueRow& row, const Occurrence& event) {
    const auto& asked = *row.requirement;
    const auto serves = [&](const Accomplishment& done) {
        return event.stamp < done.stamp &&
               (done.requirement == asked.id ||
                std::ranges::find(asked.satisfiedBy, done.requirement) != asked.satisfiedBy.end());
    };
    if (std::ranges::find(asked.triggeredBy, event.event) == asked.triggeredBy.end())
        return nullptr;
    const auto done = std::ranges::find_if(row.item->done, serves);
    return done == row.item->done.end() ? nullptr : &*done;
}

std::vector<AnsweredRow> answersTo(const std::vector<const DueRow*>& rows, const Stamp& stamp) {
    std::vector<AnsweredRow> answered;
    for (const auto* row : rows) {
        const auto event = std::ranges::find(row->item->events, stamp, &Occurrence::stamp);
        const auto* by = event == row->item->events.end() ? nullptr : answerTo(*row, *event);
        if (by)
            answered.push_back({row, by});
    }
    return answered;
}

}

bool ToldEvent::isTold(Informed to) const {
    return std::ranges::any_of(reports, [&](const Entry& each) { return std::get<EventNotified>(each.body).to == to; });
}

Result<std::vector<ToldEvent>> toldEvents(Books& books, Journal& journal, const std::vector<const ItemFacts*>& items,
                                          const std::vector<const DueRow*>& rows, CivilDate since, CivilDate on) {
    std::map<Stamp, std::vector<const DueRow*>, std::greater<>> made; // the latest first
    for (const auto* item : items)
        for (const auto& event : item->events)
            if (event.stamp.at.on() >= since)
                made[event.stamp];
    for (const auto* row : rows)
        if (row->state.trigger)
            made[row->state.trigger->stamp].push_back(row);
    std::vector<ToldEvent> events;
    for (auto& [stamp, open] : made) {
        auto entry = standing(journal, stamp.id);
        if (!entry)
            return tl::unexpected(entry.error());
        if (!*entry)
            continue;
        auto reports = reportsOf(books, **entry, on);
        if (!reports)
            return tl::unexpected(reports.error());
        const auto* known = knownEvent(std::get<EventReported>((*entry)->body).event);
        std::optional<Moment> until;
        if (known && known->mayBeReported &&
            Days(std::int64_t{on.dayNumber()} - stamp.at.on().dayNumber()) <= Days(daysOfReporting))
            until = Moment(stamp.at.minutes() + std::int64_t{hoursToReport} * 60);
        events.push_back({std::move(**entry), std::move(open), answersTo(rows, stamp), until, std::move(*reports)});
    }
    return events;
}

}
