// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How good chances were that had been foretold, once it is known what came about.

#include <array>
#include <cstddef>
#include <span>

namespace crownring {

struct Foretold {
    double chance = 0; ///< 0..1
    bool came = false;
};

struct ChanceBin {
    std::size_t count = 0;
    double foretold = 0; ///< mean chance; 0 of none
    double came = 0;     ///< share that came about; 0 of none
};

inline constexpr std::size_t chanceBins = 5; ///< of equal width

struct Score {
    std::size_t count = 0;
    std::size_t came = 0;
    double brier = 0;    ///< mean square of chance less what came about (Brier 1950): 0 is best
    double baseRate = 0; ///< the same, had the share that came about been foretold each time
    std::array<ChanceBin, chanceBins> bins;
};

/// All zero of nothing.
[[nodiscard]] Score scoreOf(std::span<const Foretold> foretold);

}
