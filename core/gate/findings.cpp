// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"

#include <algorithm>

namespace crownring {

namespace {

/// The earlier was cleared before the later came; a clearing without a time answers what was found up to its day.
bool isClearedBetween(const Entry& earlier, const Entry& later, const std::vector<JournalLine>& told) {
    return std::ranges::any_of(told, [&](const JournalLine& line) {
        const auto& now = nowOf(line);
        if (!std::holds_alternative<DefectCleared>(now.body) || now.on < earlier.on || later.on < now.on)
            return false;
        return !now.time || (momentOf(earlier) <= momentOf(now) && momentOf(now) <= momentOf(later));
    });
}

}

Findings askFindings(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<DefectFound>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        const auto* found = *now ? std::get_if<DefectFound>(&(*now)->body) : nullptr;
        if (!found)
            continue;
        const auto told = batch.books.told({Subject::Defect,
                                            found->defect.text(),
                                            {kindName<DefectFound>(), kindName<DefectCleared>()},
                                            CivilDate::last()});
        if (!told)
            return tl::unexpected(atLine(told.error(), line));
        for (const auto& each : *told) {
            const auto& other = nowOf(each);
            const auto* before = std::get_if<DefectFound>(&other.body);
            if (!before || other.id == (*now)->id)
                continue;
            const bool isFirst = stampOf(other) < stampOf(**now);
            if (isClearedBetween(isFirst ? other : **now, isFirst ? **now : other, *told))
                continue;
            problems.push_back(
                Problem{ReleaseFault::FoundBefore, {found->defect, before->item, other.on}, {{}, line, "defect"}});
            break;
        }
    }
    return problems;
}

}
