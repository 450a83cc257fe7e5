// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A reading as a plain value, and the series that it belongs to. Units are converted; pressure, area and width of a
/// test never: air permeability at 100 Pa says nothing about that at 125 Pa (ISO 9237, ASTM D737), so readings that
/// differ in them are other series, and are never drawn, fitted or judged as one. Warp and weft of one test are one
/// series with two halves. Grab and strip strength are two quantities.

#include "bench/reading/quantity.h"
#include "measure/amount.h"
#include "problem/problem.h"
#include "record/kinds/readings.h"

#include <compare>
#include <optional>
#include <string>

namespace crownring {

/// Figures are in the quantity's own unit (`unitOf`).
struct Measured {
    std::string quantity; ///< a slug of `allQuantities`
    Figure value;
    bool held = false;           ///< `value` is a load that was survived: the strength is at least this
    std::optional<Figure> below; ///< of a stepped indicator: the true value lies in [value, below)
    TestConditions conditions;
    Zone zone = Zone::Envelope;      ///< where on an envelope
    std::optional<Celsius> liquid{}; ///< of what the fuel presses: how warm it was in the cylinder, where that is said
    bool operator==(const Measured&) const = default;
};

/// The reading in the quantity's own unit. BadQuantity, with the key of the record that is wrong, for: a quantity that
/// the bench does not know; a unit that is none or of another dimension; conditions that do not fit; a load that was
/// held where nothing is pulled; a step of what has no steps or whose end is not above its beginning; a figure that is
/// no number, is negative where that cannot be, or is no whole number where one is counted.
[[nodiscard]] Result<Measured> measuredFrom(const ReadingTaken& reading);

/// What a test was done with, in nominal sizes: the standards themselves give 25 mm and 1 in, 125 Pa and 0.5 inches of
/// water as the same test (ASTM D5034, ASTM D737; from memory), so what lies within 2 % of a standard's size is that
/// size; any other size keeps three figures.
struct TestSizes {
    std::optional<Pascals> pressure;
    std::optional<SquareCentimetres> area;
    std::optional<Millimetres> jaw;
    bool operator==(const TestSizes&) const = default;
};
[[nodiscard]] TestSizes nominalSizes(const TestConditions& conditions);

/// Same key, same series; sizes are the nominal ones.
struct SeriesKey {
    std::string quantity;
    std::optional<Pascals> pressure;
    std::optional<SquareCentimetres> area;
    std::optional<Millimetres> jaw;
    auto operator<=>(const SeriesKey&) const = default;
};

[[nodiscard]] SeriesKey seriesOf(std::string_view quantity, const TestConditions& conditions);
[[nodiscard]] inline SeriesKey seriesOf(const Measured& reading) {
    return seriesOf(reading.quantity, reading.conditions);
}

/// "air permeability at 100 Pa on 20 cm²", "grab strength between jaws of 25 mm".
[[nodiscard]] Argument testedAs(const SeriesKey& series);

/// The series that both readings belong to; BadQuantity that says why they are of two, or that the pressure of a
/// permeability is not stated and so nobody can tell.
[[nodiscard]] Result<SeriesKey> comparable(const Measured& a, const Measured& b);

}
