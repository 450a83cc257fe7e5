// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What was fitted to a balloon at a moment within a day: what flies when a flight does not say otherwise.

#include "registry/books.h"

namespace crownring {

/// In the order of their ids. @param at fittings and removals before it have taken effect
/// @return UnknownReference for a balloon that is not in the record
[[nodiscard]] Result<std::vector<ItemId>> kitAt(Books& books, const Registration& balloon, const Stamp& at);

}
