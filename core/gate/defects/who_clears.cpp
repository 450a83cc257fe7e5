// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/defects/who_clears.h"

#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"

#include <algorithm>
#include <iterator>

namespace crownring {

namespace {

/// An amendment that leaves of a clearing what it was: other words.
bool saysTheSame(const std::optional<Entry>& before, const Entry& now) {
    const auto* was = before ? std::get_if<DefectCleared>(&before->body) : nullptr;
    const auto& is = std::get<DefectCleared>(now.body);
    return was && was->defect == is.defect && was->item == is.item && was->inspection == is.inspection &&
           momentOf(*before) == momentOf(now) && before->by == now.by;
}

Findings judgedClearing(const Batch& batch, const Entry& entry, int line) {
    const auto now = standingAs<DefectCleared>(batch.journal, entry);
    if (!now)
        return tl::unexpected(now.error());
    if (!*now)
        return std::vector<Problem>{};
    const bool isAmended = (*now)->id != entry.id;
    const auto before = isAmended ? batch.journal.before(entry.id) : Result<std::optional<Entry>>(std::nullopt);
    if (!before)
        return tl::unexpected(before.error());
    if (isAmended && saysTheSame(*before, **now))
        return std::vector<Problem>{};
    const auto& cleared = std::get<DefectCleared>((*now)->body);
    const auto taken = takenBy(batch.books, cleared);
    if (!taken)
        return tl::unexpected(taken.error());
    if (*taken == Takes::Nothing)
        return std::vector<Problem>{};
    auto bar = barToClear(batch.books, PersonId((*now)->by), (*now)->on, cleared, *taken);
    if (bar && !*bar && isAmended)
        bar = barToClear(batch.books, PersonId(entry.by), entry.on, cleared, *taken);
    if (!bar)
        return tl::unexpected(bar.error());
    if (*bar)
        return std::vector{
            Problem{ReleaseFault::MayNotClear, {cleared.defect, (*bar)->why}, {{}, line, "by"}, (*bar)->rule}};
    return std::vector<Problem>{};
}

}

Findings askWhoClears(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        auto found = judgedClearing(batch, entry, line);
        if (!found)
            return tl::unexpected(atLine(found.error(), line));
        std::ranges::move(*found, std::back_inserter(problems));
    }
    return problems;
}

}
