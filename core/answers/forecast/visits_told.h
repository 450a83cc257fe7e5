// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the visits that are planned cover, and what falls due before them, by the record of a day.

#include "answers/forecast/planned.h"
#include "answers/forecast/visit_outlook.h"

namespace crownring {

struct VisitsTold {
    DueList due; ///< of what the visits are of and cover
    std::vector<std::optional<DateBand>> bands;
    std::vector<VisitOutlook> outlooks; ///< into the list, in the order of the visits
};

/// @param known as in `projected`
[[nodiscard]] Result<VisitsTold> visitsTold(Books& books, const std::vector<VisitAhead>& visits, CivilDate on,
                                            CivilDate known);

}
