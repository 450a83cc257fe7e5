// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/visit/check_flights.h"

#include "bench/release/accomplished.h"
#include "problem/faults/release_fault.h"
#include "rules/due/due_phrase.h"
#include "rules/due/incomplete.h"

#include <algorithm>

namespace crownring {

namespace {

constexpr const char* flownRule = "14 CFR 91.407(b); ML.A.801(f), GM1 ML.A.301(f) (from memory)";

/// When the last of the work was done that a flight shows: a repair, a part, what is described; without any, when the
/// visit was opened.
Stamp workedOn(const Inspection& inspection) {
    auto last = inspection.opened.stamp;
    const auto hear = [&](const auto& all) {
        for (const auto& each : all)
            last = std::max(last, each.stamp);
    };
    hear(inspection.repairs);
    hear(inspection.parts);
    hear(inspection.performed);
    return last;
}

/// By day; within one day only two times that are said can stand the wrong way round.
bool isAfter(const LoggedFlight& flight, const Stamp& work) {
    if (flight.stamp.at.on() != work.at.on() || !flight.timed)
        return work.at.on() <= flight.stamp.at.on();
    return work.at == Moment(work.at.on(), Kind<RepairMade>::time) || work.at < flight.stamp.at;
}

}

Result<std::vector<Refusal>> refusalsOfCheckFlights(Books& books, const BenchFile& file, CivilDate on) {
    const auto& balloon = file.inspection.opened.body.balloon;
    std::vector<const ChecklistLine*> flown;
    for (const auto& work : workLines(file.inspection, file.items))
        if (work.line && isFlown(work.line->id) && work.state() == LineState::Done)
            flown.push_back(work.line);
    std::vector<Refusal> refused;
    if (flown.empty() || !balloon)
        return refused;
    const auto work = workedOn(file.inspection);
    const auto flights = books.flights(*balloon, work.at.on(), on);
    if (!flights)
        return tl::unexpected(flights.error());
    if (std::ranges::any_of(*flights, [&](const LoggedFlight& flight) { return isAfter(flight, work); }))
        return refused;
    for (const auto* each : flown)
        refused.push_back(
            {Refusal::Kind::LineOpen, ReleaseFault::NotFlown, {each->title, *balloon}, flownRule, each->id});
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
