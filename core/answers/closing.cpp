// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/closing.h"

#include "bench/confirmed/wording_refusals.h"
#include "bench/release/accomplished.h"
#include "problem/faults/bench_fault.h"
#include "record/chain/chain.h"

namespace crownring {

namespace {

/// All that was said of the inspection, in its order.
Result<std::vector<EntryId>> sealedEntries(Books& books, const InspectionId& inspection, const EntryId& closing) {
    const auto told = books.told({Subject::Inspection, inspection.text(), {}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    std::vector<EntryId> entries;
    for (const auto& line : *told)
        if (line.entry.id != closing)
            entries.push_back(line.entry.id);
    return entries;
}

Result<Seal> sealOver(Journal& journal, Books& books, const InspectionId& inspection, const EntryId& signature) {
    auto sealed = sealedEntries(books, inspection, signature);
    if (!sealed)
        return tl::unexpected(sealed.error());
    auto digest = sealDigest(journal, *sealed);
    if (!digest)
        return tl::unexpected(digest.error());
    return Seal{std::move(*sealed), std::move(*digest)};
}

}

Result<InspectionClosed> composedClosing(Journal& journal, Books& books, const BenchFile& file, const Signing& signing,
                                         const EntryId& closing) {
    const auto facts = releaseFacts(file, signing);
    InspectionClosed composed;
    composed.inspection = file.inspection.id;
    composed.outcome = signing.outcome;
    composed.statement = statementOf(facts).text;
    if (signing.outcome != Outcome::Abandoned) { // nothing is signed for
        composed.signatory = signing.person;
        composed.capacity = std::string(capacityName(signing.capacity));
        composed.licence = facts.licence;
    }
    composed.manuals = signing.manuals;
    composed.limitations = signing.limitations;
    for (const auto& item : file.items)
        composed.clocks.push_back({item.id, item.clock});
    if (signing.outcome != Outcome::Abandoned)
        for (const auto& each : file.excepted)
            composed.excepted.push_back(
                {each.item, each.requirement, each.title.written(), std::string(standingText(each.standing))});
    composed.confirmed = confirmedFor(wordingAsked(file, signing));
    auto seal = sealOver(journal, books, file.inspection.id, closing);
    if (!seal)
        return tl::unexpected(seal.error());
    composed.seal = std::move(*seal);
    return composed;
}

Result<ReleaseIncomplete> composedIncomplete(Journal& journal, Books& books, const BenchFile& file,
                                             const Signing& signing, const EntryId& release) {
    const auto facts = releaseFacts(file, signing);
    ReleaseIncomplete composed;
    composed.inspection = file.inspection.id;
    composed.statement = statementOf(facts).text;
    composed.signatory = signing.person;
    composed.capacity = std::string(capacityName(signing.capacity));
    composed.licence = facts.licence;
    composed.manuals = signing.manuals;
    composed.limitations = signing.limitations;
    composed.outstanding = outstandingLines(file, signing.outstanding);
    composed.covers = coveredOnceDone(file, signing.outstanding);
    composed.within = signing.within;
    composed.confirmed = confirmedFor(wordingAsked(file, signing));
    auto seal = sealOver(journal, books, file.inspection.id, release);
    if (!seal)
        return tl::unexpected(seal.error());
    composed.seal = std::move(*seal);
    return composed;
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
