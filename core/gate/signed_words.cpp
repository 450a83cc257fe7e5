// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/bench_fault.h"
#include "problem/faults/release_fault.h"
#include "trust/proof.h"

#include <algorithm>

namespace crownring {

namespace {

/// What a signature covers stays as it was written.
void compare(const JournalLine& root, const InspectionClosed& written, int line, std::vector<Problem>& problems) {
    const auto refuse = [&](BenchFault fault, const char* key) {
        problems.push_back(Problem{fault, {}, {{}, line, std::string("with/") + key}});
    };
    if (momentOf(root.entry) != momentOf(*root.current))
        refuse(BenchFault::SignatureDayIsFixed, "on");
    const auto& now = std::get<InspectionClosed>(root.current->body);
    const auto keep = [&](bool same, const char* key) {
        if (!same)
            refuse(BenchFault::SignatureIsFixed, key);
    };
    keep(written.outcome == now.outcome, "outcome");
    keep(written.inspection == now.inspection, "inspection");
    keep(written.signatory == now.signatory, "signatory");
    keep(written.capacity == now.capacity, "capacity");
    keep(written.statement == now.statement, "statement");
    keep(written.clocks == now.clocks, "clocks");
    keep(written.seal == now.seal, "seal");
    keep(written.excepted == now.excepted, "excepted");
    keep(written.proof == now.proof, "proof");
    keep(written.confirmed == now.confirmed, "confirmed");
}

/// Nor does what it accomplished become another accomplishment.
void compare(const JournalLine& root, const RequirementDone& written, int line, std::vector<Problem>& problems) {
    if (momentOf(root.entry) != momentOf(*root.current))
        problems.push_back(Problem{BenchFault::SignatureDayIsFixed, {}, {{}, line, "with/on"}});
    if (written != std::get<RequirementDone>(root.current->body))
        problems.push_back(Problem{BenchFault::SignatureIsFixed, {}, {{}, line, "with"}});
}

void compare(const JournalLine& root, const ReturnApproved& written, int line, std::vector<Problem>& problems) {
    if (momentOf(root.entry) != momentOf(*root.current))
        problems.push_back(Problem{BenchFault::SignatureDayIsFixed, {}, {{}, line, "with/on"}});
    if (written != std::get<ReturnApproved>(root.current->body))
        problems.push_back(Problem{BenchFault::SignatureIsFixed, {}, {{}, line, "with"}});
}

void compare(const JournalLine& root, const ReleaseIncomplete& written, int line, std::vector<Problem>& problems) {
    if (momentOf(root.entry) != momentOf(*root.current))
        problems.push_back(Problem{BenchFault::SignatureDayIsFixed, {}, {{}, line, "with/on"}});
    if (written != std::get<ReleaseIncomplete>(root.current->body))
        problems.push_back(Problem{BenchFault::SignatureIsFixed, {}, {{}, line, "with"}});
}

/// The inspection was closed before the entry came.
Result<bool> isSigned(const Batch& batch, const Entry& entry, const InspectionId& inspection,
                      std::vector<std::string_view> by = {kindName<InspectionClosed>()}) {
    const auto closed = batch.books.told({Subject::Inspection, inspection.text(), std::move(by), CivilDate::last()});
    if (!closed)
        return tl::unexpected(closed.error());
    const auto written = batch.journal.line(entry.id);
    if (!written)
        return tl::unexpected(written.error());
    return std::ranges::any_of(*closed,
                               [&](const JournalLine& each) { return *written && each.number < (*written)->number; });
}

/// A correction under a signature that does not say by whom it is, or why.
Result<bool> isUnsaid(const Batch& batch, const Entry& entry, const JournalLine& root) {
    const auto inspection = inspectionOf(root.entry.body);
    if (!inspection || unsaidIn(entry).empty())
        return false;
    return isSigned(batch, entry, *inspection);
}

}

Findings askSignedWords(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto* correction = std::get_if<EntryCorrected>(&entry.body);
        if (!correction)
            continue;
        const auto root = rootOf(batch.journal, correction->replaces);
        if (!root)
            return tl::unexpected(atLine(root.error(), line));
        const auto unsaid = isUnsaid(batch, entry, *root);
        if (!unsaid)
            return tl::unexpected(atLine(unsaid.error(), line));
        if (*unsaid)
            problems.push_back(Problem{ReleaseFault::CorrectedUnsaid,
                                       {*inspectionOf(root->entry.body)},
                                       {{}, line, std::string(unsaidIn(entry))}});
        if (!root->current)
            continue;
        const auto told = problems.size();
        if (const auto* closing = std::get_if<InspectionClosed>(&root->entry.body))
            compare(*root, *closing, line, problems);
        if (const auto* approval = std::get_if<ReturnApproved>(&root->entry.body))
            compare(*root, *approval, line, problems);
        if (const auto* incomplete = std::get_if<ReleaseIncomplete>(&root->entry.body))
            compare(*root, *incomplete, line, problems);
        if (const auto* revoked = std::get_if<ReleaseRevoked>(&root->entry.body)) {
            const auto& now = std::get<ReleaseRevoked>(root->current->body);
            if (revoked->inspection != now.inspection)
                problems.push_back(Problem{BenchFault::SignatureIsFixed, {}, {{}, line, "with/inspection"}});
            if (revoked->proof != now.proof)
                problems.push_back(Problem{BenchFault::SignatureIsFixed, {}, {{}, line, "with/proof"}});
            if (root->entry.by != root->current->by) // that is who signed it
                problems.push_back(Problem{BenchFault::SignatureIsFixed, {}, {{}, line, "with/by"}});
            if (momentOf(root->entry) != momentOf(*root->current))
                problems.push_back(Problem{BenchFault::SignatureDayIsFixed, {}, {{}, line, "with/on"}});
        }
        if (const auto* found = std::get_if<DefectFound>(&root->entry.body); found && found->inspection) {
            // What was found later, or later than it was signed, would be on no list.
            const auto closed = isSigned(batch, entry, *found->inspection);
            if (!closed)
                return tl::unexpected(atLine(closed.error(), line));
            if (*closed && momentOf(root->entry) != momentOf(*root->current))
                problems.push_back(Problem{BenchFault::SignatureIsFixed, {}, {{}, line, "with/on"}});
        }
        if (const auto* opened = std::get_if<InspectionOpened>(&root->entry.body)) {
            const auto closed = isSigned(batch, entry, opened->inspection,
                                         {kindName<InspectionClosed>(), kindName<ReleaseIncomplete>()});
            if (!closed)
                return tl::unexpected(atLine(closed.error(), line));
            const auto& now = std::get<InspectionOpened>(root->current->body);
            // Its name is what all that was said of it goes by; once it is signed, what was to be done stands.
            if (opened->inspection != now.inspection || (*closed && *opened != now))
                problems.push_back(Problem{BenchFault::SignatureIsFixed, {}, {{}, line, "with"}});
        }
        // Whatever is proven is a text to the last word: who wants another withdraws this one and signs anew.
        if (!std::holds_alternative<ReleaseRevoked>(root->entry.body) && proofIn(root->entry) &&
            problems.size() == told && provenDigest(root->entry) != provenDigest(*root->current))
            problems.push_back(Problem{BenchFault::SignatureIsFixed, {}, {{}, line, "with"}});
        if (const auto* done = std::get_if<RequirementDone>(&root->entry.body)) {
            const auto inspection = accomplishedBy(batch.books, *done);
            if (!inspection)
                return tl::unexpected(atLine(inspection.error(), line));
            if (*inspection)
                compare(*root, *done, line, problems);
        }
    }
    return problems;
}

}
