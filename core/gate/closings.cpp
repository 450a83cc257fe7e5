// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/bench_file.h"
#include "answers/closing.h"
#include "bench/release/release.h"
#include "bench/release/signed_phrase.h"
#include "gate/checks.h"
#include "gate/confirmed.h"
#include "gate/refusing.h"
#include "measure/duration_text.h"
#include "problem/faults/bench_fault.h"

namespace crownring {

namespace {

Argument said(const std::vector<SignedClock>& clocks) {
    Listed items;
    for (const auto& each : clocks)
        if (each.clock.minutes)
            items.list.emplace_back(Phrase{SignedPhrase::ItemAt, {each.item, hoursAndMinutes(*each.clock.minutes)}});
    return items;
}

Argument said(const std::vector<SignedException>& excepted) {
    if (excepted.empty())
        return Phrase{SignedPhrase::Nothing, {}};
    Listed items;
    for (const auto& each : excepted)
        items.list.emplace_back(Phrase{SignedPhrase::ItemAsks, {each.item, each.requirement}});
    return items;
}

/// What is posted is what the record composes. Clocks and seal may be left to it, the words that are signed may not.
void compare(const InspectionClosed& posted, const InspectionClosed& composed, int line,
             std::vector<Problem>& problems) {
    const auto refuse = [&](SignedPhrase of, Argument composes, const char* key) {
        problems.push_back(Problem{ReleaseFault::OtherText, {Phrase{of, {}}, std::move(composes)}, {{}, line, key}});
    };
    if (posted.statement != composed.statement)
        refuse(SignedPhrase::Statement,
               composed.statement.empty() ? Argument(Phrase{SignedPhrase::Nothing, {}}) : Argument(composed.statement),
               "statement");
    if (posted.licence != composed.licence)
        refuse(SignedPhrase::Licence, composed.licence, "licence");
    if (!posted.clocks.empty() && posted.clocks != composed.clocks)
        refuse(SignedPhrase::Clocks, said(composed.clocks), "clocks");
    if (posted.excepted != composed.excepted)
        refuse(SignedPhrase::Exceptions, said(composed.excepted), "excepted");
    if (posted.seal && posted.seal != composed.seal)
        refuse(SignedPhrase::Seal, composed.seal->digest, "seal");
}

/// Nothing is certified, so nothing is asked but that nothing was certified in the visit, on whatever day.
Findings abandoned(const Batch& batch, const InspectionClosed& closing, int line) {
    const auto released = batch.books.told(
        {Subject::Inspection, closing.inspection.text(), {kindName<ReleaseIncomplete>()}, CivilDate::last()});
    if (!released)
        return tl::unexpected(atLine(released.error(), line));
    std::vector<Problem> problems;
    if (!released->empty())
        problems.push_back(Problem{ReleaseFault::AbandonedAfterRelease, {}, {{}, line, "outcome"}});
    return problems;
}

Findings judged(const Batch& batch, const Entry& entry, const InspectionClosed& closing, int line) {
    std::vector<Problem> problems;
    if (closing.outcome == Outcome::Abandoned)
        return abandoned(batch, closing, line);
    const auto capacity = capacityFrom(closing.capacity);
    if (!capacity) {
        problems.push_back(Problem{BenchFault::NoCapacityToSignIn, {closing.capacity}, {{}, line, "capacity"}});
        return problems;
    }
    // As it stands without this closing, which is in the record by now.
    const auto file = benchFileBefore(batch.books, closing.inspection, entry.id, entry.on);
    if (!file)
        return tl::unexpected(atLine(file.error(), line));
    if (file->inspection.closed) {
        problems.push_back(Problem{ReleaseFault::ClosedByAnother, {}, {{}, line, {}}});
        return problems;
    }
    const auto last = saidLast(batch.books, closing.inspection);
    if (!last)
        return tl::unexpected(atLine(last.error(), line));
    if (*last && stampOf(entry) < **last) {
        problems.push_back(
            Problem{ReleaseFault::SaidAfter, {(*last)->at.on()}, {{}, line, entry.time ? "time" : "on"}});
        return problems;
    }
    const Signing signing{closing.outcome, *closing.signatory,  *capacity,
                          closing.manuals, closing.limitations, entry.on};
    for (const auto& refusal : refusals(*file, signing))
        problems.push_back(atLine(problemOf(refusal), line));
    askConfirmed(wordingAsked(*file, signing), closing.confirmed, line, problems);
    const auto composed = composedClosing(batch.journal, batch.books, *file, signing, entry.id);
    if (!composed)
        return tl::unexpected(atLine(composed.error(), line));
    if (problems.empty())
        compare(closing, *composed, line, problems);
    return problems;
}

}

Findings askClosings(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries)
        if (const auto* closing = std::get_if<InspectionClosed>(&entry.body)) {
            auto found = judged(batch, entry, *closing, line);
            if (!found)
                return found;
            problems.insert(problems.end(), found->begin(), found->end());
        }
    return problems;
}

}
