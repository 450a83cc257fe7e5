// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/numeric/normal_table.h"

#include "fabric/numeric/normal_tail.h"

#include <array>
#include <cmath>
#include <cstddef>

namespace crownring {

namespace {

constexpr double least = -8;
constexpr double most = 8;         ///< from here on ln Phi is above -1e-15
constexpr double nodesOfUnit = 64; ///< Hermite's error is the fourth derivative, at most 1, times step^4 / 384
constexpr auto nodes = static_cast<std::size_t>((most - least) * nodesOfUnit) + 1;

struct Node {
    double value = 0;
    double slope = 0; ///< in steps
};

std::array<Node, nodes> tabled() {
    std::array<Node, nodes> table;
    for (std::size_t k = 0; k < nodes; ++k) {
        const double z = least + static_cast<double>(k) / nodesOfUnit;
        table[k] = {logNormalBelow(z), normalHazard(-z) / nodesOfUnit};
    }
    return table;
}

const auto table = tabled();

}

double logNormalBelowQuickly(double z) {
    if (z >= most)
        return 0;
    if (!(z > least))
        return logNormalBelow(z);
    const double place = (z - least) * nodesOfUnit;
    const auto k = static_cast<std::size_t>(place);
    const double x = place - static_cast<double>(k);
    const auto& from = table[k];
    const auto& to = table[k + 1];
    const double rise = to.value - from.value;
    return from.value +
           x * (from.slope + x * (3 * rise - 2 * from.slope - to.slope + x * (from.slope + to.slope - 2 * rise)));
}

}
