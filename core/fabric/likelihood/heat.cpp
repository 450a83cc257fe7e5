// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/likelihood/heat.h"

#include <cmath>

namespace crownring {

namespace {

constexpr double gasConstant = 8.314462618; // J/(mol K), exact since 2019
constexpr double kelvinAtZero = 273.15;
constexpr double joules = 1000;
constexpr double minutesInHour = 60;

}

double heatFactor(double activationEnergy, double celsius) {
    return std::exp(joules * activationEnergy / gasConstant *
                    (1 / (heatReference + kelvinAtZero) - 1 / (celsius + kelvinAtZero)));
}

double heatDose(std::span<const Overheating> events, double hours, double activationEnergy) {
    double dose = 0;
    for (const auto& event : events)
        if (event.hours < hours)
            dose += event.minutes / minutesInHour * heatFactor(activationEnergy, event.celsius);
    return dose;
}

}
