// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/series.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/reading_fault.h"

namespace crownring {

Findings askReadings(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<ReadingTaken>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        const auto* reading = *now ? std::get_if<ReadingTaken>(&(*now)->body) : nullptr;
        if (!reading)
            continue;
        const auto measured = measuredFrom(*reading);
        if (!measured && (measured.error().fault == Fault(ReadingFault::NoUnit) ||
                          measured.error().fault == Fault(ReadingFault::OtherDimension)))
            problems.push_back(asAmended(atLine(measured.error(), line), entry));
    }
    return problems;
}

}
