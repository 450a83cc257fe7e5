// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/bench_file.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"

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

Findings judgedFlights(const Batch& batch, const InspectionId& inspection, const Entry& entry, int line) {
    const auto file = benchFileBefore(batch.books, inspection, entry.id, entry.on);
    if (!file)
        return tl::unexpected(file.error());
    const auto& balloon = file->inspection.opened.body.balloon;
    std::vector<const WorkLine*> flown;
    const auto lines = workLines(file->inspection, file->items);
    for (const auto& work : lines)
        if (work.line && isFlown(work.line->id) && work.state() == LineState::Done)
            flown.push_back(&work);
    std::vector<Problem> problems;
    if (flown.empty() || !balloon)
        return problems;
    const auto work = workedOn(file->inspection);
    const auto flights = batch.books.flights(*balloon, work.at.on(), entry.on);
    if (!flights)
        return tl::unexpected(flights.error());
    if (std::ranges::any_of(*flights, [&](const LoggedFlight& flight) { return isAfter(flight, work); }))
        return problems;
    for (const auto* each : flown)
        problems.push_back(Problem{ReleaseFault::NotFlown, {each->line->title, *balloon}, {{}, line, {}}, flownRule});
    return problems;
}

}

Findings askCheckFlights(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto* closing = std::get_if<InspectionClosed>(&entry.body);
        if (!closing || closing->outcome != Outcome::Released)
            continue;
        auto found = judgedFlights(batch, closing->inspection, entry, line);
        if (!found)
            return tl::unexpected(atLine(found.error(), line));
        std::ranges::move(*found, std::back_inserter(problems));
    }
    return problems;
}

}
