// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/checklist/checklist.h"
#include "bench/checklist/visit.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/bench_fault.h"
#include "record/kinds/programmes.h"

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
    if (!opened)
        return std::nullopt;
    const auto visit = *visitFrom(opened->visit);
    if (!isPeriodic(visit) || regimeOf(visit) != Regime::PartMl)
        for (const auto& work : opened->work)
            if (isOfReviews(
                    work.requirement)) // ML.A.901(b), (c): while the annual or 100-hour inspection, or by itself
                return Problem{BenchFault::NotOfTheVisit, {work.requirement, termOf(visit)}, atKey("work")};
    return unreadable(opened->checklist, "checklist");
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
