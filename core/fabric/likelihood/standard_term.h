// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fabric/likelihood/observation.h"

#include <cstdint>

namespace crownring {

/// The law by which the logarithm of a reading scatters about what is expected.
enum class Scatter : std::uint8_t {
    Normal,      ///< readings are lognormal: what Crownring forecasts with
    LeastExtreme ///< readings are Weibull, the law of the weakest link: to see whether it would describe them better
};

/// The standardised error that a share p of all errors stays below, 0 < p < 1.
[[nodiscard]] double standardQuantile(Scatter scatter, double p);

/// The log-likelihood of one observation in standardised errors z = (y - expected) / sigma, and its first and second
/// derivatives by the two of them. An exact value has only `low` (and the likelihood of y itself has 1/sigma besides).
struct StandardTerm {
    double value = 0;
    double low = 0, high = 0;
    double lowLow = 0, lowHigh = 0, highHigh = 0;
};

/// `low` is unused for `Seen::AtMost`, `high` for `Exactly` and `AtLeast`. Where f is the density and P the probability
/// of what was seen, every derivative is made of f/P at the ends and of (ln f)'.
[[nodiscard]] StandardTerm standardTerm(Scatter scatter, Seen seen, double low, double high);

}
