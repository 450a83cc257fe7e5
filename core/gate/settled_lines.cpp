// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/checklist/checklist.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"
#include "text/near.h"

#include <algorithm>
#include <map>

namespace crownring {

namespace {

/// The lines of the list that an inspection was opened with; none where it was opened with none.
Result<std::vector<std::string>> linesOf(Books& books, const InspectionId& inspection) {
    const auto told =
        books.told({Subject::Inspection, inspection.text(), {kindName<InspectionOpened>()}, CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    std::vector<std::string> ids;
    for (const auto& line : *told)
        if (const auto* opened = std::get_if<InspectionOpened>(&nowOf(line).body); opened && !opened->checklist.empty())
            if (const auto checklist = keptChecklist(opened->checklist))
                for (const auto& each : checklist->lines)
                    ids.push_back(each.id);
    return ids;
}

}

Findings askSettledLines(const Batch& batch) {
    std::vector<Problem> problems;
    std::map<InspectionId, std::vector<std::string>> known;
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
        const auto& ids = lines->second;
        if (ids.empty() || std::ranges::find(ids, settled.line) != ids.end())
            continue;
        const auto nearest = std::ranges::min_element(
            ids, {}, [&](const std::string& each) { return slipsBetween(settled.line, each); });
        problems.push_back(
            asAmended(Problem{ReleaseFault::NoSuchLine, {settled.line, *nearest}, {{}, line, "line"}}, entry));
    }
    return problems;
}

}
