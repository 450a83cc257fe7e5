// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/likelihood/heat.h"

#include <cmath>

namespace crownring {

namespace {

constexpr double gasConstant = 8.314462618; // J/(mol K), exact since 2019
constexpr Celsius absoluteZero{-273.15};
constexpr double joules = 1000;

}

double heatFactor(double activationEnergy, Celsius temperature) {
    const auto kelvins = [](Celsius of) { return (of - absoluteZero).value(); };
    return std::exp(joules * activationEnergy / gasConstant * (1 / kelvins(heatReference) - 1 / kelvins(temperature)));
}

Hours heatDose(std::span<const Overheating> events, Hours hours, double activationEnergy) {
    Hours dose;
    for (const auto& event : events)
        if (event.hours < hours)
            dose = dose + heatFactor(activationEnergy, event.hottest) * event.lasted;
    return dose;
}

}
