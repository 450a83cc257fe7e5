// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/bench_file.h"
#include "bench/release/release.h"
#include "gate/checks.h"
#include "gate/refusing.h"

namespace crownring {

namespace {

Findings judged(const Batch& batch, const Entry& entry, const InspectionClosed& closing, int line) {
    std::vector<Problem> problems;
    if (closing.outcome == Outcome::Abandoned)
        return problems;
    auto file = benchFile(batch.books, closing.inspection, entry.on);
    if (!file)
        return tl::unexpected(atLine(file.error(), line));
    const auto capacity = capacityFrom(closing.capacity);
    if (!capacity) {
        problems.push_back({Code::BadValue,
                            "'" + closing.capacity + "' is no capacity in which one signs",
                            "independent-certifying-staff, inspection-authorization …",
                            {{}, line, "capacity"}});
        return problems;
    }
    // The closing itself is in the record by now.
    if (!file->inspection.closed || file->inspection.closed->id != entry.id) {
        problems.push_back(
            notReleasable("the inspection is closed by another entry already", "close it once", "", line));
        return problems;
    }
    file->inspection.closed.reset();
    for (const auto& refusal : refusals(
             *file, {closing.outcome, *closing.signatory, *capacity, closing.manuals, closing.limitations, entry.on}))
        problems.push_back(notReleasable(refusal.text, refusal.mend, refusal.rule, line));
    return problems;
}

}

Findings askClosings(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries)
        if (const auto* closing = std::get_if<InspectionClosed>(&entry.body)) {
            auto found = judged(batch, entry, *closing, line);
            if (!found)
                return found;
            problems.insert(problems.end(), found->begin(), found->end());
        }
    return problems;
}

}
