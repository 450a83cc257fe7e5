// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The days by which a limit is met that is known by a chance for each number of hours to come.

#include "forecast/dates.h"
#include "measure/amount.h"

#include <functional>

namespace crownring {

/// p10, p50 and p90, whatever is flown until then; nothing where that is not within the horizon.
/// @param known the last day of which the record is taken to hold what was flown
/// @param on no day is told before it
/// @param chance that it is met when so many more hours are flown than by `known`; never falls, 0 to 1
[[nodiscard]] DateBand bandMet(const UseAhead& ahead, CivilDate known, CivilDate on,
                               const std::function<double(Hours)>& chance);

}
