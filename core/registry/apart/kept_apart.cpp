// SPDX-License-Identifier: GPL-3.0-or-later
#include "registry/apart/kept_apart.h"

#include <algorithm>
#include <tuple>

namespace crownring {

namespace {

/// While it was in the carrier.
bool cameBackWith(const Carried& in, const std::vector<Carried>& carried, const StateWords& words, const Stamp& end) {
    return std::ranges::any_of(words, [&](const StateWord& word) {
        return isBack(word) && *in.until < word.stamp && word.stamp < end &&
               std::ranges::any_of(carried, [&](const Carried& again) {
                   return again.carrier == in.carrier && !(word.stamp < again.from) &&
                          (!again.until || word.stamp < *again.until);
               });
    });
}

}

StateWords inOrder(StateWords words) {
    std::ranges::sort(words, {},
                      [](const StateWord& word) { return std::tuple(word.stamp.at, word.out.state, word.stamp.id); });
    return words;
}

std::optional<OutOfService> keptApartBefore(const StateWords& words, const Stamp& stamp) {
    std::optional<OutOfService> apart;
    for (const auto& word : words) {
        if (!(word.stamp < stamp) || (apart && apart->state == ServiceState::Condemned))
            continue;
        if (isKeptApart(word.out.state))
            apart = word.out;
        else if (isBack(word))
            apart.reset();
    }
    return apart;
}

std::optional<OutOfService> takenOutBefore(const Stamp& end, const std::vector<Carried>& carried, const StateWords& own,
                                           const std::function<StateWords(const ItemId&)>& wordsOf) {
    std::optional<OutOfService> out;
    const Carried* last = nullptr;
    for (const auto& in : carried) {
        if (!in.until || !(*in.until < end))
            continue;
        const bool isLater =
            !last || *last->until < *in.until || (*last->until == *in.until && in.carrier < last->carrier);
        if (!isLater || std::ranges::any_of(own, [&](const StateWord& word) {
                return isBack(word) && *in.until < word.stamp && word.stamp < end;
            }))
            continue;
        const auto words = wordsOf(in.carrier);
        auto apart = keptApartBefore(words, *in.until);
        if (!apart || (apart->state != ServiceState::Condemned && cameBackWith(in, carried, words, end)))
            continue;
        out = std::move(apart);
        out->part = in.carrier;
        out->takenOut = true;
        if (out->state == ServiceState::Condemned) // the part is not: nobody said so of it
            out->state = ServiceState::Unserviceable;
        last = &in;
    }
    return out;
}

}
