// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Units as the trade writes them, and their exact factors.
///
///     convert(30, *unitNamed("lbf"), *unitNamed("N"))                == 133.4466484578
///     convert(250, *unitNamed("degF"), *unitNamed("degC"))           == 121.1111…
///     convert(9, *unitNamed("degF", Dimension::TemperatureDifference),
///             *unitNamed("K", Dimension::TemperatureDifference))     == 5        an error of 9 degF has no 32 in it
///
/// Only units are converted. A reading taken at another pressure, on another area or between other jaws stays what it
/// is (`bench/series.h`).

#include "problem/argument.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace crownring {

/// What a unit measures. The base unit is the first of `unitsOf`.
enum class Dimension {
    Force,                 ///< N
    AirVelocity,           ///< mm/s through the fabric
    Pressure,              ///< Pa
    Temperature,           ///< degC
    TemperatureDifference, ///< K
    Length,                ///< mm
    Area,                  ///< cm2
    Mass,                  ///< kg
    Speed,                 ///< m/s
    Torque,                ///< N.m
    Voltage,               ///< V
    Age,                   ///< year
    Duration,              ///< s, timed by an instrument
    Share,                 ///< percent
    Number,                ///< count
};
inline constexpr int dimensionCount = 15;

struct Unit {
    std::string_view symbol; ///< as the record writes it: "degC", "l/m2/s"
    std::string_view shown;  ///< as people read it, UTF-8: "°C", "l/(m²·s)"
    Dimension dimension = Dimension::Number;
    double scale = 1;  ///< base units in one of these
    double offset = 0; ///< added before scaling: -32 for degF
};

/// The units of one dimension, the base unit first.
[[nodiscard]] std::span<const Unit> unitsOf(Dimension dimension);

/// The unit that a text names: its symbol, or another spelling ("°F", "kp", "L/m²/s", "ft3/min/ft2"), whatever its
/// spaces and its case. Null for what is no unit. Where two dimensions share a symbol the first of `Dimension` answers;
/// give the dimension where it is known: a pull of "30 lb" is a force.
[[nodiscard]] const Unit* unitNamed(std::string_view text);
[[nodiscard]] const Unit* unitNamed(std::string_view text, Dimension dimension);

[[nodiscard]] constexpr double toBase(double value, const Unit& unit) { return (value + unit.offset) * unit.scale; }
[[nodiscard]] constexpr double fromBase(double value, const Unit& unit) { return value / unit.scale - unit.offset; }

/// Both units must be of one dimension; a unit to itself gives the very same number.
[[nodiscard]] constexpr double convert(double value, const Unit& from, const Unit& to) {
    return from.symbol == to.symbol ? value : fromBase(toBase(value, from), to);
}

/// Its name in the middle of a sentence: "force", "air-velocity" …
[[nodiscard]] Term termOf(Dimension dimension);
[[nodiscard]] std::optional<Dimension> dimensionFrom(std::string_view name);

/// A figure as papers write it: four significant digits at most below 1,000, whole ones above; "133.4", "0.05",
/// "2491".
[[nodiscard]] std::string figureText(double value);
/// "133.4 N", "121.1 °C".
[[nodiscard]] std::string amountText(double value, const Unit& unit);

}
