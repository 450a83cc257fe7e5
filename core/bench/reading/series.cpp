// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/series.h"

#include "problem/faults/reading_fault.h"
#include "registry/reading_phrase.h"

#include <cmath>
#include <initializer_list>
#include <string_view>

namespace crownring {

namespace {

constexpr double absoluteZero = -273.15;

/// Why a figure, in the quantity's own unit, cannot be one.
std::optional<Fault> impossible(double value, const Quantity& quantity) {
    if (!std::isfinite(value))
        return ReadingFault::NotANumber;
    if (quantity.dimension == Dimension::Temperature) {
        if (value < absoluteZero)
            return ReadingFault::BelowAbsoluteZero;
    } else if (value < 0 && !quantity.traits.isSigned)
        return ReadingFault::CannotBeNegative;
    if (quantity.traits.whole && value != std::floor(value))
        return ReadingFault::CountedWhole;
    return std::nullopt;
}

Result<Measured> inOwnUnit(const ReadingTaken& reading, const Quantity& quantity, const Unit& unit) {
    const char* key = reading.held ? "held_at" : "value";
    Measured measured{.quantity = reading.quantity,
                      .value = figureOf(quantity, reading.value, unit),
                      .held = reading.held,
                      .below = {},
                      .conditions = reading.conditions,
                      .zone = reading.place.zone};
    if (const auto reason = impossible(measured.value.value(), quantity))
        return problem(*reason, {termOf(quantity)}, atKey(key));
    if (quantity.traits.fuelled)
        measured.liquid = reading.circumstances.temperature;
    if (!reading.below)
        return measured;
    measured.below = figureOf(quantity, *reading.below, unit);
    if (!std::isfinite(measured.below->value()) || *measured.below <= measured.value)
        return problem(ReadingFault::NextStepNotAbove, {}, atKey("below"));
    return measured;
}

double nominal(double size, std::initializer_list<double> standard) {
    for (const double each : standard)
        if (std::abs(size - each) <= 0.02 * each)
            return each;
    if (!std::isfinite(size) || size <= 0)
        return size;
    const double step = std::pow(10, std::floor(std::log10(size)) - 2);
    return std::round(size / step) * step;
}

// Nominal sizes of ISO 9237, ASTM D737, ASTM D5034, ISO 13934-1 and -2 (from memory), and the 10 inches of water at
// which an older manufacturer's instructions have the leakage of fabric measured.
Pascals nominalPressure(Pascals pressure) {
    return Pascals(nominal(pressure.value(), {50, 100, 125, 200, 500, 2490.88891}));
}
SquareCentimetres nominalArea(SquareCentimetres area) {
    return SquareCentimetres(nominal(area.value(), {5, 20, 38.3, 50, 100}));
}
Millimetres nominalJaw(Millimetres width) { return Millimetres(nominal(width.value(), {25, 50})); }

}

Result<Measured> measuredFrom(const ReadingTaken& reading) {
    const auto quantity = quantityFor(reading.quantity);
    if (!quantity)
        return tl::unexpected(quantity.error());
    const auto unit = unitFor(**quantity, reading.unit);
    if (!unit)
        return tl::unexpected(unit.error());
    if (auto bad = misfit(**quantity, reading.conditions))
        return tl::unexpected(std::move(*bad));
    const auto& traits = (*quantity)->traits;
    if (reading.place.basket && !traits.onBasket)
        return problem(ReadingFault::NoPlaceOfIt, {termOf(**quantity)}, atKey("place"));
    if (reading.held && !traits.held)
        return problem(ReadingFault::CannotBeHeld, {termOf(**quantity)}, atKey("held_at"));
    if (reading.below && !traits.stepped)
        return problem(ReadingFault::NotInSteps, {termOf(**quantity)}, atKey("below"));
    return inOwnUnit(reading, **quantity, **unit);
}

TestSizes nominalSizes(const TestConditions& conditions) {
    TestSizes sizes;
    if (conditions.pressure)
        sizes.pressure = nominalPressure(*conditions.pressure);
    if (conditions.area)
        sizes.area = nominalArea(*conditions.area);
    if (conditions.jaw)
        sizes.jaw = nominalJaw(*conditions.jaw);
    return sizes;
}

SeriesKey seriesOf(std::string_view quantity, const TestConditions& conditions) {
    const auto sizes = nominalSizes(conditions);
    return {std::string(quantity), sizes.pressure, sizes.area, sizes.jaw};
}

Argument testedAs(const SeriesKey& series) {
    Argument test = quantityTerm(series.quantity);
    const auto add = [&](ReadingPhrase how, double size, const char* unit) {
        test = Phrase{how, {std::move(test), InUnit{size, unit}}};
    };
    if (series.pressure)
        add(ReadingPhrase::AtPressure, series.pressure->value(), "Pa");
    if (series.area)
        add(ReadingPhrase::OnArea, series.area->value(), "cm2");
    if (series.jaw)
        add(ReadingPhrase::BetweenJaws, series.jaw->value(), "mm");
    return test;
}

Result<SeriesKey> comparable(const Measured& a, const Measured& b) {
    auto first = seriesOf(a);
    const auto second = seriesOf(b);
    if (first != second)
        return problem(ReadingFault::DoNotCompare, {testedAs(first), testedAs(second)});
    const auto* quantity = quantityNamed(first.quantity);
    if (quantity && quantity->traits.airflow && !first.pressure)
        return problem(ReadingFault::PressureUnstated, {}, atKey("pressure_pa"));
    return first;
}

}
