// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"

#include <algorithm>

namespace crownring {

namespace {

/// By day; within one day only two stated times can stand the wrong way round.
bool isBefore(const Entry& clearing, const Entry& finding) {
    if (clearing.on != finding.on)
        return clearing.on < finding.on;
    return clearing.time && finding.time && momentOf(clearing) < momentOf(finding);
}

/// The defect that the order of finding and clearing is asked of: a finding as written comes before any clearing.
const DefectId* defectOf(const Entry& now, bool amended) {
    if (const auto* cleared = std::get_if<DefectCleared>(&now.body))
        return &cleared->defect;
    const auto* found = amended ? std::get_if<DefectFound>(&now.body) : nullptr;
    return found ? &found->defect : nullptr;
}

}

Findings askClearings(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<DefectFound, DefectCleared>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        const bool amended = *now && (*now)->id != entry.id;
        const auto* defect = *now ? defectOf(**now, amended) : nullptr;
        if (!defect)
            continue;
        const auto told = batch.books.told(
            {Subject::Defect, defect->text(), {kindName<DefectFound>(), kindName<DefectCleared>()}, CivilDate::last()});
        if (!told)
            return tl::unexpected(atLine(told.error(), line));
        std::vector<const Entry*> findings, clearings;
        for (const auto& each : *told)
            (std::holds_alternative<DefectFound>(nowOf(each).body) ? findings : clearings).push_back(&nowOf(each));
        for (const auto* clearing : clearings) {
            const bool asked = clearing->id == (*now)->id || std::holds_alternative<DefectFound>((*now)->body);
            if (asked && !findings.empty() &&
                std::ranges::all_of(findings, [&](const Entry* finding) { return isBefore(*clearing, *finding); }))
                problems.push_back(Problem{ReleaseFault::ClearedBefore,
                                           {*defect, findings.front()->on},
                                           {{}, line, clearing->time ? "time" : "on"}});
        }
    }
    return problems;
}

}
