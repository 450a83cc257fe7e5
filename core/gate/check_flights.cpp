// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/visit/check_flights.h"

#include "answers/bench_file.h"
#include "gate/checks.h"
#include "gate/refusing.h"

#include <algorithm>
#include <iterator>

namespace crownring {

namespace {

Findings judgedFlights(const Batch& batch, const InspectionId& inspection, const Entry& entry, int line) {
    const auto file = benchFileBefore(batch.books, inspection, entry.id, entry.on);
    if (!file)
        return tl::unexpected(file.error());
    const auto refused = refusalsOfCheckFlights(batch.books, *file, entry.on);
    if (!refused)
        return tl::unexpected(refused.error());
    std::vector<Problem> problems;
    for (const auto& each : *refused)
        problems.push_back(atLine(problemOf(each), line));
    return problems;
}

}

Findings askCheckFlights(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto* closing = std::get_if<InspectionClosed>(&entry.body);
        if (!closing || closing->outcome != Outcome::Released)
            continue;
        auto found = judgedFlights(batch, closing->inspection, entry, line);
        if (!found)
            return tl::unexpected(atLine(found.error(), line));
        std::ranges::move(*found, std::back_inserter(problems));
    }
    return problems;
}

}
