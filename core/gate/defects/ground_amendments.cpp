// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/defects/deciding.h"
#include "gate/refusing.h"

#include <algorithm>

namespace crownring {

namespace {

/// What is amended, and the item on which it is decided: any that is fitted for what happened to a balloon; of a
/// manual's limit and of a directive none.
struct Ground {
    std::string name;
    std::optional<ItemId> item;
};

Result<std::optional<Ground>> groundOf(const Batch& batch, const JournalLine& root) {
    if (const auto* limit = std::get_if<LimitStated>(&root.entry.body))
        return Ground{limit->type.text(), {}};
    if (const auto* issued = std::get_if<DirectiveIssued>(&root.entry.body))
        return Ground{issued->directive.text(), {}};
    if (const auto* listed = std::get_if<PartsListed>(&root.entry.body))
        return Ground{listed->item.text(), listed->item};
    const auto* event = std::get_if<EventReported>(&root.entry.body);
    if (!event)
        return std::nullopt;
    if (const auto* item = itemOf(*event))
        return Ground{event->event, *item};
    const auto fitted = batch.books.facts({*balloonOf(*event), {}}, root.entry.on);
    if (!fitted)
        return tl::unexpected(fitted.error());
    return Ground{event->event, fitted->empty() ? std::nullopt : std::optional(fitted->front().id)};
}

Findings judged(const Batch& batch, const Entry& entry, int line) {
    const auto root = amendedRoot(batch.journal, entry);
    if (!root)
        return tl::unexpected(root.error());
    if (!*root || (*root)->unread)
        return std::vector<Problem>{};
    const auto ground = groundOf(batch, **root);
    if (!ground)
        return tl::unexpected(ground.error());
    if (!*ground)
        return std::vector<Problem>{};
    return askWhoTakesBack(batch, entry, {**root, {}, (*ground)->item, ReleaseFault::GroundUnsaid, (*ground)->name},
                           line);
}

}

Findings askGroundAmendments(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        auto found = judged(batch, entry, line);
        if (!found)
            return tl::unexpected(atLine(found.error(), line));
        std::ranges::move(*found, std::back_inserter(problems));
    }
    return problems;
}

}
