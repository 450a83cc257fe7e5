// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The days by which the fabric of an envelope comes to the limit of its manual at its weakest place, if it has not
/// yet: how long it lasts by the readings of the fleet, and how it will be flown. Told only where the readings warrant
/// a time
/// (`fabric/outlook/told.h`, `LifeEnd::InSight`). It plans tests; no standing follows from it.

#include "answers/fabric/fit.h"
#include "forecast/dates.h"
#include "rules/due/due_list.h"

#include <span>

namespace crownring {

struct FabricAhead {
    const ItemFacts* item; ///< of the list
    std::string quantity;
    std::string source; ///< of the limit
    double already = 0; ///< chance that the mean there is beyond the limit now
    DateBand met;
};

/// Of the envelopes of a due list that are on a balloon and in service, in the order of the fits. @param due must
/// outlive the answer
/// @param fits of the day of the list
/// @param known the last day of which the record is taken to hold what was flown
[[nodiscard]] Result<std::vector<FabricAhead>> fabricAhead(Books& books, const DueList& due,
                                                           std::span<const SharedFit> fits, CivilDate known);

}
