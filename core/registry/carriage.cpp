// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/carriage.h"

#include <algorithm>
#include <set>

namespace crownring {

namespace {

const Stay* placeAt(const StaysOf& own, const ItemId& item, const Stamp& stamp) {
    const auto stays = own.find(item);
    if (stays == own.end())
        return nullptr;
    for (const auto& stay : stays->second)
        if (!(stamp < stay.from) && (!stay.until || stamp < *stay.until))
            return &stay;
    return nullptr;
}

/// Up from an item at one moment.
struct Chain {
    const Stay* first = nullptr; ///< the item's own place
    const Stay* last = nullptr;  ///< on a balloon; null where there is none
    std::set<ItemId> carriers;
};

Chain chainAt(const StaysOf& own, const ItemId& item, const Stamp& stamp) {
    Chain chain;
    chain.first = placeAt(own, item, stamp);
    for (const auto* place = chain.first; place; place = placeAt(own, *place->carrier, stamp)) {
        if (!place->carrier) {
            chain.last = place;
            break;
        }
        if (*place->carrier == item || !chain.carriers.insert(*place->carrier).second)
            break;
    }
    return chain;
}

}

Carriage carriageOf(const ItemId& item, const StaysOf& own) {
    std::set<Stamp> moves;
    for (const auto& [id, stays] : own)
        for (const auto& stay : stays) {
            moves.insert(stay.from);
            if (stay.until)
                moves.insert(*stay.until);
        }
    Carriage carriage;
    std::map<ItemId, std::vector<Carried>> carriers;
    const Stay* first = nullptr;
    bool onBalloon = false;
    for (const auto& move : moves) {
        const auto chain = chainAt(own, item, move);
        const bool goesOn =
            onBalloon && chain.last && chain.first == first && chain.last->balloon == carriage.stays.back().balloon;
        if (onBalloon && !goesOn)
            carriage.stays.back().until = move;
        if (chain.last && !goesOn)
            carriage.stays.push_back({chain.last->balloon, chain.first->place, move, std::nullopt});
        first = chain.first;
        onBalloon = chain.last != nullptr;
        for (auto& [id, times] : carriers)
            if (!times.back().until && !chain.carriers.contains(id))
                times.back().until = move;
        for (const auto& id : chain.carriers)
            if (auto& times = carriers[id]; times.empty() || times.back().until)
                times.push_back({id, move, std::nullopt});
    }
    for (const auto& [id, times] : carriers)
        carriage.carriers.insert(carriage.carriers.end(), times.begin(), times.end());
    return carriage;
}

}
