// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/bench_file.h"
#include "bench/release/barred_phrase.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"
#include "rules/due/defects.h"

namespace crownring {

namespace {

/// @param entry the deferral as it stands now
Findings judged(Books& books, const Entry& entry, const DefectDeferred& deferral, int line) {
    const auto entitlements = entitlementsOn(books, entry.on);
    if (!entitlements)
        return tl::unexpected(entitlements.error());
    const auto facts = books.facts({std::nullopt, {deferral.item}}, entry.on);
    if (!facts)
        return tl::unexpected(facts.error());
    const ItemFacts item = facts->empty() ? ItemFacts{} : facts->front();
    Deferral asked{Severity::Deferrable, deferral.notRequired, !deferral.placard.empty()};
    for (const auto& mark : item.defects)
        if (mark.defect == deferral.defect && mark.kind == DefectMark::Kind::Found) {
            if (isGrounding(mark))
                return std::vector{Problem{ReleaseFault::NobodyDefers,
                                           {mark.failed ? Phrase{BarredPhrase::FailedReading, {deferral.defect}}
                                                        : Phrase{BarredPhrase::DangerToFlight, {}}},
                                           {{}, line, {}},
                                           "ML.A.403(a), (b) (from memory); 14 CFR 91.405"}};
            asked.severity = mark.severity;
        }
    Barred bar{{BarredPhrase::EntitledToNothing, {deferral.agreedBy, entry.on}}, "ML.A.403(b) (from memory)"};
    for (const auto& each : *entitlements) {
        if (each.person != deferral.agreedBy)
            continue;
        auto next =
            mayDefer(*entitlements, {each.person, each.capacity, item.balloon, item.operations, entry.on}, asked);
        if (!next)
            return std::vector<Problem>{};
        bar = std::move(*next);
    }
    return std::vector{Problem{ReleaseFault::MayNotDefer, {bar.why}, {{}, line, {}}, bar.rule}};
}

}

Findings askDeferrals(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto deferral = standingAs<DefectDeferred>(batch.journal, entry);
        if (!deferral)
            return tl::unexpected(atLine(deferral.error(), line));
        if (!*deferral)
            continue;
        auto found = judged(batch.books, **deferral, std::get<DefectDeferred>((*deferral)->body), line);
        if (!found)
            return tl::unexpected(atLine(found.error(), line));
        problems.insert(problems.end(), found->begin(), found->end());
    }
    return problems;
}

}
