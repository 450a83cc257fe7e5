// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/bench_file.h"
#include "bench/release/barred_phrase.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"
#include "text/blank.h"

#include <algorithm>

namespace crownring {

namespace {

/// Who decides of a grade is our reading of these.
constexpr const char* gradingRule = "ML.A.403(a), (b); 14 CFR 43.11(b), 91.405";

/// The grade that a correction states; nothing where it leaves the grade alone.
std::optional<Severity> statedBy(const Entry& entry) {
    const auto* correction = std::get_if<EntryCorrected>(&entry.body);
    const auto stated = correction ? textUnder(*correction, "severity") : std::nullopt;
    return stated ? severityFrom(*stated) : std::nullopt;
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

/// Who found it takes his own word back: at once, before anybody wrote another, or in an inspection that is open, since
/// nothing of that is signed yet.
Result<bool> takesBackOwnWord(const Batch& batch, const Entry& entry, const JournalLine& root,
                              const DefectFound& written) {
    if (isBlank(entry.by) || entry.by != root.entry.by)
        return false;
    const auto line = batch.journal.line(entry.id);
    if (!line)
        return tl::unexpected(line.error());
    constexpr int withItsReading = 2;
    if (*line && (*line)->number - root.number <= withItsReading)
        return true;
    if (!written.inspection)
        return false;
    const auto told = batch.books.told(
        {Subject::Inspection, written.inspection->text(), {kindName<InspectionClosed>()}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    return told->empty();
}

/// Nothing where the person may decide that what was found is less.
Result<std::optional<Barred>> mayDecide(Books& books, const Entry& entry, const JournalLine& root,
                                        const DefectFound& written) {
    const auto entitlements = entitlementsOn(books, entry.on);
    if (!entitlements)
        return tl::unexpected(entitlements.error());
    const auto facts = books.facts({std::nullopt, {written.item}}, entry.on);
    if (!facts)
        return tl::unexpected(facts.error());
    const ItemFacts item = facts->empty() ? ItemFacts{} : facts->front();
    const PersonId person(entry.by);
    std::optional<Barred> bar = Barred{{BarredPhrase::EntitledToNothing, {person, entry.on}}, gradingRule};
    for (const auto& each : *entitlements) {
        if (each.person != person || isOfReviewers(each.capacity))
            continue;
        const Signatory signatory{person, each.capacity, item.balloon, item.operations, entry.on};
        if (auto lacks = notEntitled(*entitlements, signatory)) {
            bar = std::move(lacks);
            continue;
        }
        if (each.capacity != Capacity::PilotOwner && each.capacity != Capacity::PrivatePilot)
            return std::optional<Barred>();
        if (entry.by == root.entry.by && !isUnderSubpartAdd(item.operations))
            return std::optional<Barred>();
        bar = Barred{{BarredPhrase::OwnFindingsOnly, {person}}, gradingRule};
    }
    return bar;
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
    const auto made = madeOf(batch, entry, *root, *written);
    if (!made)
        return tl::unexpected(made.error());
    if (*made == Made::NoLess)
        return std::vector<Problem>{};
    const auto own = takesBackOwnWord(batch, entry, *root, *written);
    if (!own)
        return tl::unexpected(own.error());
    if (*own)
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
    const auto bar = mayDecide(batch.books, entry, *root, *written);
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
