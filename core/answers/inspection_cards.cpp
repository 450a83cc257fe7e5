// SPDX-License-Identifier: GPL-3.0-or-later

/// A card an inspection, for lists: what its opening says, and what became of it.

#include "answers/bench_file.h"

#include <algorithm>
#include <map>

namespace crownring {

Result<std::vector<InspectionCard>> inspectionsOn(Books& books, CivilDate on) {
    const auto told =
        books.told({Subject::Inspection,
                    {},
                    {kindName<InspectionOpened>(), kindName<InspectionClosed>(), kindName<ReleaseRevoked>(),
                     kindName<ReturnApproved>(), kindName<ReleaseIncomplete>()},
                    on});
    if (!told)
        return tl::unexpected(told.error());
    std::vector<InspectionCard> cards;
    std::map<InspectionId, std::size_t> places;
    for (const auto& line : *told) {
        const auto& now = nowOf(line);
        if (const auto* opened = std::get_if<InspectionOpened>(&now.body)) {
            if (places.emplace(opened->inspection, cards.size()).second)
                cards.push_back({opened->inspection,
                                 opened->visit,
                                 opened->balloon,
                                 opened->items,
                                 now.on,
                                 now.by,
                                 {},
                                 {},
                                 {},
                                 false,
                                 isOfItsVisit(visitFrom(opened->visit).value_or(Visit::PartMlInspection), opened->work),
                                 {},
                                 {},
                                 opened->order});
        } else if (const auto* revoked = std::get_if<ReleaseRevoked>(&now.body)) {
            if (const auto place = places.find(revoked->inspection); place != places.end()) {
                cards[place->second].revoked = true;
                cards[place->second].approved.reset();
            }
        } else if (const auto* incomplete = std::get_if<ReleaseIncomplete>(&now.body)) {
            if (const auto place = places.find(incomplete->inspection);
                place != places.end() && !cards[place->second].outcome)
                cards[place->second].incomplete = now.on;
        } else if (const auto* approved = std::get_if<ReturnApproved>(&now.body)) {
            if (const auto place = places.find(approved->inspection);
                place != places.end() && cards[place->second].isPending())
                cards[place->second].approved = now.on;
        } else if (const auto* closed = std::get_if<InspectionClosed>(&now.body)) {
            const auto place = places.find(closed->inspection);
            if (place == places.end() || cards[place->second].outcome)
                continue;
            auto& card = cards[place->second];
            card.outcome = closed->outcome;
            card.closed = now.on;
            card.signatory = closed->signatory;
        }
    }
    std::ranges::stable_sort(cards, [](const InspectionCard& a, const InspectionCard& b) {
        if (a.outcome.has_value() != b.outcome.has_value())
            return !a.outcome.has_value();
        return (a.closed ? *a.closed : a.opened) > (b.closed ? *b.closed : b.opened);
    });
    return cards;
}

}
