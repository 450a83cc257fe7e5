// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/unit.h"

#include <array>
#include <charconv>
#include <cmath>
#include <utility>

namespace crownring {

namespace {

// Exact by definition: the inch, the pound, standard gravity (NIST SP 811, from memory). The water columns are the
// conventional ones, of 1,000 kg/m3 under standard gravity.
constexpr double inchMm = 25.4;
constexpr double footMm = 12 * inchMm;
constexpr double gravity = 9.80665;
constexpr double poundKg = 0.45359237;
constexpr double poundForce = poundKg * gravity;
constexpr double psiPa = poundForce / (inchMm * inchMm) * 1e6;

constexpr std::array units = [] {
    using enum Dimension;
    return std::array{
        Unit{"N", "N", Force, 1},
        Unit{"daN", "daN", Force, 10},
        Unit{"kgf", "kgf", Force, gravity},
        Unit{"lbf", "lbf", Force, poundForce},

        Unit{"mm/s", "mm/s", AirVelocity, 1},
        Unit{"l/m2/s", "l/(m²·s)", AirVelocity, 1},
        Unit{"l/dm2/min", "l/(dm²·min)", AirVelocity, 100.0 / 60},
        Unit{"cm3/cm2/s", "cm³/(cm²·s)", AirVelocity, 10},
        Unit{"m3/m2/h", "m³/(m²·h)", AirVelocity, 1000.0 / 3600},
        Unit{"cfm/ft2", "cfm/ft²", AirVelocity, footMm / 60},

        Unit{"Pa", "Pa", Pressure, 1},
        Unit{"kPa", "kPa", Pressure, 1000},
        Unit{"mbar", "mbar", Pressure, 100},
        Unit{"bar", "bar", Pressure, 100'000},
        Unit{"psi", "psi", Pressure, psiPa},
        Unit{"inH2O", "inH₂O", Pressure, gravity * inchMm},
        Unit{"mmH2O", "mmH₂O", Pressure, gravity},

        Unit{"degC", "°C", Temperature, 1},
        Unit{"degF", "°F", Temperature, 5.0 / 9, -32},
        Unit{"K", "K", Temperature, 1, -273.15},

        Unit{"K", "K", TemperatureDifference, 1},
        Unit{"degC", "°C", TemperatureDifference, 1},
        Unit{"degF", "°F", TemperatureDifference, 5.0 / 9},

        Unit{"mm", "mm", Length, 1},
        Unit{"cm", "cm", Length, 10},
        Unit{"m", "m", Length, 1000},
        Unit{"in", "in", Length, inchMm},
        Unit{"ft", "ft", Length, footMm},

        Unit{"cm2", "cm²", Area, 1},
        Unit{"mm2", "mm²", Area, 0.01},
        Unit{"m2", "m²", Area, 10'000},
        Unit{"in2", "in²", Area, inchMm * inchMm / 100},
        Unit{"ft2", "ft²", Area, footMm * footMm / 100},

        Unit{"kg", "kg", Mass, 1},
        Unit{"g", "g", Mass, 0.001},
        Unit{"lb", "lb", Mass, poundKg},

        Unit{"m/s", "m/s", Speed, 1},
        Unit{"ft/min", "ft/min", Speed, footMm / 60'000},

        Unit{"N.m", "N·m", Torque, 1},
        Unit{"lbf.ft", "lbf·ft", Torque, poundForce * footMm / 1000},
        Unit{"lbf.in", "lbf·in", Torque, poundForce * inchMm / 1000},

        Unit{"V", "V", Voltage, 1},

        Unit{"year", "years", Age, 1},
        Unit{"month", "months", Age, 1.0 / 12},

        Unit{"s", "s", Duration, 1},

        Unit{"percent", "%", Share, 1},

        Unit{"count", "", Number, 1},
    };
}();

constexpr std::array<std::string_view, dimensionCount> dimensionNames{
    "force",   "air-velocity", "pressure", "temperature", "temperature-difference",
    "length",  "area",         "mass",     "speed",       "torque",
    "voltage", "age",          "duration", "share",       "number"};

struct Spelling {
    Dimension dimension;
    std::string_view text; ///< folded
    std::string_view symbol;
};

/// Common practice, no source. A pull read off a spring balance is written in kg or lb and means kgf or lbf.
constexpr std::array spellings = [] {
    using enum Dimension;
    return std::array{
        Spelling{Force, "newton", "N"},
        Spelling{Force, "newtons", "N"},
        Spelling{Force, "kp", "kgf"},
        Spelling{Force, "kg", "kgf"},
        Spelling{Force, "lb", "lbf"},
        Spelling{Force, "lbs", "lbf"},
        Spelling{AirVelocity, "dm3/m2/s", "l/m2/s"},
        Spelling{AirVelocity, "cfm", "cfm/ft2"},
        Spelling{AirVelocity, "ft3/min/ft2", "cfm/ft2"},
        Spelling{AirVelocity, "ft3/ft2/min", "cfm/ft2"},
        Spelling{AirVelocity, "ft3/ft2min", "cfm/ft2"},
        Spelling{AirVelocity, "cuft/min/sqft", "cfm/ft2"},
        Spelling{AirVelocity, "cfm/sqft", "cfm/ft2"},
        Spelling{AirVelocity, "c.f.m.persq.ft.", "cfm/ft2"},
        Spelling{AirVelocity, "ft/min", "cfm/ft2"},
        Spelling{Pressure, "hpa", "mbar"},
        Spelling{Pressure, "lbf/in2", "psi"},
        Spelling{Pressure, "psig", "psi"},
        Spelling{Pressure, "inwc", "inH2O"},
        Spelling{Pressure, "\"h2o", "inH2O"},
        Spelling{Pressure, "mmwc", "mmH2O"},
        Spelling{Temperature, "c", "degC"},
        Spelling{Temperature, "celsius", "degC"},
        Spelling{Temperature, "f", "degF"},
        Spelling{Temperature, "fahrenheit", "degF"},
        Spelling{Temperature, "kelvin", "K"},
        Spelling{TemperatureDifference, "c", "degC"},
        Spelling{TemperatureDifference, "f", "degF"},
        Spelling{TemperatureDifference, "kelvin", "K"},
        Spelling{Length, "inch", "in"},
        Spelling{Length, "\"", "in"},
        Spelling{Length, "foot", "ft"},
        Spelling{Length, "feet", "ft"},
        Spelling{Area, "sqcm", "cm2"},
        Spelling{Area, "sqin", "in2"},
        Spelling{Area, "sqft", "ft2"},
        Spelling{Mass, "lbs", "lb"},
        Spelling{Speed, "fpm", "ft/min"},
        Spelling{Voltage, "volt", "V"},
        Spelling{Age, "years", "year"},
        Spelling{Age, "yr", "year"},
        Spelling{Age, "a", "year"},
        Spelling{Age, "months", "month"},
        Spelling{Duration, "sec", "s"},
        Spelling{Duration, "seconds", "s"},
        Spelling{Number, "1", "count"},
        Spelling{Number, "pcs", "count"},
    };
}();

/// Small letters, no spaces, no brackets, raised and lowered figures as plain ones, a degree sign as "deg"; the dot
/// of a product goes.
std::string folded(std::string_view text) {
    constexpr std::array<std::pair<std::string_view, std::string_view>, 8> signs{{{"°", "deg"},
                                                                                  {"²", "2"},
                                                                                  {"³", "3"},
                                                                                  {"₂", "2"},
                                                                                  {"·", ""},
                                                                                  {"″", "\""},
                                                                                  {"\xC2\xA0", ""},
                                                                                  {"\xE2\x80\xAF", ""}}};
    std::string result;
    while (!text.empty()) {
        std::size_t taken = 0;
        for (const auto& [sign, plain] : signs)
            if (text.starts_with(sign)) {
                result += plain;
                taken = sign.size();
            }
        if (taken == 0) {
            const char c = text.front();
            if (std::string_view(" \t()^*").find(c) == std::string_view::npos)
                result += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
            taken = 1;
        }
        text.remove_prefix(taken);
    }
    return result;
}

const Unit* bySymbol(std::string_view symbol, std::span<const Unit> among) {
    for (const auto& unit : among)
        if (unit.symbol == symbol)
            return &unit;
    return nullptr;
}

const Unit* bySpelling(std::string_view text, std::span<const Unit> among) {
    const auto plain = folded(text);
    for (const auto& unit : among)
        if (folded(unit.symbol) == plain || folded(unit.shown) == plain)
            return &unit;
    for (const auto& spelling : spellings)
        if (spelling.text == plain)
            for (const auto& unit : among)
                if (unit.dimension == spelling.dimension && unit.symbol == spelling.symbol)
                    return &unit;
    return nullptr;
}

const Unit* named(std::string_view text, std::span<const Unit> among) {
    const auto* unit = bySymbol(text, among);
    return unit ? unit : bySpelling(text, among);
}

std::size_t indexAfter(std::size_t at, Dimension dimension, bool inside) {
    while (at < units.size() && (units[at].dimension == dimension) == inside)
        ++at;
    return at;
}

}

std::span<const Unit> unitsOf(Dimension dimension) {
    const auto first = indexAfter(0, dimension, false);
    return std::span(units).subspan(first, indexAfter(first, dimension, true) - first);
}

const Unit* unitNamed(std::string_view text) { return named(text, units); }

const Unit* unitNamed(std::string_view text, Dimension dimension) { return named(text, unitsOf(dimension)); }

Term termOf(Dimension dimension) {
    return {Term::Of::Dimension, std::string(dimensionNames[static_cast<std::size_t>(dimension)])};
}

std::optional<Dimension> dimensionFrom(std::string_view name) {
    for (std::size_t at = 0; at < dimensionNames.size(); ++at)
        if (dimensionNames[at] == name)
            return static_cast<Dimension>(at);
    return std::nullopt;
}

std::string figureText(double value) {
    const auto size = std::abs(value);
    int decimals = size >= 1000 ? 0 : size >= 100 ? 1 : size >= 10 ? 2 : size >= 1 ? 3 : 4;
    std::array<char, 400> room{};
    const auto end =
        std::to_chars(room.data(), room.data() + room.size(), value, std::chars_format::fixed, decimals).ptr;
    std::string text(room.data(), end);
    if (decimals > 0) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.ends_with('.'))
            text.pop_back();
    }
    return text == "-0" ? "0" : text;
}

std::string amountText(double value, const Unit& unit) {
    auto text = figureText(value);
    if (!unit.shown.empty())
        text.append(" ").append(unit.shown);
    return text;
}

}
