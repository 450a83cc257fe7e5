// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/defects/deciding.h"
#include "gate/refusing.h"
#include "registry/stays.h"

#include <algorithm>
#include <iterator>

namespace crownring {

namespace {

/// What was reported of a balloon in these days.
Result<std::vector<Entry>> eventsOn(Books& books, const Registration& balloon, CivilDate first, CivilDate last) {
    constexpr int many = 20'000;
    const auto lines = books.history(balloon, std::nullopt, last, many);
    if (!lines)
        return tl::unexpected(lines.error());
    std::vector<Entry> events;
    for (const auto& line : *lines) {
        const auto& now = nowOf(line);
        if (now.on < first)
            break;
        const auto* event = std::get_if<EventReported>(&now.body);
        if (const auto* on = event ? balloonOf(*event) : nullptr; on && *on == balloon)
            events.push_back(now);
    }
    return events;
}

/// An event that fell on an item before an amendment of where that was.
struct Fell {
    ItemId item;
    Entry event;
};

std::optional<FittingMark> markOf(const Entry& entry, const ItemId& item) {
    if (const auto* fitted = std::get_if<ItemFitted>(&entry.body); fitted && fitted->item == item)
        return FittingMark{stampOf(entry), true, fitted->balloon, fitted->place, fitted->to};
    if (const auto* removed = std::get_if<ItemRemoved>(&entry.body); removed && removed->item == item)
        return FittingMark{stampOf(entry), false, removed->balloon, {}, removed->from};
    return std::nullopt;
}

/// By the fittings of an item as they were before one of them was amended.
Result<std::vector<Fell>> fellWhileFitted(const Batch& batch, const Entry& was, const ItemId& item) {
    constexpr int many = 20'000;
    const auto told = batch.books.history(std::nullopt, item, CivilDate::last(), many);
    const auto renamings = batch.books.renamings(CivilDate::last());
    if (!told || !renamings)
        return tl::unexpected(!told ? told.error() : renamings.error());
    std::vector<FittingMark> marks;
    for (const auto& line : *told)
        if (auto mark = line.entry.id == was.id ? std::nullopt : markOf(nowOf(line), item))
            marks.push_back(std::move(*mark));
    if (auto mark = markOf(was, item))
        marks.push_back(std::move(*mark));
    std::ranges::sort(marks, {}, &FittingMark::stamp);
    std::vector<Fell> fell;
    for (const auto& stay : whereabouts(item, marks, *renamings).stays) {
        if (stay.carrier)
            continue;
        const auto events = eventsOn(batch.books, stay.balloon, stay.from.at.on(),
                                     stay.until ? stay.until->at.on() : CivilDate::last());
        if (!events)
            return tl::unexpected(events.error());
        for (const auto& event : *events)
            if (const auto at = stampOf(event); !(at < stay.from) && (!stay.until || at < *stay.until))
                fell.push_back({item, event});
    }
    return fell;
}

/// On the kit of a flight that took off on that day, or on the day before.
Result<std::vector<Fell>> fellOnKit(const Batch& batch, const Entry& was, const FlightLogged& flight) {
    std::vector<Fell> fell;
    if (!flight.kit)
        return fell;
    const auto landed = Moment(momentOf(was).minutes() + flight.use.minutes.value()).on();
    const auto events = eventsOn(batch.books, flight.balloon, was.on, landed);
    if (!events)
        return tl::unexpected(events.error());
    for (const auto& event : *events)
        for (const auto& item : *flight.kit)
            fell.push_back({item, event});
    return fell;
}

Result<std::vector<Fell>> fellBefore(const Batch& batch, const Entry& was) {
    if (const auto* fitted = std::get_if<ItemFitted>(&was.body))
        return fellWhileFitted(batch, was, fitted->item);
    if (const auto* removed = std::get_if<ItemRemoved>(&was.body))
        return fellWhileFitted(batch, was, removed->item);
    if (const auto* flight = std::get_if<FlightLogged>(&was.body))
        return fellOnKit(batch, was, *flight);
    return std::vector<Fell>{};
}

/// What fell on it falls on it no more; what is in no entry has nothing to fall on.
Result<bool> isLost(Books& books, const Fell& fell) {
    const auto facts = books.facts({std::nullopt, {fell.item}}, CivilDate::last());
    if (!facts)
        return tl::unexpected(facts.error());
    return !facts->empty() && std::ranges::none_of(facts->front().events, [&](const Occurrence& each) {
        return each.stamp.id == fell.event.id;
    });
}

/// Of what an event could have fallen on.
bool saysWhere(const Body& body) {
    return std::holds_alternative<ItemFitted>(body) || std::holds_alternative<ItemRemoved>(body) ||
           std::holds_alternative<FlightLogged>(body);
}

/// Asked first: what an entry said before its last amendment is told by all of them.
Result<bool> isAnythingReported(Journal& journal) {
    const auto lines =
        journal.lines({.text = {}, .kind = std::string(kindName<EventReported>()), .before = {}, .limit = 1});
    return lines.map([](const auto& all) { return !all.empty(); });
}

Findings judgedWhere(const Batch& batch, const Entry& entry, int line) {
    const auto root = amendedRoot(batch.journal, entry);
    if (!root)
        return tl::unexpected(root.error());
    if (!*root || (*root)->unread || !saysWhere((*root)->entry.body))
        return std::vector<Problem>{};
    const auto was = batch.journal.before(entry.id);
    if (!was)
        return tl::unexpected(was.error());
    const auto fell = *was ? fellBefore(batch, **was) : Result<std::vector<Fell>>(std::vector<Fell>{});
    if (!fell)
        return tl::unexpected(fell.error());
    for (const auto& each : *fell) {
        const auto lost = isLost(batch.books, each);
        if (!lost)
            return tl::unexpected(lost.error());
        if (*lost)
            return askWhoTakesBack(batch, entry,
                                   {**root,
                                    {},
                                    each.item,
                                    ReleaseFault::GroundUnsaid,
                                    Argument(std::get<EventReported>(each.event.body).event)},
                                   line);
    }
    return std::vector<Problem>{};
}

}

Findings askFallenEvents(const Batch& batch) {
    std::vector<Problem> problems;
    if (const auto reported = isAnythingReported(batch.journal); !reported)
        return tl::unexpected(reported.error());
    else if (!*reported)
        return problems;
    for (const auto& [entry, line] : batch.entries) {
        auto found = judgedWhere(batch, entry, line);
        if (!found)
            return tl::unexpected(atLine(found.error(), line));
        std::ranges::move(*found, std::back_inserter(problems));
    }
    return problems;
}

}
