// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/bench_file.h"
#include "answers/closing.h"
#include "bench/release/release.h"
#include "bench/release/signed_phrase.h"
#include "gate/checks.h"
#include "gate/confirmed.h"
#include "gate/refusing.h"
#include "problem/faults/bench_fault.h"

namespace crownring {

namespace {

Argument outstandingText(const std::vector<Outstanding>& lines) {
    if (lines.empty())
        return Phrase{SignedPhrase::Nothing, {}};
    Listed titles;
    for (const auto& each : lines)
        titles.list.emplace_back(each.title);
    return titles;
}

/// What is posted is what the record composes; the seal may be left to it.
void compare(const ReleaseIncomplete& posted, const ReleaseIncomplete& composed, int line,
             std::vector<Problem>& problems) {
    const auto refuse = [&](SignedPhrase of, Argument composes, const char* key) {
        problems.push_back(Problem{ReleaseFault::OtherText, {Phrase{of, {}}, std::move(composes)}, {{}, line, key}});
    };
    if (posted.statement != composed.statement)
        refuse(SignedPhrase::Statement, composed.statement, "statement");
    if (posted.licence != composed.licence)
        refuse(SignedPhrase::Licence, composed.licence, "licence");
    if (posted.outstanding != composed.outstanding)
        refuse(SignedPhrase::Outstanding, outstandingText(composed.outstanding), "outstanding");
    if (posted.covers != composed.covers)
        refuse(SignedPhrase::Covers, Phrase{SignedPhrase::Nothing, {}}, "covers");
    if (posted.seal && posted.seal != composed.seal)
        refuse(SignedPhrase::Seal, composed.seal->digest, "seal");
}

Findings judgedIncomplete(const Batch& batch, const Entry& entry, const ReleaseIncomplete& release, int line) {
    std::vector<Problem> problems;
    const auto capacity = capacityFrom(release.capacity);
    if (!capacity)
        return std::vector{Problem{BenchFault::NoCapacityToSignIn, {release.capacity}, {{}, line, "capacity"}}};
    const auto file = benchFileBefore(batch.books, release.inspection, entry.id, entry.on);
    if (!file)
        return tl::unexpected(atLine(file.error(), line));
    const auto last = saidLast(batch.books, release.inspection);
    if (!last)
        return tl::unexpected(atLine(last.error(), line));
    if (*last && stampOf(entry) < **last)
        return std::vector{
            Problem{ReleaseFault::SaidAfter, {(*last)->at.on()}, {{}, line, entry.time ? "time" : "on"}}};
    Signing signing{Outcome::Incomplete, release.signatory, *capacity, release.manuals, release.limitations, entry.on};
    signing.within = release.within;
    for (const auto& each : release.outstanding)
        signing.outstanding.push_back(each.line);
    for (const auto& refusal : refusals(*file, signing))
        problems.push_back(atLine(problemOf(refusal), line));
    askConfirmed(wordingAsked(*file, signing), release.confirmed, line, problems);
    if (!problems.empty())
        return problems;
    const auto composed = composedIncomplete(batch.journal, batch.books, *file, signing, entry.id);
    if (!composed)
        return tl::unexpected(atLine(composed.error(), line));
    compare(release, *composed, line, problems);
    return problems;
}

}

Findings askIncompleteReleases(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries)
        if (const auto* release = std::get_if<ReleaseIncomplete>(&entry.body)) {
            auto found = judgedIncomplete(batch, entry, *release, line);
            if (!found)
                return found;
            problems.insert(problems.end(), found->begin(), found->end());
        }
    return problems;
}

}
