// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What is known of a fleet's ageing after its readings: draws from the joint density of all that the model does not
/// know, as plain columns. The k-th entries of all columns belong together. Draws of one chain stand next to each
/// other.

#include "fabric/likelihood/ageing_state.h"

#include <cstddef>
#include <vector>

namespace crownring {

using DrawColumn = std::vector<double>;

struct LineColumns {
    DrawColumn intercept;
    DrawColumn slope;
};

struct Posterior {
    std::size_t chains = 0;
    std::size_t drawsOfChain = 0;

    std::vector<LineColumns> fabrics;
    std::vector<LineColumns> lots;
    std::vector<LineColumns> sets;
    DrawColumn lotIntercept, lotSlope, setIntercept, setSlope, scatter; ///< spreads
    DrawColumn gamma, phi;

    std::size_t draws() const { return chains * drawsOfChain; }
};

/// Room for the draws of a fleet.
[[nodiscard]] Posterior emptyPosterior(const AgeingState& like, std::size_t chains, std::size_t drawsOfChain);

void keepDraw(const AgeingState& state, std::size_t draw, Posterior& posterior);

/// The same columns with these draws in this order: `chains` becomes 1.
[[nodiscard]] Posterior pickedDraws(const Posterior& posterior, const std::vector<std::size_t>& draws);

}
