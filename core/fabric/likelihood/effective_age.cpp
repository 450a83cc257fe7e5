// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/likelihood/effective_age.h"

#include <cmath>

namespace crownring {

double effectiveAge(const AgeingShape& shape, double hours, double row, double dose) {
    const double tau = std::exp(-shape.gamma * (1 - row)) * (hours + doseWeight * dose) / hoursOfAgeUnit;
    return tau <= 0 ? 0 : agePivot * std::pow(tau / agePivot, shape.phi);
}

double effectiveHours(const AgeingShape& shape, double age, double row) {
    return hoursOfAgeUnit * agePivot * std::pow(age / agePivot, 1 / shape.phi) * std::exp(shape.gamma * (1 - row));
}

}
