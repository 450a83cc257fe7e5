// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/discrepancies.h"
#include "bench/release/signed_phrase.h"
#include "gate/checks.h"
#include "gate/confirmed.h"
#include "gate/refusing.h"
#include "problem/faults/bench_fault.h"
#include "problem/faults/release_fault.h"

namespace crownring {

namespace {

Argument orNothing(const std::string& text) {
    return text.empty() ? Argument(Phrase{SignedPhrase::Nothing, {}}) : Argument(text);
}

/// What is posted is what the record composes.
void compare(const ReturnApproved& posted, const ReturnApproved& composed, int line, std::vector<Problem>& problems) {
    const auto refuse = [&](SignedPhrase of, const std::string& composes, const char* key) {
        problems.push_back(Problem{ReleaseFault::OtherText, {Phrase{of, {}}, orNothing(composes)}, {{}, line, key}});
    };
    if (posted.statement != composed.statement)
        refuse(SignedPhrase::Statement, composed.statement, "statement");
    if (posted.licence != composed.licence)
        refuse(SignedPhrase::Licence, composed.licence, "licence");
}

/// With it in the record it is what ends the matter: dated after the list, and after an approval of it was withdrawn.
Result<bool> speaks(Books& books, const Entry& entry, const InspectionId& inspection) {
    const auto told = books.told({Subject::Inspection, inspection.text(), {}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    const auto now = inspectionFrom(inspection, *told);
    if (!now)
        return tl::unexpected(now.error());
    return now->approved && now->approved->id == entry.id;
}

Findings judged(const Batch& batch, const Entry& entry, const ReturnApproved& approval, int line) {
    std::vector<Problem> problems;
    const auto capacity = capacityFrom(approval.capacity);
    if (!capacity) {
        problems.push_back(Problem{BenchFault::NoCapacityToSignIn, {approval.capacity}, {{}, line, "capacity"}});
        return problems;
    }
    const auto file = returnFile(batch.books, approval.inspection, entry.on, &entry);
    if (!file && file.error().fault == Fault(ReleaseFault::ListAnswered))
        return std::vector{atLine(file.error(), line)};
    if (!file)
        return tl::unexpected(atLine(file.error(), line));
    const Approving approving{approval.signatory, *capacity, entry.on};
    for (const auto& refusal : refusals(*file, approving))
        problems.push_back(atLine(problemOf(refusal), line));
    askConfirmed(wordingAsked(*file, approving), approval.confirmed, line, problems);
    if (!problems.empty())
        return problems;
    const auto spoken = speaks(batch.books, entry, approval.inspection);
    if (!spoken)
        return tl::unexpected(atLine(spoken.error(), line));
    if (!*spoken)
        problems.push_back(
            Problem{ReleaseFault::ApprovedBefore, {file->list.closed.at.on()}, {{}, line, entry.time ? "time" : "on"}});
    compare(approval, composedApproval(*file, approving), line, problems);
    return problems;
}

}

Findings askReturns(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries)
        if (const auto* approval = std::get_if<ReturnApproved>(&entry.body)) {
            auto found = judged(batch, entry, *approval, line);
            if (!found)
                return found;
            problems.insert(problems.end(), found->begin(), found->end());
        }
    return problems;
}

}
