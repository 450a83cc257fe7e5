// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Whether a type or the word for a part may be the one that a directive names, though it is written otherwise: then
/// nobody knows, and it is not another one.
///
///     "PV–2", "PV-02", "T-bruner", "T-burner, T-other"     nearly PV-2, PV-2, T-burner, T-burner
///     "X-1", "Twin C", "Kite-105"                            not X-2, Twin B, Kite-90

#include <string_view>

namespace crownring {

/// Looks the same (`text/skeleton`), whatever zeros stand before a number; is it among other words, as in a list; or is
/// a slip of the pen away in a word of letters. What differs in a figure or in a single letter is another type.
/// Common practice, no source.
[[nodiscard]] bool isNearlyType(std::string_view written, std::string_view asked);

/// The same of words for parts, which have no figures of their own: one slip, two in a long word (`text/near`).
[[nodiscard]] bool isNearlyPart(std::string_view written, std::string_view asked);

}
