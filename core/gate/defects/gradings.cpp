// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/defects/deciding.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"
#include "record/amendment.h"
#include "text/blank.h"

#include <algorithm>
#include <span>

namespace crownring {

namespace {

/// The grade that a correction states; nothing where it leaves the grade alone.
std::optional<Severity> statedBy(const Entry& entry) {
    const auto* correction = std::get_if<EntryCorrected>(&entry.body);
    const auto stated = correction ? textUnder(*correction, "severity") : std::nullopt;
    return stated ? severityFrom(*stated) : std::nullopt;
}

/// A finding as it stood before it was amended.
struct Stood {
    std::optional<DefectFound> found; ///< nothing where it was voided
    bool byOneHand = true;            ///< nobody but who amends it now had a word in it
};
Result<Stood> stoodBefore(const Batch& batch, const Entry& amendment, const EntryId& finding) {
    auto said = batch.books.amendments(finding);
    if (!said)
        return tl::unexpected(said.error());
    const auto own = std::ranges::find(*said, amendment.id, &Entry::id);
    const std::span before(said->begin(), own);
    Stood stood;
    stood.byOneHand = std::ranges::all_of(before, [&](const Entry& each) { return each.by == amendment.by; });
    if (before.empty())
        return stood;
    const auto entry = amended(before.front(), before.subspan(1)).entry;
    if (const auto* found = entry ? std::get_if<DefectFound>(&entry->body) : nullptr)
        stood.found = *found;
    return stood;
}

/// What an amendment makes of a defect that bars flight.
enum class Made { NoLess, Less, Gone };

Result<Made> madeOf(const Batch& batch, const Entry& entry, const JournalLine& root, const DefectFound& written) {
    const auto* taken = std::get_if<EntryVoided>(&entry.body);
    if (taken && taken->voids == root.entry.id)
        return rankOf(std::get<DefectFound>(nowOf(root).body).severity) > 0 ? Made::Gone : Made::NoLess;
    const auto* now = std::get_if<DefectFound>(&nowOf(root).body);
    if (taken) {
        const auto voided = batch.journal.line(taken->voids);
        if (!voided)
            return tl::unexpected(voided.error());
        const auto stated = *voided ? statedBy((*voided)->entry) : std::nullopt;
        return now && stated && rankOf(now->severity) < rankOf(*stated) ? Made::Less : Made::NoLess;
    }
    if (now && (now->item != written.item || now->defect != written.defect) && rankOf(written.severity) > 0)
        return Made::Gone; // it is open there no more
    const bool isMoved = now && root.current && momentOf(root.entry) < momentOf(*root.current) &&
                         (textUnder(std::get<EntryCorrected>(entry.body), "on") ||
                          textUnder(std::get<EntryCorrected>(entry.body), "time"));
    if (isMoved && rankOf(written.severity) > 0)
        return Made::Less; // until then it grounds nothing
    const auto stated = statedBy(entry);
    return stated && rankOf(*stated) < rankOf(written.severity) ? Made::Less : Made::NoLess;
}

Findings judgedGrading(const Batch& batch, const Entry& entry, int line) {
    const auto amended = amendedRoot(batch.journal, entry);
    if (!amended)
        return tl::unexpected(amended.error());
    if (!*amended)
        return std::vector<Problem>{};
    const auto* root = &**amended;
    const auto* written = std::get_if<DefectFound>(&root->entry.body);
    if (!written || root->unread || !std::holds_alternative<DefectFound>(nowOf(*root).body))
        return std::vector<Problem>{};
    const auto before = stoodBefore(batch, entry, root->entry.id);
    if (!before)
        return tl::unexpected(before.error());
    const auto made = madeOf(batch, entry, *root, before->found.value_or(*written));
    if (!made)
        return tl::unexpected(made.error());
    if (*made == Made::NoLess)
        return std::vector<Problem>{};
    const auto own = takesBackOwnWord(batch, entry, *root, written->inspection);
    if (!own)
        return tl::unexpected(own.error());
    if (*own && before->byOneHand)
        return std::vector<Problem>{};
    const auto& now = std::get<DefectFound>(nowOf(*root).body);
    const auto* taken = std::get_if<EntryVoided>(&entry.body);
    const bool unsaid = !taken ? isBlank(entry.note) || !now.gradedBy || now.gradedBy->text() != entry.by
                               : isBlank(taken->reason) || isBlank(entry.by);
    if (unsaid)
        return std::vector{Problem{ReleaseFault::GradedDownUnsaid,
                                   {written->defect},
                                   {{}, line, taken ? "by" : "with/graded_by"},
                                   gradingRule}};
    const auto bar = mayDecide(batch.books, entry, written->item, root->entry.by);
    if (!bar)
        return tl::unexpected(bar.error());
    if (*bar)
        return std::vector{Problem{ReleaseFault::MayNotGradeDown, {(*bar)->why}, {{}, line, "by"}, gradingRule}};
    return std::vector<Problem>{};
}

}

Findings askGradings(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        auto found = judgedGrading(batch, entry, line);
        if (!found)
            return tl::unexpected(atLine(found.error(), line));
        std::ranges::move(*found, std::back_inserter(problems));
    }
    return problems;
}

}
