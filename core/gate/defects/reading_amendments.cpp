// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/bench_file.h"
#include "gate/checks.h"
#include "gate/defects/deciding.h"
#include "gate/defects/read_again.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"
#include "registry/reading_said.h"

#include <algorithm>

namespace crownring {

namespace {

constexpr const char* rereadRule = "ML.A.403(a); 14 CFR 43.13(b) (from memory)";

/// A reading before an amendment, and after it.
struct Moved {
    JournalLine root;
    Entry before;
    std::optional<Entry> now;
    std::vector<LimitSpan> limits;

    [[nodiscard]] const ReadingTaken& was() const { return std::get<ReadingTaken>(before.body); }
    [[nodiscard]] Judgement judged() const { return judgedAsTaken(was(), momentOf(before), limits); }
    /// It says the same of the same place, from the same moment on.
    [[nodiscard]] bool stands() const {
        const auto* is = now ? std::get_if<ReadingTaken>(&now->body) : nullptr;
        return is && is->item == was().item && takesThePlaceOf(*is, was()) && takesThePlaceOf(was(), *is) &&
               momentOf(*now) == momentOf(before) && judgedAsTaken(*is, momentOf(*now), limits) == judged();
    }
    /// Beyond the bound in the same place, it grounds by itself.
    [[nodiscard]] bool failsNow() const {
        const auto* is = now ? std::get_if<ReadingTaken>(&now->body) : nullptr;
        return is && is->item == was().item && takesThePlaceOf(*is, was()) &&
               judgedAsTaken(*is, momentOf(*now), limits) == Judgement::Fails;
    }
};

Result<std::optional<Moved>> movedBy(const Batch& batch, const Entry& entry) {
    auto root = amendedRoot(batch.journal, entry);
    if (!root)
        return tl::unexpected(root.error());
    if (!*root || (*root)->unread || !std::holds_alternative<ReadingTaken>((*root)->entry.body))
        return std::nullopt;
    auto before = batch.journal.before(entry.id);
    if (!before)
        return tl::unexpected(before.error());
    if (!*before || !std::holds_alternative<ReadingTaken>((*before)->body))
        return std::nullopt;
    auto limits = limitsEver(batch.books, std::get<ReadingTaken>((*before)->body).item);
    if (!limits)
        return tl::unexpected(limits.error());
    auto now = (*root)->voided ? std::nullopt : std::optional(nowOf(**root));
    return Moved{std::move(**root), std::move(**before), std::move(now), std::move(*limits)};
}

/// What a reading beyond the bound says is taken away by who may decide that of a defect, whoever wrote one down.
Findings askedOfFailing(const Batch& batch, const Entry& entry, const Moved& moved, int line) {
    return askWhoTakesBack(
        batch, entry,
        {moved.root, moved.was().inspection, moved.was().item, ReleaseFault::ReadingUnsaid, said(moved.was())}, line);
}

/// The reading on which a clearing rests stays as long as the clearing does: else nothing shows that the defect is put
/// right, and it would be open nowhere.
Findings askedOfPassing(const Batch& batch, const Moved& moved, int line) {
    const auto facts = batch.books.facts({{}, {moved.was().item}}, CivilDate::last());
    if (!facts)
        return tl::unexpected(facts.error());
    std::vector<Problem> problems;
    if (facts->empty())
        return problems;
    for (const auto& mark : facts->front().defects) {
        if (mark.kind != DefectMark::Kind::Cleared)
            continue;
        const auto failed = failedReading(batch, mark.defect, moved.was().item);
        if (!failed)
            return tl::unexpected(failed.error());
        if (!*failed || !takesThePlaceOf(moved.was(), std::get<ReadingTaken>((*failed)->body)))
            continue;
        const auto clearing = batch.journal.line(mark.stamp.id);
        if (!clearing)
            return tl::unexpected(clearing.error());
        if (!*clearing)
            continue;
        const auto again = isReadAgain(batch, nowOf(**clearing), **failed);
        if (!again)
            return tl::unexpected(again.error());
        if (!*again)
            problems.push_back(
                Problem{ReleaseFault::ClearingRestsOnIt, {mark.defect, said(moved.was())}, {{}, line, {}}, rereadRule});
    }
    return problems;
}

}

Findings askReadingAmendments(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto moved = movedBy(batch, entry);
        if (!moved)
            return tl::unexpected(atLine(moved.error(), line));
        if (!*moved || (*moved)->stands())
            continue;
        const auto judged = (*moved)->judged();
        auto found = judged == Judgement::Fails ? askedOfFailing(batch, entry, **moved, line)
                     : judged == Judgement::Passes && !(*moved)->failsNow() ? askedOfPassing(batch, **moved, line)
                                                                            : Findings(std::vector<Problem>{});
        if (!found)
            return tl::unexpected(atLine(found.error(), line));
        std::ranges::move(*found, std::back_inserter(problems));
    }
    return problems;
}

}
