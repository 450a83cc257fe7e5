// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/bench_file.h"
#include "bench/checklist/checklist.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"
#include "text/near.h"

#include <algorithm>
#include <map>
#include <utility>

namespace crownring {

namespace {

/// From memory: who releases an inspection answers for the directives on what he inspected.
constexpr const char* directivesRule = "ML.A.303, ML.A.801(b); 14 CFR 39.7, 39.9, 91.403(a) (from memory)";

/// The lines of the list that an inspection was opened with; none where it was opened with none.
Result<std::vector<ChecklistLine>> linesOf(Books& books, const InspectionId& inspection) {
    const auto told =
        books.told({Subject::Inspection, inspection.text(), {kindName<InspectionOpened>()}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    std::vector<ChecklistLine> lines;
    for (const auto& line : *told)
        if (const auto* opened = std::get_if<InspectionOpened>(&nowOf(line).body); opened && !opened->checklist.empty())
            if (const auto checklist = keptChecklist(opened->checklist))
                lines.insert(lines.end(), checklist->lines.begin(), checklist->lines.end());
    return lines;
}

/// That every directive is carried out is not done while one stands against flight. What is amended after
/// the signature is held against what was signed, elsewhere.
Result<std::optional<Problem>> openDirective(const Batch& batch, const Entry& entry, const Entry& now,
                                             const ChecklistLine& line) {
    const auto& settled = std::get<LineSettled>(now.body);
    if (settled.state != LineState::Done || !asksForDirectives(line))
        return std::nullopt;
    const auto file = benchFile(batch.books, settled.inspection, now.on);
    if (!file)
        return tl::unexpected(file.error());
    if (!file->inspection.isOpen() && !std::holds_alternative<LineSettled>(entry.body))
        return std::nullopt;
    Listed open;
    for (const auto& each : file->directives)
        if (each.against)
            open.list.emplace_back(each.directive.text() + " (" + each.item.text() + ')');
    if (open.list.empty())
        return std::nullopt;
    return Problem{ReleaseFault::DirectiveOpen, {line.title, std::move(open)}, {{}, {}, "state"}, directivesRule};
}

}

Findings askSettledLines(const Batch& batch) {
    std::vector<Problem> problems;
    std::map<InspectionId, std::vector<ChecklistLine>> known;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<LineSettled>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        if (!*now)
            continue;
        const auto& settled = std::get<LineSettled>((*now)->body);
        auto lines = known.find(settled.inspection);
        if (lines == known.end()) {
            auto asked = linesOf(batch.books, settled.inspection);
            if (!asked)
                return tl::unexpected(atLine(asked.error(), line));
            lines = known.emplace(settled.inspection, std::move(*asked)).first;
        }
        const auto& all = lines->second;
        if (all.empty())
            continue;
        if (const auto its = std::ranges::find(all, settled.line, &ChecklistLine::id); its != all.end()) {
            const auto open = openDirective(batch, entry, **now, *its);
            if (!open)
                return tl::unexpected(atLine(open.error(), line));
            if (*open)
                problems.push_back(asAmended(atLine(**open, line), entry));
            continue;
        }
        const auto nearest = std::ranges::min_element(
            all, {}, [&](const ChecklistLine& each) { return slipsBetween(settled.line, each.id); });
        problems.push_back(
            asAmended(Problem{ReleaseFault::NoSuchLine, {settled.line, nearest->id}, {{}, line, "line"}}, entry));
    }
    return problems;
}

}
