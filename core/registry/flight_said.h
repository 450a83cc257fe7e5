// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "record/kinds/flights.h"

namespace crownring {

/// What is known of a flight's source: "take-off 19:10, zone not stated", "from track evening.igc, 2 fixes skipped";
/// empty for one that was written by hand.
[[nodiscard]] Listed sourceOf(const FlightLogged& flight);

}
