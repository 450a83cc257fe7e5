// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/propane.h"

#include "problem/faults/reading_fault.h"

#include <algorithm>
#include <cmath>
#include <span>

namespace crownring {

namespace {

constexpr Celsius absoluteZero{-273.15};

constexpr double kelvinsOf(Celsius at) { return (at - absoluteZero).value(); }
constexpr Celsius celsiusOf(double kelvins) { return absoluteZero + Kelvins(kelvins); }

struct WagnerTerm {
    double coefficient;
    double exponent;
};

struct Fluid {
    double triple;   ///< K
    double critical; ///< K
    Pascals criticalPressure;
    std::span<const WagnerTerm> terms;
};

constexpr WagnerTerm propaneTerms[] = {{-6.7722, 1}, {1.6938, 1.5}, {-1.3341, 2.2}, {-3.1876, 4.8}, {0.94937, 6.2}};
constexpr WagnerTerm butaneTerms[] = {{-7.1897, 1}, {2.6122, 1.5}, {-2.1729, 2}, {-2.7230, 4.5}};
constexpr Fluid propane{85.525, 369.89, Pascals(4'251'200), propaneTerms};
constexpr Fluid nButane{134.895, 425.125, Pascals(3'796'000), butaneTerms};

Pascals pressureOver(const Fluid& fluid, double kelvins) {
    const double theta = 1 - kelvins / fluid.critical;
    double sum = 0;
    for (const auto& term : fluid.terms)
        sum += term.coefficient * std::pow(theta, term.exponent);
    return std::exp(fluid.critical / kelvins * sum) * fluid.criticalPressure;
}

}

LiquidRange liquidRange(double butane) {
    if (butane <= 0)
        return {celsiusOf(propane.triple), celsiusOf(propane.critical)};
    if (butane >= 1)
        return {celsiusOf(nButane.triple), celsiusOf(nButane.critical)};
    return {celsiusOf(std::max(propane.triple, nButane.triple)),
            celsiusOf(std::min(propane.critical, nButane.critical))};
}

Result<Pascals> saturationPressure(Celsius liquid, double butane) {
    if (!(butane >= 0 && butane <= 1))
        return problem(ReadingFault::NoFraction, {butane}, atKey("butane"));
    const auto range = liquidRange(butane);
    const auto shown = [](Celsius at) { return InUnit{at.value(), "degC"}; };
    if (!(liquid >= range.coldest))
        return problem(ReadingFault::ColderThanLiquid, {shown(liquid), shown(range.coldest)}, atKey("celsius"));
    if (!(liquid <= range.hottest))
        return problem(ReadingFault::HotterThanLiquid, {shown(liquid), shown(range.hottest)}, atKey("celsius"));
    const double kelvins = kelvinsOf(liquid);
    Pascals pressure;
    if (butane < 1)
        pressure = pressure + (1 - butane) * pressureOver(propane, kelvins);
    if (butane > 0)
        pressure = pressure + butane * pressureOver(nButane, kelvins);
    return pressure;
}

}
