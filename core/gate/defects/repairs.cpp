// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/defects/read_again.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"
#include "registry/reading_said.h"

namespace crownring {

Findings askRepairs(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<RepairMade>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        const auto* repair = *now ? std::get_if<RepairMade>(&(*now)->body) : nullptr;
        if (!repair || !repair->defect)
            continue;
        const auto failed = failedReading(batch, *repair->defect, repair->item);
        if (!failed)
            return tl::unexpected(atLine(failed.error(), line));
        const auto* reading = *failed ? std::get_if<ReadingTaken>(&(*failed)->body) : nullptr;
        if (reading && reading->place.isOnePanel() && repair->place != reading->place)
            problems.push_back(asAmended(Problem{ReleaseFault::RepairElsewhere,
                                                 {*repair->defect, said(*reading)},
                                                 {{}, line, "gore"},
                                                 "ML.A.403(a); 14 CFR 43.13(b) (from memory)"},
                                         entry));
    }
    return problems;
}

}
