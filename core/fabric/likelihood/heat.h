// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What overheating costs, in hours of plain ageing (Arrhenius): an hour at T counts as
/// exp[Ea/R (1/(Tref + 273.15) - 1/(T + 273.15))] hours at 100 degC.

#include <span>

namespace crownring {

inline constexpr double heatReference = 100; ///< degC at which an hour counts as one hour
inline constexpr double usualActivationEnergy =
    100; ///< kJ/mol; not estimable from service, published ones run from 60 to 134

struct Overheating {
    double hours = 0;   ///< flown on this fabric when it happened
    double celsius = 0; ///< of the fabric; where a tell-tale gives a band, its upper edge
    double minutes = 0;
};

/// Hours at 100 degC that an hour at `celsius` (above -273.15) is worth, for an activation energy in kJ/mol.
[[nodiscard]] double heatFactor(double activationEnergy, double celsius);

/// Equivalent hours of all that happened before `hours` were flown.
[[nodiscard]] double heatDose(std::span<const Overheating> events, double hours,
                              double activationEnergy = usualActivationEnergy);

}
