// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a part was on: it is carried by the item that it is fitted to, by what that is fitted to, and so on up to a
/// balloon. At each moment that is asked of the places of that moment alone, so parts that were swapped go with what
/// carried them then, in whatever order their papers arrive. What would carry itself is on nothing.

#include "registry/stays.h"

#include <map>

namespace crownring {

/// The places of an item and of all that may have carried it, each as its own fittings say.
using StaysOf = std::map<ItemId, std::vector<Stay>>;

/// `carrier` carried it from `from` (inclusive) until `until` (exclusive), or does so still.
struct Carried {
    ItemId carrier;
    Stamp from;
    std::optional<Stamp> until;
    bool operator==(const Carried&) const = default;
};

struct Carriage {
    std::vector<Stay> stays;       ///< on balloons, in order, not overlapping; its own places
    std::vector<Carried> carriers; ///< of any depth, by carrier, then in order
};

/// @param own of the item and of each carrier that is named in it
[[nodiscard]] Carriage carriageOf(const ItemId& item, const StaysOf& own);

}
