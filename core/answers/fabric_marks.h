// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How fabric stands by what was read of it: the latest reading at each place, against the bounds of the type's manual.
/// A panel that was replaced has no reading. A reading beyond a bound counts until it is read again at its place, the
/// panel is replaced there, or the defect that was found with it is cleared; where the manual retires the envelope for
/// it, it counts for ever (a mistake is corrected or voided).

#include "answers/type_book.h"
#include "registry/books.h"

#include <vector>

namespace crownring {

/// A value this many times its bound is close to it; what was only held is never close. Common practice, no source.
inline constexpr double closeToBound = 1.1;

/// Adds `ItemFacts::fabric` to the envelopes among the facts.
[[nodiscard]] Result<void> addFabricMarks(Books& books, std::vector<ItemFacts>& facts, CivilDate on);

}
