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

}

Findings askClearings(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& each : batch.entries) {
        const auto& entry = each.entry;
        const auto* cleared = std::get_if<DefectCleared>(&entry.body);
        if (!cleared)
            continue;
        const auto found =
            batch.books.told({Subject::Defect, cleared->defect.text(), {kindName<DefectFound>()}, CivilDate::last()});
        if (!found)
            return tl::unexpected(atLine(found.error(), each.line));
        const auto later = [&](const JournalLine& finding) { return isBefore(entry, nowOf(finding)); };
        if (!found->empty() && std::ranges::all_of(*found, later))
            problems.push_back(Problem{ReleaseFault::ClearedBefore,
                                       {cleared->defect, nowOf(found->front()).on},
                                       {{}, each.line, entry.time ? "time" : "on"}});
    }
    return problems;
}

}
