// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The pressure over liquid propane, and over propane with n-butane in it, at the temperature of the liquid: what a
/// burner's gauge shows while nothing is burnt, so that a cold morning's low pressure is not taken for a fault.
///
///     saturationPressure(Celsius(0))          474.5 kPa absolute
///     saturationPressure(Celsius(-20))        244.5 kPa
///     saturationPressure(Celsius(0), 0.3)     363.0 kPa
///
/// Pure fluids by the vapour-pressure equations that their equations of state were published with:
///     ln(p / pc) = (Tc / T) * sum of n_i (1 - T / Tc)^t_i
/// propane: Lemmon, McLinden and Wagner 2009, J. Chem. Eng. Data 54:3141; n-butane: Bücker and Wagner 2006, J. Phys.
/// Chem. Ref. Data 35:929. Coefficients read in open implementations of both, not in the papers.
///
/// Mixtures by Raoult's law: each part's own pressure, times its mole fraction in the liquid. The law is an
/// idealisation: of propane and n-butane a slightly negative deviation from it was measured from 273 to 323 K (J. Chem.
/// Eng. Data 53:2783, 2008, abstract read), so that the pressure given is rather too high. Bought fuel holds other
/// gases too (propene and ethane press higher, isobutane lies between), and burning takes the propane first: the
/// fraction is that of the liquid in the cylinder now, not of the delivery.

#include "measure/amount.h"
#include "problem/problem.h"

namespace crownring {

/// The standard atmosphere, from which gauges count. A gauge in thinner air shows more: about 12 kPa at 1,000 m.
inline constexpr Pascals standardAtmosphere{101'325};

/// The coldest and the hottest at which there is a liquid whose pressure the equations give: the triple point and the
/// critical point, which both rest on the parts that are there.
struct LiquidRange {
    Celsius coldest;
    Celsius hottest;
};
[[nodiscard]] LiquidRange liquidRange(double butane);

/// Absolute.
/// @param butane mole fraction of n-butane in the liquid, 0 to 1
/// @return BadQuantity for a fraction that is none, for a temperature at which there is no such liquid
[[nodiscard]] Result<Pascals> saturationPressure(Celsius liquid, double butane = 0);

}
