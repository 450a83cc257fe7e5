// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/checklist/checklist.h"
#include "bench/checklist/visit.h"
#include "bench/wording/wording.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/bench_fault.h"
#include "record/kinds/programmes.h"

namespace crownring {

namespace {

/// A character that nobody sees, in whatever of a checklist is read.
std::optional<Problem> unseenIn(const Checklist& checklist, const std::string& key) {
    std::vector<std::pair<const std::string*, std::string>> texts{{&checklist.title, "/title"},
                                                                  {&checklist.revision, "/revision"},
                                                                  {&checklist.source, "/source"},
                                                                  {&checklist.note, "/note"}};
    const auto at = [](const char* list, std::size_t number, const char* each) {
        return "/" + std::string(list) + "/" + std::to_string(number) + "/" + each;
    };
    for (std::size_t i = 0; i < checklist.sections.size(); ++i)
        texts.emplace_back(&checklist.sections[i].title, at("sections", i, "title"));
    for (std::size_t i = 0; i < checklist.lines.size(); ++i) {
        const auto& line = checklist.lines[i];
        texts.emplace_back(&line.title, at("lines", i, "title"));
        texts.emplace_back(&line.lookFor, at("lines", i, "look_for"));
        texts.emplace_back(&line.ownerRule, at("lines", i, "owner_rule"));
        for (const auto& [regime, source] : line.sources)
            texts.emplace_back(&source, at("lines", i, "sources"));
    }
    for (const auto& [text, where] : texts)
        if (auto hidden = hiddenIn(*text, key + where))
            return hidden;
    return std::nullopt;
}

std::optional<Problem> unreadable(const std::string& document, const std::string& key) {
    if (document.empty())
        return std::nullopt;
    const auto checklist = checklistFrom(document);
    if (checklist)
        return unseenIn(*checklist, key);
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
