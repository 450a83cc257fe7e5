// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/check_rig_up.h"

#include "answers/bench_file.h"
#include "answers/due.h"
#include "answers/visit/check_flights.h"
#include "bench/release/release.h"
#include "measure/duration_text.h"
#include "problem/faults/use_fault.h"
#include "rules/due/due_phrase.h"
#include "rules/due/incomplete.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>

namespace crownring {

namespace {

/// The balloon that the kit flies as is that of its envelope.
FlyingAs flyingAs(const std::vector<ItemFacts>& kit) {
    for (const auto& item : kit)
        if (item.kind == ItemKind::Envelope && item.balloon)
            return {item.balloon, item.operations};
    return {};
}

/// What a check flight rests on, or why it does not.
struct Resting {
    const ReleaseIncomplete* release = nullptr;
    std::optional<Phrase> why;
};

/// The release with the visit as it was signed for, where a check flight may rest on it: nothing but lines that are
/// flown is outstanding, the record still supports it, and what flies is the balloon that it is of.
Result<Resting> restingOn(Books& books, const IncompleteWork& work, const std::vector<ItemFacts>& kit,
                          std::vector<JournalLine>& told) {
    auto lines =
        books.told({Subject::Inspection, work.inspection.text(), {kindName<ReleaseIncomplete>()}, CivilDate::last()});
    if (!lines)
        return tl::unexpected(lines.error());
    told = std::move(*lines);
    for (const auto& line : told) {
        const auto& entry = nowOf(line);
        const auto* release = std::get_if<ReleaseIncomplete>(&entry.body);
        if (!release || stampOf(entry) != work.released)
            continue;
        if (auto more = notFlown(release->outstanding); !more.list.empty())
            return Resting{nullptr, Phrase{DuePhrase::CheckFlightMoreLeft, {work.inspection, std::move(more)}}};
        const auto file = benchFileBefore(books, work.inspection, entry.id, entry.on);
        if (!file)
            return tl::unexpected(file.error());
        const auto& opened = file->inspection.opened.body;
        const auto isOfIt = [&](const ItemFacts& item) {
            return std::ranges::find(opened.items, item.id) != opened.items.end() || item.balloon == opened.balloon;
        };
        Signing signing{
            Outcome::Incomplete, release->signatory,   capacityFrom(release->capacity).value_or(Capacity::PilotOwner),
            release->manuals,    release->limitations, entry.on};
        for (const auto& each : release->outstanding)
            signing.outstanding.push_back(each.line);
        const bool supported =
            outstandingLines(*file, signing.outstanding) == release->outstanding && refusals(*file, signing).empty();
        if (!supported)
            return Resting{nullptr, Phrase{DuePhrase::CheckFlightUnsupported, {work.inspection}}};
        if (!opened.balloon || !std::ranges::all_of(kit, isOfIt))
            return Resting{nullptr, Phrase{DuePhrase::CheckFlightOther, {work.inspection}}};
        return Resting{release, {}};
    }
    return Resting{};
}

/// Why a release lets the flight not be flown: past its end, or beyond what may be flown by it in all.
Result<std::optional<Phrase>> beyond(Books& books, const ReleaseIncomplete& release, const Stamp& released,
                                     const std::vector<ItemFacts>& kit, CivilDate on, Minutes planned) {
    const auto& within = release.within;
    if (within.until && *within.until < on)
        return Phrase{DuePhrase::CheckFlightUntil, {release.inspection, *within.until}};
    const auto flying = flyingAs(kit);
    if (!flying.balloon || (!within.minutes && !within.flights))
        return std::nullopt;
    const auto flights = books.flights(*flying.balloon, released.at.on(), on);
    if (!flights)
        return tl::unexpected(flights.error());
    Minutes aloft{0};
    std::int64_t flown = 0;
    for (const auto& flight : *flights)
        if (released < flight.stamp) {
            aloft += flight.use.minutes;
            ++flown;
        }
    if (within.flights && flown >= *within.flights)
        return Phrase{DuePhrase::CheckFlightsFlown, {release.inspection, *within.flights, flown}};
    const auto least = std::max(planned, Minutes{1}); // of unsaid length it is a flight all the same
    if (within.minutes && *within.minutes < aloft + least)
        return Phrase{DuePhrase::CheckFlightAloft,
                      {release.inspection, hoursAndMinutes(*within.minutes), hoursAndMinutes(aloft)}};
    return std::nullopt;
}

/// What the releases after incomplete maintenance that stand on the kit let a check flight do.
struct CheckFlight {
    std::map<Stamp, std::string> limitations;
    std::map<Stamp, RigUpReason> against; ///< the releases that do not reach so far
};

/// Covers nothing of an item that something happened to since.
Result<CheckFlight> cover(Books& books, const std::vector<ItemFacts>& kit, CivilDate on, PlannedFlight& flight) {
    CheckFlight answer;
    for (const auto& item : kit)
        for (const auto& work : item.incomplete) {
            std::vector<JournalLine> told;
            auto resting = restingOn(books, work, kit, told);
            if (!resting)
                return tl::unexpected(resting.error());
            const auto* release = resting->release;
            if (!release) {
                if (resting->why)
                    answer.against.try_emplace(work.released, RigUpReason{.kind = RigUpReason::Kind::BeyondRelease,
                                                                          .item = &item,
                                                                          .beyond = std::move(*resting->why)});
                continue;
            }
            auto against = beyond(books, *release, work.released, kit, on, flight.use.minutes);
            if (!against)
                return tl::unexpected(against.error());
            if (*against)
                answer.against.try_emplace(work.released, RigUpReason{.kind = RigUpReason::Kind::BeyondRelease,
                                                                      .item = &item,
                                                                      .beyond = std::move(**against)});
            answer.limitations[work.released] = release->limitations;
            flight.covered.push_back({item.id, incompleteRequirementId(work.inspection)});
            const bool happened =
                std::ranges::any_of(item.events, [&](const Occurrence& event) { return work.released < event.stamp; });
            for (const auto& each : release->covers)
                if (each.item == item.id && !happened)
                    flight.covered.push_back({each.item, each.requirement});
        }
    return answer;
}

}

namespace {

/// When a visit ended; nothing while it is open.
struct Ending {
    std::optional<Stamp> at;
    Outcome outcome = Outcome::Incomplete;
};
Result<Ending> endingOf(Books& books, const InspectionId& visit, CivilDate on) {
    const auto told = books.told(
        {Subject::Inspection, visit.text(), {kindName<InspectionClosed>(), kindName<ReleaseIncomplete>()}, on});
    if (!told)
        return tl::unexpected(told.error());
    Ending ending;
    for (const auto& line : *told) {
        ending.at = stampOf(nowOf(line));
        if (const auto* closed = std::get_if<InspectionClosed>(&nowOf(line).body))
            return Ending{ending.at, closed->outcome};
    }
    return ending;
}

/// Another visit of the item released what it found there since (that this answers for it is our reading).
Result<bool> isReleasedSince(Books& books, const ItemId& item, const Stamp& since, CivilDate on) {
    const auto opened = books.told({Subject::Item, item.text(), {kindName<InspectionOpened>()}, on});
    if (!opened)
        return tl::unexpected(opened.error());
    for (const auto& line : *opened)
        if (const auto* visit = std::get_if<InspectionOpened>(&nowOf(line).body)) {
            const auto ending = endingOf(books, visit->inspection, on);
            if (!ending)
                return tl::unexpected(ending.error());
            if (ending->at && since < *ending->at && ending->outcome == Outcome::Released)
                return true;
        }
    return false;
}

std::set<InspectionId> workedIn(const std::vector<JournalLine>& told) {
    std::set<InspectionId> visits;
    for (const auto& line : told)
        std::visit(
            [&](const auto& body) {
                using Said = std::decay_t<decltype(body)>;
                if constexpr (std::is_same_v<Said, WorkPerformed>)
                    visits.insert(body.inspection);
                else if constexpr (std::is_same_v<Said, RepairMade> || std::is_same_v<Said, PartReplaced>)
                    if (body.inspection)
                        visits.insert(*body.inspection);
            },
            nowOf(line).body);
    return visits;
}

}

Result<std::vector<UnreleasedWork>> unreleasedWork(Books& books, const std::vector<ItemFacts>& kit, CivilDate on) {
    std::vector<UnreleasedWork> works;
    for (const auto& item : kit) {
        const auto told = books.told({Subject::Item,
                                      item.id.text(),
                                      {kindName<WorkPerformed>(), kindName<RepairMade>(), kindName<PartReplaced>()},
                                      on});
        if (!told)
            return tl::unexpected(told.error());
        for (const auto& visit : workedIn(*told)) {
            const auto ending = endingOf(books, visit, on);
            if (!ending)
                return tl::unexpected(ending.error());
            const bool abandoned = ending->at && ending->outcome == Outcome::Abandoned;
            const auto answered =
                abandoned ? isReleasedSince(books, item.id, *ending->at, on) : Result<bool>(ending->at.has_value());
            if (!answered)
                return tl::unexpected(answered.error());
            if (!*answered)
                works.push_back({&item, {abandoned ? DuePhrase::WorkAbandoned : DuePhrase::WorkUnreleased, {visit}}});
        }
    }
    return works;
}

Result<RigUpAnswer> checkRigUp(Books& books, const std::vector<ItemId>& kit, CivilDate on,
                               const PlannedFlight& flight) {
    if (kit.empty())
        return problem(UseFault::EmptyKit);
    const Scope scope{std::nullopt, kit, true};
    auto facts = books.facts(scope, on);
    if (!facts)
        return tl::unexpected(facts.error());
    for (const auto& id : kit)
        if (std::none_of(facts->begin(), facts->end(), [&](const auto& item) { return item.id == id; }))
            return problem(UseFault::ItemNotYetThere, {id, on});
    const auto balloon = flyingAs(*facts);
    auto list = dueOf(books, scope, std::move(*facts), on, balloon, Outside::AsInService);
    if (!list)
        return tl::unexpected(list.error());
    RigUpAnswer answer;
    answer.due = std::move(*list);
    auto flown = flight;
    CheckFlight check;
    if (flight.checkFlight) {
        auto covered = cover(books, answer.due.items, on, flown);
        if (!covered)
            return tl::unexpected(covered.error());
        check = std::move(*covered);
        for (const auto& [stamp, text] : check.limitations)
            answer.limitations.push_back(text);
    }
    answer.verdict = rigUp(answer.due, flown);
    auto unreleased = unreleasedWork(books, answer.due.items, on);
    if (!unreleased)
        return tl::unexpected(unreleased.error());
    for (const auto& work : *unreleased)
        answer.verdict.reasons.push_back(
            {.kind = RigUpReason::Kind::BeyondRelease, .item = work.item, .beyond = work.why});
    for (auto& [stamp, reason] : check.against)
        answer.verdict.reasons.push_back(std::move(reason));
    const auto unknown = books.unknownParts(kit, on);
    if (!unknown)
        return tl::unexpected(unknown.error());
    for (const auto& part : *unknown)
        answer.verdict.reasons.push_back({.kind = RigUpReason::Kind::NotEntered, .unknown = part});
    auto unread = books.unreadable();
    if (!unread)
        return tl::unexpected(unread.error());
    for (auto& question : *unread)
        answer.verdict.reasons.push_back({.kind = RigUpReason::Kind::Unread, .unread = std::move(question)});
    answer.verdict.mayFly = answer.verdict.reasons.empty();
    return answer;
}

}
