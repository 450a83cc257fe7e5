// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <span>
#include <vector>

namespace crownring {

/// The quantile at p, 0 <= p <= 1, of at least one value, straight between neighbours (type 7 of Hyndman and Fan 1996,
/// The American Statistician 50:361-365). Values may be infinite.
[[nodiscard]] inline double quantileOf(std::span<const double> values, double p) {
    std::vector<double> kept(values.begin(), values.end());
    const double place = p * static_cast<double>(kept.size() - 1);
    const auto below = static_cast<std::size_t>(place);
    const auto at = kept.begin() + static_cast<std::ptrdiff_t>(below);
    std::nth_element(kept.begin(), at, kept.end());
    const double share = place - static_cast<double>(below);
    if (share == 0 || at + 1 == kept.end())
        return *at;
    const double next = *std::min_element(at + 1, kept.end());
    return *at == next ? next : *at + share * (next - *at);
}

}
