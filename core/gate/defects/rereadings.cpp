// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/defects/read_again.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"
#include "registry/reading_said.h"

namespace crownring {

Findings askRereadings(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<DefectCleared>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        const auto* cleared = *now ? std::get_if<DefectCleared>(&(*now)->body) : nullptr;
        if (!cleared)
            continue;
        const auto failed = failedReading(batch, cleared->defect, cleared->item);
        if (!failed)
            return tl::unexpected(atLine(failed.error(), line));
        const auto again = *failed ? isReadAgain(batch, **now, **failed) : true;
        if (!again)
            return tl::unexpected(atLine(again.error(), line));
        if (!*again)
            problems.push_back(Problem{ReleaseFault::NotReadAgain,
                                       {cleared->defect, said(std::get<ReadingTaken>((*failed)->body))},
                                       {{}, line, "defect"},
                                       "ML.A.403(a); 14 CFR 43.13(b) (from memory)"});
    }
    return problems;
}

}
