// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/visit/check_flights.h"

#include "bench/release/accomplished.h"
#include "problem/faults/release_fault.h"
#include "rules/due/due_phrase.h"
#include "rules/due/incomplete.h"

#include <algorithm>
#include <set>

namespace crownring {

namespace {

constexpr const char* flownRule = "14 CFR 91.407(b); ML.A.801(f), GM1 ML.A.301(f) (from memory)";

/// The work that a flight shows: a repair, a part, what is described; and the items that it was done on.
struct Worked {
    Stamp last; ///< without any, when the visit was opened
    std::set<ItemId> items;
};
Worked workedOn(const Inspection& inspection) {
    Worked worked{inspection.opened.stamp, {}};
    const auto hear = [&](const auto& all) {
        for (const auto& each : all) {
            worked.last = std::max(worked.last, each.stamp);
            worked.items.insert(each.body.item);
        }
    };
    hear(inspection.repairs);
    hear(inspection.parts);
    hear(inspection.performed);
    return worked;
}

/// By day; within one day only two times that are said can stand the wrong way round.
bool isAfter(const Entry& flight, const Stamp& work) {
    if (flight.on != work.at.on() || !flight.time)
        return work.at.on() <= flight.on;
    return work.at == Moment(work.at.on(), Kind<RepairMade>::time) || work.at < momentOf(flight);
}
bool isBefore(const Entry& flight, const Stamp& settled) {
    if (flight.on != settled.at.on() || !flight.time)
        return flight.on <= settled.at.on();
    return settled.at == Moment(settled.at.on(), Kind<LineSettled>::time) || momentOf(flight) < settled.at;
}

/// Free flights as the balloon after the work, up to a day; with the item, where one is named. On a tether nothing is
/// shown of how it flies (common practice, no source).
Result<std::vector<Entry>> flownSince(Books& books, const Registration& balloon, const std::optional<ItemId>& item,
                                      const Stamp& work, CivilDate on) {
    constexpr int latest = 1000;
    const auto lines = books.history(item ? std::nullopt : std::optional(balloon), item, on, latest);
    if (!lines)
        return tl::unexpected(lines.error());
    std::vector<Entry> flights;
    for (const auto& line : *lines) {
        const auto& entry = nowOf(line);
        const auto* flight = std::get_if<FlightLogged>(&entry.body);
        if (flight && !line.voided && !flight->tethered && flight->balloon == balloon && isAfter(entry, work))
            flights.push_back(entry);
    }
    return flights;
}

bool isFlownBefore(const std::vector<Entry>& flights, const Stamp& settled) {
    return std::ranges::any_of(flights, [&](const Entry& flight) { return isBefore(flight, settled); });
}

}

Result<std::vector<Refusal>> refusalsOfCheckFlights(Books& books, const BenchFile& file, CivilDate on) {
    const auto& balloon = file.inspection.opened.body.balloon;
    std::vector<WorkLine> flown;
    for (auto& work : workLines(file.inspection, file.items))
        if (work.line && isFlown(work.line->id) && work.state() == LineState::Done)
            flown.push_back(std::move(work));
    std::vector<Refusal> refused;
    if (flown.empty() || !balloon)
        return refused;
    const auto work = workedOn(file.inspection);
    std::vector<std::optional<ItemId>> aboard(work.items.begin(), work.items.end());
    if (aboard.empty())
        aboard.emplace_back();
    std::vector<std::vector<Entry>> flights; // of each
    for (const auto& item : aboard) {
        auto since = flownSince(books, *balloon, item, work.last, on);
        if (!since)
            return tl::unexpected(since.error());
        flights.push_back(std::move(*since));
    }
    for (const auto& each : flown)
        if (!std::ranges::all_of(flights, [&](const auto& of) { return isFlownBefore(of, each.settled->stamp); }))
            refused.push_back({Refusal::Kind::LineOpen,
                               ReleaseFault::NotFlown,
                               {each.line->title, *balloon},
                               flownRule,
                               each.line->id});
    return refused;
}

Listed notFlown(std::span<const Outstanding> outstanding) {
    Listed more;
    for (const auto& each : outstanding)
        if (!isFlown(each.line))
            more.list.emplace_back(each.title);
    return more;
}

std::vector<Argument> barsOfCheckFlight(const BenchFile& file, const Signing& signing) {
    std::vector<Argument> bars;
    const auto& id = file.inspection.id;
    if (auto more = notFlown(outstandingLines(file, signing.outstanding)); !more.list.empty())
        bars.emplace_back(Phrase{DuePhrase::CheckFlightMoreLeft, {id, std::move(more)}});
    if (!file.inspection.opened.body.balloon)
        bars.emplace_back(Phrase{DuePhrase::CheckFlightOther, {id}});
    if (signing.within.until && *signing.within.until < signing.on)
        bars.emplace_back(Phrase{DuePhrase::CheckFlightUntil, {id, *signing.within.until}});
    const auto covered = coveredOnceDone(file, signing.outstanding);
    for (const auto& each : file.excepted)
        if (std::ranges::find(covered, Work{each.item, each.requirement}) == covered.end() &&
            incompleteOf(each.requirement) != id)
            bars.push_back(exceptedText(each));
    return bars;
}

}
