// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What entries that have just come in may have changed: who keeps an answer for the whole fleet asks again for that
/// alone. A flight touches what was aboard, an accomplishment its item; what is fitted, entered, adopted or corrected
/// touches everything.

#include "record/journal.h"
#include "registry/books.h"

#include <cstdint>
#include <set>

namespace crownring {

struct Touched {
    bool everything = false;         ///< nothing less can be said
    std::set<ItemId> items;          ///< whose facts may be others now
    std::set<Registration> balloons; ///< that have flown, or no longer have
    std::int64_t upTo = 0;           ///< the number of the latest entry
};

/// Of so many entries at once the touched ones are told; of more, everything.
inline constexpr int mostTold = 200;

/// @param after the number of the latest entry of which the answer that is kept knows
[[nodiscard]] Result<Touched> touchedSince(Journal& journal, Books& books, std::int64_t after);

/// The number of the latest entry; 0 in an empty record.
[[nodiscard]] Result<std::int64_t> latestNumber(Journal& journal);

}
