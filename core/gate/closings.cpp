// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/bench_file.h"
#include "bench/release/release.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/bench_fault.h"

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
        problems.push_back(Problem{BenchFault::NoCapacityToSignIn, {closing.capacity}, {{}, line, "capacity"}});
        return problems;
    }
    // The closing itself is in the record by now.
    if (!file->inspection.closed || file->inspection.closed->id != entry.id) {
        problems.push_back(Problem{ReleaseFault::ClosedByAnother, {}, {{}, line, {}}});
        return problems;
    }
    file->inspection.closed.reset();
    for (const auto& refusal : refusals(
             *file, {closing.outcome, *closing.signatory, *capacity, closing.manuals, closing.limitations, entry.on}))
        problems.push_back(atLine(problemOf(refusal), line));
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
