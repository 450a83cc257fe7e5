// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What overheating costs, in hours of plain ageing (Arrhenius): an hour at T counts as
/// exp[Ea/R (1/(Tref + 273.15) - 1/(T + 273.15))] hours at 100 degC.

#include "measure/amount.h"

#include <span>

namespace crownring {

inline constexpr Celsius heatReference{100}; ///< at which an hour counts as one hour
inline constexpr double usualActivationEnergy =
    100; ///< kJ/mol; not estimable from service, published ones run from 60 to 134

struct Overheating {
    Hours hours;     ///< flown on this fabric when it happened
    Celsius hottest; ///< of the fabric; where a tell-tale gives a band, its upper edge
    Hours lasted;
};

/// How many hours at 100 degC an hour at a temperature (above -273.15) is worth, for an activation energy in kJ/mol.
[[nodiscard]] double heatFactor(double activationEnergy, Celsius temperature);

/// Equivalent hours of all that happened before `hours` were flown.
[[nodiscard]] Hours heatDose(std::span<const Overheating> events, Hours hours,
                             double activationEnergy = usualActivationEnergy);

}
