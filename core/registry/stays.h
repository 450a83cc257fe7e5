// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Where an item was: a fold over its fittings and removals, in the order of their stamps.
///
/// An item is in one place at a time: a fitting moves it, and a removal from a balloon that it is not on changes
/// nothing. Both are open questions of the record; paper that arrives later may answer them. Its place may be another
/// item, that it is a part of (`registry/carriage`).

#include "registry/question.h"
#include "registry/service.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace crownring {

struct FittingMark {
    Stamp stamp;
    bool fitted = true; ///< else removed
    Registration balloon;
    std::string place;
    std::optional<ItemId> carrier{}; ///< instead of a balloon
    bool operator==(const FittingMark&) const = default;
};

/// The item was fitted to `balloon`, or to `carrier`, from `from` (inclusive) until `until` (exclusive), or is so
/// still.
struct Stay {
    Registration balloon;
    std::string place;
    Stamp from;
    std::optional<Stamp> until;
    std::optional<ItemId> carrier{}; ///< instead of a balloon
    bool operator==(const Stay&) const = default;
};

struct Whereabouts {
    std::vector<Stay> stays; ///< in order, not overlapping
    std::vector<Question> questions;
};

/// @param marks of one item, in the order of their stamps
/// @param renamings of all balloons, in the order of their stamps: what is fitted goes over
[[nodiscard]] Whereabouts whereabouts(const ItemId& item, std::span<const FittingMark> marks,
                                      std::span<const Renaming> renamings = {});

}
