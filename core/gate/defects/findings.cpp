// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"
#include "rules/due/defects.h"

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

/// A clearing of that day that says no time, and came before, answers it: it would not stand open.
Result<bool> isAnswered(const Batch& batch, const Entry& entry, const DefectFound& found,
                        const std::vector<JournalLine>& told) {
    const auto came = [&](const JournalLine& line) {
        return std::ranges::none_of(batch.entries,
                                    [&](const NumberedEntry& each) { return each.entry.id == line.entry.id; });
    };
    if (std::ranges::none_of(told, [&](const JournalLine& line) {
            const auto& now = nowOf(line);
            return std::holds_alternative<DefectCleared>(now.body) && !now.time && now.on == entry.on && came(line);
        }))
        return false;
    const auto facts = batch.books.facts({{}, {found.item}}, entry.on);
    if (!facts)
        return tl::unexpected(facts.error());
    return std::ranges::none_of(*facts, [&](const ItemFacts& item) {
        return std::ranges::any_of(openDefects(item),
                                   [&](const OpenDefect& open) { return open.found->stamp.id == entry.id; });
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
            const auto answered = isFirst ? isAnswered(batch, **now, *found, *told) : false;
            if (!answered)
                return tl::unexpected(atLine(answered.error(), line));
            if (*answered) {
                problems.push_back(
                    Problem{ReleaseFault::FoundWithClearing, {found->defect, (*now)->on}, {{}, line, "on"}});
                break;
            }
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
