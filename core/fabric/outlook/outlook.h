// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a fit says of each set and of each lot, as it is told to a user.

#include "fabric/outlook/forecast_gates.h"
#include "fabric/outlook/life.h"
#include "measure/amount.h"

#include <optional>
#include <vector>

namespace crownring {

inline constexpr Hours nextTestAfter{100}; ///< flown between two strength tests

struct SetOutlook {
    PlaceUse use;
    Band strength;          ///< of its weakest place now, in the unit of the readings
    LifeForecast life;      ///< hours flown
    double failsNext = 1;   ///< chance that one pull there at the next test breaks below the limit
    double belowByNext = 1; ///< chance that the mean there is below the limit by then
    ForecastGrounds grounds;
};

/// @param ahead flown until the next test, >= 0
[[nodiscard]] SetOutlook outlookOf(const FleetColumns& fleet, const AgeingPrior& prior, const Posterior& posterior,
                                   std::size_t set, double lnLimit, const PlaceUse& use, Hours ahead = nextTestAfter);

/// How fast a lot ages beside the other lots of its fabric.
struct LotPace {
    Band ratio;        ///< of its slope to the mean slope of the others
    double faster = 0; ///< chance that it is above 1
};
/// Nothing for the only lot of a fabric.
[[nodiscard]] std::optional<LotPace> paceOfLot(const FleetColumns& fleet, const Posterior& posterior, std::size_t lot);

/// The worst R-hat of ranks of what is common to the fleet, of its fabrics and lots, and of the sets' slopes.
[[nodiscard]] double worstRHat(const Posterior& posterior);

/// What is believed of fabrics that nothing is specified of: as `AgeingPrior` has it, on a scale whose limit is this
/// one.
[[nodiscard]] AgeingPrior priorFor(std::size_t fabrics, double limit);

}
