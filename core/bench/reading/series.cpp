// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/series.h"

#include <cmath>
#include <initializer_list>
#include <string_view>

namespace crownring {

namespace {

constexpr double absoluteZero = -273.15;

/// Why a figure, in the quantity's own unit, cannot be one.
std::optional<std::string> impossible(double value, const Quantity& quantity) {
    if (!std::isfinite(value))
        return "it is not a number";
    if (quantity.dimension == Dimension::Temperature) {
        if (value < absoluteZero)
            return "it is below absolute zero";
    } else if (value < 0 && !quantity.traits.isSigned)
        return std::string(quantity.title) + " cannot be negative";
    if (quantity.traits.whole && value != std::floor(value))
        return std::string(quantity.title) + " are counted in whole numbers";
    return std::nullopt;
}

tl::unexpected<Problem> refuse(std::string message, std::string mend, const char* key) {
    return problem(Code::BadQuantity, std::move(message), std::move(mend), {{}, 0, key});
}

Result<Measured> inOwnUnit(const ReadingTaken& reading, const Quantity& quantity, const Unit& unit) {
    const char* key = reading.held ? "held_at" : "value";
    Measured measured{.quantity = reading.quantity,
                      .value = figureOf(quantity, reading.value, unit),
                      .held = reading.held,
                      .below = {},
                      .conditions = reading.conditions};
    if (const auto reason = impossible(measured.value.value(), quantity))
        return refuse(*reason, "write the figure that was read", key);
    if (!reading.below)
        return measured;
    measured.below = figureOf(quantity, *reading.below, unit);
    if (!std::isfinite(measured.below->value()) || *measured.below <= measured.value)
        return refuse("the next step is not above the one that turned", "write the next higher step that did not turn",
                      "below");
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

std::string titleOf(std::string_view slug) {
    const auto* quantity = quantityNamed(slug);
    return std::string(quantity ? quantity->title : slug);
}

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
    if (reading.held && !traits.held)
        return refuse(titleOf(reading.quantity) + " cannot be held", "write the figure as value", "held_at");
    if (reading.below && !traits.stepped)
        return refuse(titleOf(reading.quantity) + " is not read in steps", "leave it out", "below");
    return inOwnUnit(reading, **quantity, **unit);
}

SeriesKey seriesOf(std::string_view quantity, const TestConditions& conditions) {
    SeriesKey key{.quantity = std::string(quantity), .pressure = {}, .area = {}, .jaw = {}};
    if (conditions.pressure)
        key.pressure = nominalPressure(*conditions.pressure);
    if (conditions.area)
        key.area = nominalArea(*conditions.area);
    if (conditions.jaw)
        key.jaw = nominalJaw(*conditions.jaw);
    return key;
}

std::string seriesText(const SeriesKey& series) {
    auto text = titleOf(series.quantity);
    if (series.pressure)
        text += " at " + figureText(series.pressure->value()) + " Pa";
    if (series.area)
        text += " on " + figureText(series.area->value()) + " cm²";
    if (series.jaw)
        text += " between jaws of " + figureText(series.jaw->value()) + " mm";
    return text;
}

Result<SeriesKey> comparable(const Measured& a, const Measured& b) {
    auto first = seriesOf(a);
    const auto second = seriesOf(b);
    if (first != second)
        return problem(Code::BadQuantity, seriesText(first) + " does not compare with " + seriesText(second),
                       "keep them apart: only units are converted, never how a test was done");
    const auto* quantity = quantityNamed(first.quantity);
    if (quantity && quantity->traits.airflow && !first.pressure)
        return refuse("the pressure of the two readings is not stated", "correct the readings: state their pressure",
                      "pressure_pa");
    return first;
}

}
