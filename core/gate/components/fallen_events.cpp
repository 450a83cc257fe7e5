// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/defects/deciding.h"
#include "gate/refusing.h"
#include "registry/stays.h"

#include <algorithm>
#include <iterator>
#include <set>
#include <unordered_set>

namespace crownring {

namespace {

constexpr int wholeHistory = 20'000;

/// What was reported of a balloon in these days.
Result<std::vector<Entry>> eventsOn(Books& books, const Registration& balloon, CivilDate first, CivilDate last) {
    const auto lines = books.history(balloon, std::nullopt, last, wholeHistory);
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

/// An event that fell on an item before something else was said of where that was.
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

/// What was there before the batch.
struct Earlier {
    std::unordered_set<EntryId> come; ///< with the batch
    bool isAnythingReported = false;
};

/// Asked first: what was said before, and where everything was, is told by reading all of it.
Result<Earlier> earlierThan(const Batch& batch) {
    Earlier earlier;
    std::optional<std::int64_t> first;
    for (const auto& each : batch.entries) {
        earlier.come.insert(each.entry.id);
        const auto line = first ? Result<std::optional<JournalLine>>(std::nullopt) : batch.journal.line(each.entry.id);
        if (!line)
            return tl::unexpected(line.error());
        if (*line)
            first = (*line)->number;
    }
    const auto reported =
        batch.journal.lines({.text = {}, .kind = std::string(kindName<EventReported>()), .before = first, .limit = 1});
    if (!reported)
        return tl::unexpected(reported.error());
    earlier.isAnythingReported = !reported->empty();
    return earlier;
}

/// What was said before one entry of the batch: new ones of it say nothing yet, what that one amends says what it said.
class WhereBefore {
public:
    /// @param was what `entry` amends, as it stood; nothing where it is none
    WhereBefore(const Batch& batch, const Earlier& earlier, const Entry& entry, const std::optional<Entry>& was)
        : m_batch(batch), m_earlier(earlier), m_since(was ? momentOf(*was).on() : entry.on), m_was(was) {}

    Result<std::vector<Fell>> fellOn(const ItemId& item) const {
        const auto stays = staysOf(item);
        if (!stays)
            return tl::unexpected(stays.error());
        std::vector<Fell> fell;
        for (const auto& stay : *stays) {
            const auto events = eventsIn(stay);
            if (!events)
                return tl::unexpected(events.error());
            for (const auto& event : *events)
                fell.push_back({item, event});
        }
        return fell;
    }
    /// On whatever was fitted under that registration.
    Result<std::vector<Fell>> fellOnAll(const Registration& balloon) const {
        const auto told = m_batch.books.history(balloon, std::nullopt, CivilDate::last(), wholeHistory);
        if (!told)
            return tl::unexpected(told.error());
        std::set<ItemId> items;
        for (const auto& line : *told)
            if (const auto* fitted = std::get_if<ItemFitted>(&nowOf(line).body))
                items.insert(fitted->item);
        std::vector<Fell> fell;
        for (const auto& item : items) {
            auto each = fellOn(item);
            if (!each)
                return each;
            std::ranges::move(*each, std::back_inserter(fell));
        }
        return fell;
    }
    /// What was reported of a balloon in these days, before the batch.
    Result<std::vector<Entry>> reported(const Registration& balloon, CivilDate first, CivilDate last) const {
        auto events = eventsOn(m_batch.books, balloon, first, last);
        if (events)
            std::erase_if(*events, [&](const Entry& event) { return isNew(event.id); });
        return events;
    }

private:
    [[nodiscard]] bool isNew(const EntryId& id) const { return m_earlier.come.contains(id); }
    Result<std::vector<Stay>> staysOf(const ItemId& item) const {
        const auto told = m_batch.books.history(std::nullopt, item, CivilDate::last(), wholeHistory);
        auto renamings = m_batch.books.renamings(CivilDate::last());
        if (!told || !renamings)
            return tl::unexpected(!told ? told.error() : renamings.error());
        const auto isLeftOut = [&](const EntryId& id) { return isNew(id) || (m_was && m_was->id == id); };
        std::vector<FittingMark> marks;
        for (const auto& line : *told)
            if (auto mark = isLeftOut(line.entry.id) ? std::nullopt : markOf(nowOf(line), item))
                marks.push_back(std::move(*mark));
        if (auto mark = m_was ? markOf(*m_was, item) : std::nullopt)
            marks.push_back(std::move(*mark));
        std::ranges::sort(marks, {}, &FittingMark::stamp);
        std::erase_if(*renamings, [&](const Renaming& each) { return isLeftOut(each.stamp.id); });
        if (const auto* renamed = m_was ? std::get_if<BalloonRenamed>(&m_was->body) : nullptr) {
            renamings->push_back({stampOf(*m_was), renamed->balloon, renamed->to});
            std::ranges::sort(*renamings, {}, &Renaming::stamp);
        }
        return whereabouts(item, marks, *renamings).stays;
    }
    Result<std::vector<Entry>> eventsIn(const Stay& stay) const {
        if (stay.carrier)
            return eventsUnder(*stay.carrier, stay);
        auto events = reported(stay.balloon, std::max(stay.from.at.on(), m_since),
                               stay.until ? stay.until->at.on() : CivilDate::last());
        if (!events || events->empty())
            return events;
        std::vector<Entry> fell;
        for (const auto& event : *events) {
            const auto flew = isWithin(stampOf(event), stay) ? true : flewOn(event.on, stay);
            if (!flew)
                return tl::unexpected(flew.error());
            if (*flew)
                fell.push_back(event);
        }
        return fell;
    }
    /// What fell on what carried it while it did.
    Result<std::vector<Entry>> eventsUnder(const ItemId& carrier, const Stay& stay) const {
        const auto facts = m_batch.books.facts({std::nullopt, {carrier}}, CivilDate::last());
        if (!facts)
            return tl::unexpected(facts.error());
        std::vector<Entry> fell;
        for (const auto& each : facts->empty() ? std::vector<Occurrence>() : facts->front().events) {
            if (each.stamp.at.on() < m_since || isNew(each.stamp.id) || !isWithin(each.stamp, stay))
                continue;
            const auto line = m_batch.journal.line(each.stamp.id);
            if (!line)
                return tl::unexpected(line.error());
            if (*line && !(*line)->unread)
                fell.push_back(nowOf(**line));
        }
        return fell;
    }
    [[nodiscard]] static bool isWithin(const Stamp& stamp, const Stay& stay) {
        return !(stamp < stay.from) && (!stay.until || stamp < *stay.until);
    }
    /// It was aloft in the stay on that day, also where it took off on the day before.
    Result<bool> flewOn(CivilDate on, const Stay& stay) const {
        auto flights = m_batch.books.flights(stay.balloon, addDays(on, -1), on);
        if (!flights)
            return tl::unexpected(flights.error());
        std::erase_if(*flights, [&](const LoggedFlight& each) { return isNew(each.stamp.id); });
        if (const auto* flown = m_was ? std::get_if<FlightLogged>(&m_was->body) : nullptr;
            flown && flown->balloon == stay.balloon)
            flights->push_back({stampOf(*m_was), flown->balloon, m_was->time.has_value(), flown->use});
        return std::ranges::any_of(*flights, [&](const LoggedFlight& each) {
            const auto landed = Moment(each.stamp.at.minutes() + each.use.minutes.value());
            return isWithin(each.stamp, stay) && !(on < each.stamp.at.on()) && !(landed < Moment::startOf(on));
        });
    }

    const Batch& m_batch;
    const Earlier& m_earlier;
    CivilDate m_since; ///< before that nothing changes
    std::optional<Entry> m_was;
};

/// On what flew that flight, which took off on that day, or on the day before: its kit, else what was fitted.
Result<std::vector<Fell>> fellAloft(const WhereBefore& before, const Entry& was, const FlightLogged& flight) {
    const auto landed = Moment(momentOf(was).minutes() + flight.use.minutes.value()).on();
    const auto events = before.reported(flight.balloon, was.on, landed);
    if (!events)
        return tl::unexpected(events.error());
    if (events->empty())
        return std::vector<Fell>{};
    if (!flight.kit)
        return before.fellOnAll(flight.balloon);
    std::vector<Fell> fell;
    for (const auto& event : *events)
        for (const auto& item : *flight.kit)
            fell.push_back({item, event});
    return fell;
}

Result<std::vector<Fell>> fellBefore(const Batch& batch, const Earlier& earlier, const Entry& entry,
                                     const std::optional<Entry>& was) {
    const WhereBefore before(batch, earlier, entry, was);
    const auto& said = was ? *was : entry;
    if (const auto* fitted = std::get_if<ItemFitted>(&said.body))
        return before.fellOn(fitted->item);
    if (const auto* removed = std::get_if<ItemRemoved>(&said.body))
        return before.fellOn(removed->item);
    if (const auto* renamed = std::get_if<BalloonRenamed>(&said.body))
        return before.fellOnAll(was ? renamed->to : renamed->balloon);
    if (const auto* flight = was ? std::get_if<FlightLogged>(&was->body) : nullptr)
        return fellAloft(before, *was, *flight);
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
           std::holds_alternative<FlightLogged>(body) || std::holds_alternative<BalloonRenamed>(body);
}

Findings judgedWhere(const Batch& batch, const Earlier& earlier, const Entry& entry, int line) {
    const bool isAmendment = amends(entry).has_value();
    const auto root =
        isAmendment ? amendedRoot(batch.journal, entry) : Result<std::optional<JournalLine>>(std::nullopt);
    if (!root)
        return tl::unexpected(root.error());
    const auto* said = isAmendment ? *root && !(*root)->unread ? &(*root)->entry : nullptr : &entry;
    // A flight more takes nothing away.
    if (!said || !saysWhere(said->body) || (!isAmendment && std::holds_alternative<FlightLogged>(said->body)))
        return std::vector<Problem>{};
    const auto was = isAmendment ? batch.journal.before(entry.id) : Result<std::optional<Entry>>(std::nullopt);
    if (!was)
        return tl::unexpected(was.error());
    if (isAmendment && !*was)
        return std::vector<Problem>{};
    const auto fell = fellBefore(batch, earlier, entry, *was);
    if (!fell)
        return tl::unexpected(fell.error());
    JournalLine own;
    own.entry = entry;
    for (const auto& each : *fell) {
        const auto lost = isLost(batch.books, each);
        if (!lost)
            return tl::unexpected(lost.error());
        if (!*lost)
            continue;
        const TakenBack taken{*root ? **root : own,
                              {},
                              each.item,
                              ReleaseFault::GroundUnsaid,
                              Argument(std::get<EventReported>(each.event.body).event)};
        return *root ? askWhoTakesBack(batch, entry, taken, line) : askWhoDecides(batch, entry, taken, line);
    }
    return std::vector<Problem>{};
}

}

Findings askFallenEvents(const Batch& batch) {
    std::vector<Problem> problems;
    const auto earlier = earlierThan(batch);
    if (!earlier)
        return tl::unexpected(earlier.error());
    if (!earlier->isAnythingReported)
        return problems;
    for (const auto& [entry, line] : batch.entries) {
        auto found = judgedWhere(batch, *earlier, entry, line);
        if (!found)
            return tl::unexpected(atLine(found.error(), line));
        std::ranges::move(*found, std::back_inserter(problems));
    }
    return problems;
}

}
