// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/figure.h"

#include <algorithm>
#include <cmath>

namespace crownring {

bool reaches(const Figure& figure, const Figure& bound) {
    if (figure.dimension() != bound.dimension())
        return false;
    const double least = bound.in(figure.unit());
    return figure.value() >= least - 1e-9 * std::max(std::abs(figure.value()), std::abs(least));
}

std::string amountText(const Figure& figure) { return amountText(figure.value(), figure.unit()); }

}
