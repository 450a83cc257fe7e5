// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/review/reviews.h"

#include "gate/checks.h"
#include "gate/confirmed.h"
#include "gate/refusing.h"
#include "problem/faults/bench_fault.h"
#include "problem/faults/review_fault.h"

#include <algorithm>

namespace crownring {

namespace {

Findings judgedReview(const Batch& batch, const Entry& entry, int line) {
    const auto& said = std::get<ReviewSigned>(entry.body);
    if (!capacityFrom(said.capacity))
        return std::vector{Problem{BenchFault::NoCapacityToSignIn, {said.capacity}, {{}, line, "capacity"}}};
    const auto file = reviewFile(batch.books, entry);
    if (!file)
        return tl::unexpected(atLine(file.error(), line));
    auto problems = refusals(*file, said);
    for (auto& each : problems)
        each.where.line = line;
    const auto asked = wordingAsked(*file, said);
    askConfirmed(asked, said.confirmed, line, problems);
    if (problems.empty() && said.statement != asked.statement.text)
        problems.push_back(Problem{ReleaseFault::OtherText,
                                   {Phrase{SignedPhrase::Statement, {}}, asked.statement.text},
                                   {{}, line, "statement"}});
    return problems;
}

/// A certificate says what was printed: only what was found, and its scans, may be told better.
Findings corrected(const JournalLine& root, int line) {
    auto now = root.current ? *root.current : root.entry;
    const auto& written = std::get<ReviewSigned>(root.entry.body);
    auto* said = std::get_if<ReviewSigned>(&now.body);
    if (said) {
        said->findings = written.findings;
        said->photographs = written.photographs;
    }
    if (said && *said == written && momentOf(now) == momentOf(root.entry))
        return std::vector<Problem>{};
    return std::vector{Problem{ReviewFault::CertificateIsFixed, {}, {{}, line, "with"}}};
}

Findings amended(const Batch& batch, const Entry& entry, int line) {
    const auto root = amendedRoot(batch.journal, entry);
    if (!root)
        return tl::unexpected(atLine(root.error(), line));
    if (!*root || !std::holds_alternative<ReviewSigned>((*root)->entry.body))
        return std::vector<Problem>{};
    const auto* taken = std::get_if<EntryVoided>(&entry.body);
    if (!taken)
        return corrected(**root, line);
    if (const auto key = unsaidIn(entry); !key.empty())
        return std::vector{Problem{ReviewFault::VoidUnsaid, {}, {{}, line, std::string(key)}}};
    return std::vector<Problem>{};
}

/// A review that is told from paper, or only stated.
Findings judgedDone(const Batch& batch, const Entry& now, int line) {
    const auto& done = std::get<RequirementDone>(now.body);
    if (!isOfReviews(done.requirement)) {
        if (done.expires)
            return std::vector{Problem{ReviewFault::ExpiresOfNoCertificate, {done.requirement}, {{}, line, "expires"}}};
        return std::vector<Problem>{};
    }
    if (done.expires) {
        const auto latest = latestExpiry(batch.books, done.item, now.on);
        if (!latest)
            return tl::unexpected(atLine(latest.error(), line));
        if (*done.expires < now.on || (*latest && **latest < *done.expires))
            return std::vector{Problem{ReviewFault::ExpiresTooLate,
                                       {*done.expires, latest->value_or(now.on)},
                                       {{}, line, "expires"},
                                       "ML.A.901(a); ML.A.903(d)"}};
    }
    if (!done.ref.empty() && done.signatory && !done.licence.empty())
        return std::vector<Problem>{};
    const auto facts = batch.books.facts({std::nullopt, {done.item}}, now.on);
    if (!facts)
        return tl::unexpected(atLine(facts.error(), line));
    if (facts->empty() || !facts->front().balloon)
        return std::vector<Problem>{};
    const auto reviews = signedReviews(batch.books, facts->front().balloon, now.on);
    if (!reviews)
        return tl::unexpected(atLine(reviews.error(), line));
    if (reviews->empty())
        return std::vector<Problem>{};
    return std::vector{Problem{ReviewFault::StatedByNobody,
                               {done.requirement, done.item, reviews->front().on},
                               {{}, line, "ref"},
                               "ML.A.901(b)"}};
}

}

Findings askReviews(const Batch& batch) {
    std::vector<Problem> problems;
    const auto take = [&](Findings found) -> Result<void> {
        if (!found)
            return tl::unexpected(found.error());
        std::ranges::move(*found, std::back_inserter(problems));
        return {};
    };
    for (const auto& [entry, line] : batch.entries) {
        if (std::holds_alternative<ReviewSigned>(entry.body)) {
            if (const auto asked = take(judgedReview(batch, entry, line)); !asked)
                return tl::unexpected(asked.error());
            continue;
        }
        if (const auto asked = take(amended(batch, entry, line)); !asked)
            return tl::unexpected(asked.error());
        const auto done = standingAs<RequirementDone>(batch.journal, entry);
        if (!done)
            return tl::unexpected(atLine(done.error(), line));
        if (*done && std::holds_alternative<RequirementDone>((*done)->body))
            if (const auto asked = take(judgedDone(batch, **done, line)); !asked)
                return tl::unexpected(asked.error());
    }
    return problems;
}

}
