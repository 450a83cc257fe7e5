// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/components/item_said.h"
#include "gate/defects/deciding.h"
#include "gate/refusing.h"
#include "registry/apart/overheated.h"

#include <algorithm>
#include <iterator>

namespace crownring {

namespace {

/// By what was said of a cylinder it was overheated by one of these events.
bool wasCondemned(const std::vector<ItemEntered>& said, std::vector<Occurrence> events) {
    ItemFacts was;
    was.kind = ItemKind::Cylinder;
    was.events = std::move(events);
    const bool isCylinder =
        std::ranges::any_of(said, [](const ItemEntered& each) { return each.kind == ItemKind::Cylinder; });
    return isCylinder && overheatedBy(was, materialSaid(said));
}

/// How hot anything was that was reported of the item itself: all that is left where nothing says any more what it is.
Result<std::vector<Occurrence>> reportedOf(Journal& journal, const ItemId& item) {
    constexpr int manyEvents = 1000;
    const auto lines = journal.lines(
        {.text = item.text(), .kind = std::string(kindName<EventReported>()), .before = {}, .limit = manyEvents});
    if (!lines)
        return tl::unexpected(lines.error());
    std::vector<Occurrence> events;
    for (const auto& line : *lines) {
        const auto* event = line.voided || line.unread ? nullptr : std::get_if<EventReported>(&nowOf(line).body);
        const auto* of = event ? itemOf(*event) : nullptr;
        if (of && *of == item)
            events.push_back({event->event, stampOf(nowOf(line)), event->hottest, event->lasted});
    }
    return events;
}

Findings judgedHeat(const Batch& batch, const Entry& entry, int line) {
    const auto of = enteredBy(batch, entry);
    if (!of)
        return tl::unexpected(of.error());
    if (!*of)
        return std::vector<Problem>{};
    const auto& item = (*of)->item;
    auto facts = batch.books.facts({std::nullopt, {item}}, CivilDate::last());
    const bool isGone = !facts || facts->empty();
    if (!isGone && facts->front().out && facts->front().out->hottest)
        return std::vector<Problem>{};
    auto events = isGone ? reportedOf(batch.journal, item) : Result<std::vector<Occurrence>>(facts->front().events);
    if (!events)
        return tl::unexpected(events.error());
    if (events->empty())
        return std::vector<Problem>{};
    const auto before = saidOtherwise(batch, entry, **of);
    if (!before)
        return tl::unexpected(before.error());
    if (!wasCondemned(*before, std::move(*events)))
        return std::vector<Problem>{};
    JournalLine own;
    own.entry = entry;
    const auto& root = (*of)->root;
    const TakenBack taken{root ? *root : own, {}, item, ReleaseFault::GroundUnsaid, Argument(item)};
    return root ? askWhoTakesBack(batch, entry, taken, line) : askWhoDecides(batch, entry, taken, line);
}

}

Findings askHeatSaid(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        auto found = judgedHeat(batch, entry, line);
        if (!found)
            return tl::unexpected(atLine(found.error(), line));
        std::ranges::move(*found, std::back_inserter(problems));
    }
    return problems;
}

}
