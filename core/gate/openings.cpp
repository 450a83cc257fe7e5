// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/checklist/checklist.h"
#include "bench/checklist/visit.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/bench_fault.h"

namespace crownring {

namespace {

std::optional<Problem> unreadable(const std::string& document, const std::string& key) {
    if (document.empty())
        return std::nullopt;
    const auto checklist = checklistFrom(document);
    if (checklist)
        return std::nullopt;
    auto problem = checklist.error();
    problem.where.key = key + problem.where.key;
    return problem;
}

std::optional<Problem> broken(const Body& body) {
    if (const auto* adopted = std::get_if<ChecklistAdopted>(&body))
        return unreadable(adopted->document, "document");
    const auto* opened = std::get_if<InspectionOpened>(&body);
    if (opened && !visitFrom(opened->visit))
        return Problem{BenchFault::NoVisit, {opened->visit, listed(visitNames())}, atKey("visit")};
    return opened ? unreadable(opened->checklist, "checklist") : std::nullopt;
}

}

Findings askOpenings(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<ChecklistAdopted, InspectionOpened>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        if (!*now)
            continue;
        if (auto found = broken((*now)->body))
            problems.push_back(atLine(asAmended(std::move(*found), entry), line));
    }
    return problems;
}

}
