// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/directives/answering.h"
#include "gate/refusing.h"
#include "problem/faults/bench_fault.h"
#include "problem/faults/directives/directive_fault.h"

#include <algorithm>

namespace crownring {

namespace {

/// An amendment of what was answered, after which it says something else.
struct AnswerAmended {
    JournalLine root;
    Entry before; ///< what stood, or as it was written where that was taken back
    Entry now;
};

bool saysTheSame(const Entry& a, const Entry& b) {
    return momentOf(a) == momentOf(b) && a.by == b.by && a.body == b.body;
}

Result<std::optional<AnswerAmended>> amendedIn(const Batch& batch, const Entry& entry) {
    auto root = amendedRoot(batch.journal, entry);
    if (!root)
        return tl::unexpected(root.error());
    if (!*root || (*root)->unread || (*root)->voided || !std::holds_alternative<DirectiveAnswered>((*root)->entry.body))
        return std::nullopt; // who takes an answer out leaves the directive open
    auto before = batch.journal.before(entry.id);
    if (!before)
        return tl::unexpected(before.error());
    const auto now = nowOf(**root);
    if (*before && saysTheSame(**before, now))
        return std::nullopt;
    auto stood = *before ? std::move(**before) : (*root)->entry;
    return AnswerAmended{std::move(**root), std::move(stood), now};
}

/// A release of the visit came between the answer and what amends it; withdrawn or not, somebody signed for it.
Result<bool> isSignedFor(const Batch& batch, const InspectionId& inspection, std::int64_t answer,
                         std::int64_t amendment) {
    const auto told = batch.books.told({Subject::Inspection,
                                        inspection.text(),
                                        {kindName<InspectionClosed>(), kindName<ReleaseIncomplete>()},
                                        CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    return std::ranges::any_of(
        *told, [&](const JournalLine& each) { return answer < each.number && each.number < amendment; });
}

Result<bool> isSignedFor(const Batch& batch, const Entry& entry, const AnswerAmended& amended) {
    const auto& was = std::get<DirectiveAnswered>(amended.before.body).inspection;
    const auto& is = std::get<DirectiveAnswered>(amended.now.body).inspection;
    const auto written = batch.journal.line(entry.id);
    if (!written)
        return tl::unexpected(written.error());
    const auto number = *written ? (*written)->number : 0;
    if (was) {
        const auto covered = isSignedFor(batch, *was, amended.root.number, number);
        if (!covered || *covered)
            return covered;
    }
    // Nor is it put under a signature that is there already.
    return is && is != was ? isSignedFor(batch, *is, 0, number) : Result<bool>(false);
}

Findings judgedAmended(const Batch& batch, Answering& answering, const Entry& entry, int line) {
    const auto amended = amendedIn(batch, entry);
    if (!amended)
        return tl::unexpected(amended.error());
    if (!*amended)
        return std::vector<Problem>{};
    const auto* voided = std::get_if<EntryVoided>(&entry.body);
    const auto covered = isSignedFor(batch, entry, **amended);
    if (!covered)
        return tl::unexpected(covered.error());
    if (*covered)
        return std::vector{Problem{BenchFault::SignatureIsFixed, {}, {{}, line, voided ? "voids" : "with"}}};
    const auto& answer = std::get<DirectiveAnswered>((*amended)->before.body);
    if (const auto key = unsaidIn(entry); !key.empty())
        return std::vector{
            Problem{DirectiveFault::AnswerUnsaid, {answer.directive}, {{}, line, std::string(key)}, complianceRule}};
    if (answer.capacity.empty() && entry.by == (*amended)->before.by)
        return std::vector<Problem>{}; // his own word, which a visit or a paper shows
    const auto answered = answeredOn(batch.books, answer, entry.on);
    if (!answered)
        return tl::unexpected(answered.error());
    const auto bar = answering.barInAny(PersonId(entry.by), entry.on, *answered);
    if (!bar)
        return tl::unexpected(bar.error());
    if (*bar)
        return std::vector{Problem{DirectiveFault::MayNotComply, {(*bar)->why}, {{}, line, "by"}, (*bar)->rule}};
    return std::vector<Problem>{};
}

}

Findings askAmendedAnswers(const Batch& batch) {
    std::vector<Problem> problems;
    Answering answering(batch.books);
    for (const auto& [entry, line] : batch.entries) {
        const auto found = judgedAmended(batch, answering, entry, line);
        if (!found)
            return tl::unexpected(atLine(found.error(), line));
        problems.insert(problems.end(), found->begin(), found->end());
    }
    return problems;
}

}
