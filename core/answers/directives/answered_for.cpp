// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/directives/fitted.h"

#include <algorithm>

namespace crownring {

namespace {

/// When it came to where it is at the end of that day, if on that day: itself, or what carries it.
Result<std::optional<Stamp>> fittedOn(Books& books, const std::vector<ItemFacts>& all, const ItemFacts& item,
                                      CivilDate day) {
    std::optional<Stamp> last;
    const auto* at = &item;
    for (std::size_t depth = 0; at && depth <= all.size(); ++depth) {
        constexpr int ofOneDay = 500;
        const auto lines = books.history({}, at->id, day, ofOneDay);
        if (!lines)
            return tl::unexpected(lines.error());
        for (const auto& line : *lines) {
            const auto& now = nowOf(line);
            const auto* fitted = std::get_if<ItemFitted>(&now.body);
            if (fitted && fitted->item == at->id && !line.voided && now.on == day && (!last || *last < stampOf(now)))
                last = stampOf(now);
        }
        const auto carrier = at->carrier ? std::ranges::find(all, *at->carrier, &ItemFacts::id) : std::ranges::end(all);
        at = carrier == all.end() ? nullptr : &*carrier;
    }
    return last;
}

}

Result<std::set<ItemId>> onBalloonBefore(Books& books, const Registration& balloon, const Stamp& moment) {
    const auto day = moment.at.on();
    const auto then = books.facts({balloon, {}}, day);
    if (!then)
        return tl::unexpected(then.error());
    std::set<ItemId> on;
    if (then->empty())
        return on;
    std::set<ItemId> sinceBefore;
    const auto before = books.facts({balloon, {}}, addDays(day, -1));
    if (!before)
        return tl::unexpected(before.error());
    for (const auto& item : *before)
        sinceBefore.insert(item.id);
    for (const auto& item : *then) {
        if (!sinceBefore.contains(item.id)) {
            const auto fitted = fittedOn(books, *then, item, day);
            if (!fitted)
                return tl::unexpected(fitted.error());
            if (*fitted && moment < **fitted)
                continue;
        }
        on.insert(item.id);
    }
    return on;
}

}
