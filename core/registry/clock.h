// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// An item's clock: what was brought forward and what was flown since; and the clock at each accomplishment.

#include "registry/item_facts.h"
#include "registry/question.h"

#include <functional>
#include <span>
#include <vector>

namespace crownring {

/// How much use was counted on the item by flights before a stamp, since 00:00 of the day on which it was entered.
using UsedBefore = std::function<Usage(const Stamp&)>;

/// Where an item's clock starts.
struct ClockOrigin {
    CivilDate entered;
    Figures broughtForward; ///< an absent figure is unknown until an accomplishment states it
};

/// The item's clock just before `at`. A figure that was unknown when the item was entered is known from the first
/// accomplishment since that states it: that figure and what was flown after.
/// @param done of the item, in the order of their stamps; only `stamp` and `stated` are read
[[nodiscard]] Figures clockBefore(const Stamp& at, const ClockOrigin& origin, std::span<const Accomplishment> done,
                                  const UsedBefore& used);

/// Sets each accomplishment's `clock`: the stated figure, else the computed one. One dated before the item was entered
/// is history from paper and has only what it states.
/// @return questions about stated figures that go backward or differ from the computed ones
std::vector<Question> settleClocks(const ItemId& item, std::span<Accomplishment> done, const ClockOrigin& origin,
                                   const UsedBefore& used);

}
