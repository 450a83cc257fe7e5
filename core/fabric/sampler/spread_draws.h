// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Draws of the standard deviations given what they are the spread of, in closed form.

#include "fabric/likelihood/ageing_state.h"
#include "fabric/likelihood/fleet_columns.h"
#include "fabric/numeric/draws.h"
#include "fabric/sampler/ageing_prior.h"

#include <cstddef>

namespace crownring {

/// A standard deviation given `count` deviations of this sum of squares. The half-Cauchy prior is a mixture of inverse
/// gammas: Makalic and Schmidt 2016, IEEE Signal Processing Letters 23:179-182.
[[nodiscard]] double drawnSpread(Draws& draws, double now, double scale, double sumOfSquares, std::size_t count);

/// The four spreads of lots and sets, given all lines.
void drawSpreads(Draws& draws, const FleetColumns& fleet, const SpreadPriors& prior, AgeingState& state);

}
