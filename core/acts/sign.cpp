// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/sign.h"

#include "acts/post.h"
#include "answers/bench_file.h"
#include "problem/faults/bench_fault.h"

namespace crownring {

namespace {

/// All that was said on the bench, in its order.
std::vector<EntryId> sealedEntries(Books& books, const InspectionId& inspection) {
    std::vector<EntryId> entries;
    if (const auto told = books.told({Subject::Inspection, inspection.text(), {}, CivilDate::last()}))
        for (const auto& line : *told)
            entries.push_back(line.entry.id);
    return entries;
}

Entry signedEntry(const Signing& signing, std::optional<TimeOfDay> time, Body body) {
    Entry entry;
    entry.on = signing.on;
    entry.time = time;
    entry.by = signing.person.text();
    entry.body = std::move(body);
    return entry;
}

}

Result<ReleaseDraft> draftRelease(Books& books, const InspectionId& inspection, const Signing& signing) {
    auto file = benchFile(books, inspection, signing.on);
    if (!file)
        return tl::unexpected(file.error());
    ReleaseDraft draft;
    draft.file = std::move(*file);
    draft.facts = releaseFacts(draft.file, signing);
    draft.sections = sectionsOf(draft.facts);
    draft.statement = statementOf(draft.facts);
    draft.refusals = refusals(draft.file, signing);
    draft.accomplishments = accomplishments(draft.file);
    return draft;
}

Results<Receipt> sign(Journal& journal, Books& books, const InspectionId& inspection, const Signing& signing,
                      std::optional<TimeOfDay> time) {
    auto draft = draftRelease(books, inspection, signing);
    if (!draft)
        return tl::unexpected(std::vector<Problem>{draft.error()});
    const auto sealed = sealedEntries(books, inspection);
    auto digest = sealDigest(journal, sealed);
    if (!digest)
        return tl::unexpected(std::vector<Problem>{digest.error()});
    InspectionClosed closing;
    closing.inspection = inspection;
    closing.outcome = signing.outcome;
    closing.statement = draft->statement.text;
    closing.signatory = signing.person;
    closing.capacity = std::string(capacityName(signing.capacity));
    closing.licence = draft->facts.licence;
    closing.manuals = signing.manuals;
    closing.limitations = signing.limitations;
    for (const auto& item : draft->file.items)
        closing.clocks.push_back({item.id, item.clock});
    closing.seal = Seal{sealed, std::move(*digest)};
    std::vector<NumberedEntry> entries;
    entries.push_back({signedEntry(signing, time, std::move(closing)), 0});
    if (signing.outcome == Outcome::Released)
        for (const auto& work : draft->accomplishments)
            entries.push_back(
                {signedEntry(signing, time, RequirementDone{work.item, work.requirement, {}, {}, inspection.text()}),
                 0});
    return post(journal, books, std::move(entries), {});
}

Result<std::string> sealDigest(Journal& journal, std::span<const EntryId> entries) {
    std::string hashes;
    for (const auto& id : entries) {
        const auto line = journal.line(id);
        if (!line)
            return tl::unexpected(line.error());
        if (!*line)
            return problem(BenchFault::EntryMissing, {id});
        hashes += hex((*line)->hash);
    }
    return hex(sha256(hashes));
}

}
