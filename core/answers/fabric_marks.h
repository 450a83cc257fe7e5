// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How fabric stands by what was read of it: the latest reading at each place, against the bounds of the type's manual.
/// A panel that was replaced has no reading. A reading beyond a bound counts until it is read again at its place, the
/// panel is replaced there, or the defect that was found with it is cleared; where the manual retires the envelope for
/// it, it counts for ever (a mistake is corrected or voided).

#include "registry/books.h"
#include "rules/due/fabric_rows.h"

namespace crownring {

/// A value this many times its bound is close to it; what was only held is never close. Common practice, no source.
inline constexpr double closeToBound = 1.1;

/// Readings of other quantities, of any item, are told in the same way where they are beyond a bound: those whose
/// defect stands open it tells already.
///
/// @param scope what the facts were asked for
[[nodiscard]] Result<FabricMarks> fabricMarks(Books& books, const Scope& scope, const std::vector<ItemFacts>& facts,
                                              CivilDate on, const std::optional<InspectionId>& inHand = {});

}
