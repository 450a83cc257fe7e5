// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// When many lots are looked at, some look bad by chance. An adjusted p-value may be held against the level at which
/// one accepts a false alarm among all of them.

#include <cstdint>
#include <vector>

namespace crownring {

enum class Multiplicity : std::uint8_t {
    Bonferroni,        ///< chance of any false alarm, plain
    Holm,              ///< chance of any false alarm (Holm 1979)
    BenjaminiHochberg, ///< share of false ones among the alarms, tests independent or positively dependent (1995)
    BenjaminiYekutieli ///< the same under any dependence (2001)
};

/// Adjusted p-values, in the order of those given; each of those in [0, 1]. Authors and years from memory.
[[nodiscard]] std::vector<double> adjusted(const std::vector<double>& pValues, Multiplicity method);

}
