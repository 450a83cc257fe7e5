// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/bench_file.h"
#include "bench/checklist/shelf.h"
#include "bench/release/accomplished.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"

#include <algorithm>

namespace crownring {

namespace {

constexpr const char* checklistRule = "14 CFR 43.15(c)(1); ML.A.302(c)(4) (from memory)";

/// What comes in every such visit on what is inspected. What follows an event or a piece of work is left to who opens.
Checklist everyTime(const Checklist& whole, const BenchFile& file) {
    auto checklist = whole;
    checklist.lines.clear();
    for (const auto* line : linesFor(whole, file.visit()))
        if (line->onlyWith.empty() && line->after.empty())
            checklist.lines.push_back(*line);
    return checklist;
}

/// It has a line in that visit for each kind of item that is inspected.
bool reaches(const Checklist& checklist, const BenchFile& file) {
    const auto lines = linesFor(checklist, file.visit());
    return std::ranges::all_of(file.items, [&](const ItemFacts& item) {
        return std::ranges::any_of(lines, [&](const ChecklistLine* line) {
            return std::ranges::find(line->kinds, item.kind) != line->kinds.end();
        });
    });
}

/// An organisation's own list, under that name and revision, that was adopted by the day of the opening.
Result<std::optional<Checklist>> ownList(Books& books, const BenchFile& file) {
    const auto& used = file.inspection.checklist;
    const auto told =
        books.told({Subject::Checklist, {}, {kindName<ChecklistAdopted>()}, file.inspection.opened.stamp.at.on()});
    if (!told)
        return tl::unexpected(told.error());
    for (const auto& line : *told)
        if (const auto* adopted = std::get_if<ChecklistAdopted>(&nowOf(line).body))
            if (auto own = keptChecklist(adopted->document);
                own && own->id == used.id && own->revision == used.revision && reaches(*own, file))
                return std::move(*own);
    return std::nullopt;
}

/// The list that ships for such a visit.
std::optional<Checklist> shippedList(const BenchFile& file) {
    for (const auto& checklist : shelfRead())
        if (reaches(checklist, file))
            return checklist;
    return std::nullopt;
}

/// Then `bench/release/scope_refusals` asks whether it is whole.
bool isShipped(const Checklist& used) { return shelved(used.id, used.revision) != nullptr; }

/// Lines of the list in force that nobody has a word on, for each inspection of an item that would be accomplished.
Findings lacking(const BenchFile& file, const Checklist& inForce, int line) {
    auto inspection = file.inspection;
    inspection.checklist = everyTime(inForce, file);
    const auto lines = workLines(inspection, file.items);
    std::vector<Problem> problems;
    for (const auto& work : accomplishments(file)) {
        if (!accomplishes(file.visit(), work.requirement))
            continue;
        std::vector<std::string> missing;
        for (const auto& each : lines)
            if (each.line && each.isMissing() && (!each.item || each.item->id == work.item))
                missing.push_back(each.line->title);
        if (!missing.empty())
            problems.push_back(
                Problem{ReleaseFault::LinesLeftOut,
                        {titleOf(file, work.requirement), work.item, missing.front(), missing.size() - 1},
                        {{}, line, {}},
                        checklistRule});
    }
    return problems;
}

Findings judgedChecklist(const Batch& batch, const InspectionId& inspection, const Entry& entry, int line) {
    const auto file = benchFileBefore(batch.books, inspection, entry.id, entry.on);
    if (!file)
        return tl::unexpected(file.error());
    if (accomplishes(file->visit()).empty() || isShipped(file->inspection.checklist))
        return std::vector<Problem>{};
    auto inForce = ownList(batch.books, *file);
    if (!inForce)
        return tl::unexpected(inForce.error());
    if (!*inForce)
        *inForce = shippedList(*file);
    return *inForce ? lacking(*file, **inForce, line) : Findings(std::vector<Problem>{});
}

}

Findings askChecklists(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto* closing = std::get_if<InspectionClosed>(&entry.body);
        if (!closing || closing->outcome == Outcome::Abandoned)
            continue;
        auto found = judgedChecklist(batch, closing->inspection, entry, line);
        if (!found)
            return tl::unexpected(atLine(found.error(), line));
        std::ranges::move(*found, std::back_inserter(problems));
    }
    return problems;
}

}
