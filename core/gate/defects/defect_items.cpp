// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"

#include <algorithm>

namespace crownring {

namespace {

struct NamedThere {
    const DefectId* defect = nullptr;
    const ItemId* item = nullptr;
};

NamedThere namedBy(const Body& body) {
    if (const auto* cleared = std::get_if<DefectCleared>(&body))
        return {&cleared->defect, &cleared->item};
    if (const auto* deferred = std::get_if<DefectDeferred>(&body))
        return {&deferred->defect, &deferred->item};
    return {};
}

}

Findings askDefectItems(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<DefectCleared, DefectDeferred>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        const auto [defect, item] = *now ? namedBy((*now)->body) : NamedThere{};
        if (!defect)
            continue;
        const auto told =
            batch.books.told({Subject::Defect, defect->text(), {kindName<DefectFound>()}, CivilDate::last()});
        if (!told)
            return tl::unexpected(atLine(told.error(), line));
        std::vector<ItemId> foundOn;
        for (const auto& each : *told)
            if (const auto* found = std::get_if<DefectFound>(&nowOf(each).body))
                foundOn.push_back(found->item);
        if (!foundOn.empty() && std::ranges::find(foundOn, *item) == foundOn.end())
            problems.push_back(Problem{ReleaseFault::FoundElsewhere, {*defect, foundOn.front()}, {{}, line, "item"}});
    }
    return problems;
}

}
