// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/flight_import.h"

#include "acts/named_kit.h"
#include "acts/post.h"
#include "problem/faults/use_fault.h"
#include "registry/spelling.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace crownring {

namespace {

/// Two flights with the same sameness may be the same flight; times decide where both state one.
using Sameness = std::tuple<Registration, CivilDate, Minutes>;

/// A flight of the record: its time where one was stated.
using StatedTime = std::optional<TimeOfDay>;
using Logged = std::multimap<Sameness, StatedTime>;

Sameness samenessOf(const FlightProposal& proposal) {
    return {proposal.balloon, proposal.on, proposal.flight.use.minutes};
}

struct DaysFlown {
    CivilDate first;
    CivilDate last;
};

std::map<Registration, DaysFlown> daysByBalloon(const std::vector<JudgedProposal>& judged) {
    std::map<Registration, DaysFlown> days;
    for (const auto& each : judged) {
        if (each.state == ProposalState::UnknownBalloon)
            continue;
        const auto& proposal = each.proposal;
        auto& span = days.try_emplace(proposal.balloon, DaysFlown{proposal.on, proposal.on}).first->second;
        span.first = std::min(span.first, proposal.on);
        span.last = std::max(span.last, proposal.on);
    }
    return days;
}

/// @param except entries of the record that are no flights of others
Result<Logged> loggedFlights(Books& books, const std::map<Registration, DaysFlown>& days,
                             const std::set<EntryId>& except) {
    Logged logged;
    for (const auto& [balloon, span] : days) {
        // A flight may have begun on the day before.
        const auto flights = books.flights(balloon, addDays(span.first, -1), span.last);
        if (!flights)
            return tl::unexpected(flights.error());
        for (const auto& flight : *flights) {
            if (except.contains(flight.stamp.id))
                continue;
            const auto minute =
                static_cast<int>(flight.stamp.at.minutes() - Moment::startOf(flight.stamp.at.on()).minutes());
            logged.emplace(Sameness{balloon, flight.stamp.at.on(), flight.use.minutes},
                           flight.timed ? StatedTime(TimeOfDay(minute / 60, minute % 60)) : std::nullopt);
        }
    }
    return logged;
}

Result<void> markUnknownBalloons(Books& books, std::vector<JudgedProposal>& judged) {
    const auto latest = std::max_element(judged.begin(), judged.end(),
                                         [](const auto& a, const auto& b) { return a.proposal.on < b.proposal.on; });
    const auto cards = books.balloons(latest->proposal.on);
    if (!cards)
        return tl::unexpected(cards.error());
    std::map<std::string, const BalloonCard*> known;
    for (const auto& card : *cards)
        known.emplace(bareName(card.balloon.text()), &card);
    for (auto& each : judged) {
        auto& proposal = each.proposal;
        const auto found = known.find(bareName(proposal.balloon.text()));
        if (found == known.end() || proposal.on < found->second->entered) {
            each.state = ProposalState::UnknownBalloon;
        } else if (found->second->balloon != proposal.balloon) {
            each.written = proposal.balloon.text();
            proposal.balloon = proposal.flight.balloon = found->second->balloon;
        }
    }
    return {};
}

/// Which of the unknown ones were entered later than they flew.
Result<void> tellLaterEntered(Books& books, std::vector<JudgedProposal>& judged) {
    if (std::ranges::none_of(judged, [](const auto& each) { return each.state == ProposalState::UnknownBalloon; }))
        return {};
    const auto cards = books.balloons(CivilDate::last());
    if (!cards)
        return tl::unexpected(cards.error());
    std::map<std::string, CivilDate> entered;
    for (const auto& card : *cards)
        entered.emplace(bareName(card.balloon.text()), card.entered);
    for (auto& each : judged) {
        const auto at = entered.find(bareName(each.proposal.balloon.text()));
        if (each.state == ProposalState::UnknownBalloon && at != entered.end() && each.proposal.on < at->second)
            each.entered = at->second;
    }
    return {};
}

/// A balloon takes off once in a minute: the second row that says so is a copy. Rows without a time are not compared
/// with each other, two equal hops on one day are no mistake; the record decides on them by count.
void markTwiceInFile(std::vector<JudgedProposal>& judged) {
    std::set<std::pair<Sameness, TimeOfDay>> seen;
    for (auto& each : judged)
        if (each.state == ProposalState::New && each.proposal.time &&
            !seen.emplace(samenessOf(each.proposal), *each.proposal.time).second)
            each.state = ProposalState::TwiceInFile;
}

/// Every flight of the record makes one proposal a repetition, so that two equal rows against one equal flight leave
/// one new. `matches(proposal, time in the record)` says which may pair; the surest pairs are sought first.
template <class Matches>
void markLogged(std::vector<JudgedProposal>& judged, Logged& logged, Matches matches) {
    for (auto& each : judged) {
        if (each.state != ProposalState::New)
            continue;
        const auto [first, last] = logged.equal_range(samenessOf(each.proposal));
        const auto found =
            std::find_if(first, last, [&](const auto& flight) { return matches(each.proposal.time, flight.second); });
        if (found == last)
            continue;
        logged.erase(found);
        each.state = ProposalState::AlreadyLogged;
    }
}

/// Do they share more than half of the shorter one? Clocks are read and rounded by different hands.
bool overlap(Moment a, Minutes ofA, Moment b, Minutes ofB) {
    const auto shared = std::min(a.minutes() + ofA.value(), b.minutes() + ofB.value()) - std::max(a, b).minutes();
    return 2 * shared > std::min(ofA, ofB).value();
}

/// A balloon is on one flight at a time: what overlaps a flight of the record is that flight, told by another source.
void markOverlapping(std::vector<JudgedProposal>& judged, const Logged& logged) {
    for (auto& each : judged) {
        const auto& proposal = each.proposal;
        if (each.state != ProposalState::New || !proposal.time)
            continue;
        const Moment takeOff(proposal.on, *proposal.time);
        const auto first = logged.lower_bound({proposal.balloon, addDays(proposal.on, -1), Minutes(0)});
        const auto last = logged.lower_bound({proposal.balloon, addDays(proposal.on, 2), Minutes(0)});
        if (std::any_of(first, last, [&](const auto& flight) {
                const auto& [balloon, on, minutes] = flight.first;
                return flight.second &&
                       overlap(takeOff, proposal.flight.use.minutes, Moment(on, *flight.second), minutes);
            }))
            each.state = ProposalState::AlreadyLogged;
    }
}

Entry entryOf(const FlightProposal& proposal) {
    Entry entry;
    entry.on = proposal.on;
    entry.time = proposal.time;
    entry.by = proposal.by;
    entry.note = proposal.note;
    auto flight = proposal.flight;
    flight.balloon = proposal.balloon;
    entry.body = std::move(flight);
    return entry;
}

std::vector<Problem> takenMeanwhile(const std::vector<JudgedProposal>& then, const std::vector<JudgedProposal>& now,
                                    const std::string& file) {
    std::vector<Problem> problems;
    for (std::size_t i = 0; i < then.size(); ++i) {
        const auto& proposal = then[i].proposal;
        if (then[i].state == ProposalState::New && now[i].state != ProposalState::New)
            problems.push_back(
                Problem{UseFault::FlightTakenMeanwhile, {proposal.balloon, proposal.on}, {file, proposal.line, {}}});
    }
    return problems;
}

Result<std::vector<JudgedProposal>> judgedBeside(Books& books, std::vector<FlightProposal> proposals,
                                                 const std::set<EntryId>& except) {
    std::vector<JudgedProposal> judged;
    for (auto& proposal : proposals)
        judged.push_back({std::move(proposal), ProposalState::New});
    if (judged.empty())
        return judged;
    if (const auto marked = markUnknownBalloons(books, judged); !marked)
        return tl::unexpected(marked.error());
    if (const auto told = tellLaterEntered(books, judged); !told)
        return tl::unexpected(told.error());
    markTwiceInFile(judged);
    auto logged = loggedFlights(books, daysByBalloon(judged), except);
    if (!logged)
        return tl::unexpected(logged.error());
    markLogged(judged, *logged, [](const StatedTime& ours, const StatedTime& theirs) { return ours == theirs; });
    markLogged(judged, *logged, [](const StatedTime& ours, const StatedTime& theirs) { return !ours && theirs; });
    markLogged(judged, *logged, [](const StatedTime& ours, const StatedTime& theirs) { return ours && !theirs; });
    markOverlapping(judged, *logged);
    if (const auto named = nameKits(books, judged); !named)
        return tl::unexpected(named.error());
    return judged;
}

}

Result<std::vector<JudgedProposal>> judge(Books& books, std::vector<FlightProposal> proposals) {
    return judgedBeside(books, std::move(proposals), {});
}

Results<Receipt> accept(Journal& journal, Books& books, const std::vector<JudgedProposal>& proposals,
                        const std::string& file) {
    std::vector<NumberedEntry> entries;
    for (const auto& each : proposals)
        if (each.state == ProposalState::New)
            entries.push_back({entryOf(each.proposal), each.proposal.line});
    if (entries.empty())
        return Receipt{};
    // Inside the transaction: another hand may accept the same file at the same time.
    return post(journal, books, std::move(entries), file, [&](std::span<const NumberedEntry> written) {
        std::vector<FlightProposal> again;
        for (const auto& each : proposals)
            again.push_back(each.proposal);
        std::set<EntryId> own;
        for (const auto& each : written)
            own.insert(each.entry.id);
        const auto now = judgedBeside(books, std::move(again), own);
        return now ? takenMeanwhile(proposals, *now, file) : std::vector{now.error()};
    });
}

}
