// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/quantity.h"

#include <array>
#include <cassert>
#include <cmath>
#include <string>

namespace crownring {

namespace {

using enum Dimension;
using enum Good;

constexpr ReadingTraits pull{.placed = true, .tester = true, .direction = true, .jaw = true, .held = true};
constexpr ReadingTraits tear{.placed = true, .tester = true, .direction = true};
constexpr ReadingTraits airflow{.placed = true, .tester = true, .airflow = true};
constexpr ReadingTraits steps{.stepped = true};
constexpr ReadingTraits plain{};
constexpr ReadingTraits counted{.whole = true};
constexpr ReadingTraits leakTest{.held = true};
constexpr ReadingTraits checked{.tester = true};
constexpr ReadingTraits errorShown{.tester = true, .isSigned = true};

// Grab and strip: new fabric pulls 700 to 1,100 N on 45 mm in the application note of a maker of test instruments; old
// fabric below 50 N tears in the hand (common practice, no source).
constexpr std::array quantities{
    Quantity{"grab-strength", "grab strength", Force, "N", Higher, 50, 1200, pull},
    Quantity{"strip-strength", "strip strength", Force, "N", Higher, 50, 2500, pull},
    Quantity{"tear-strength", "tear strength", Force, "N", Higher, 1, 500, tear},
    Quantity{"air-permeability", "air permeability", AirVelocity, "mm/s", Lower, 0, 1500, airflow},
    Quantity{"tell-tale", "tell-tale temperature", Temperature, "degC", Lower, 60, 180, steps},
    Quantity{"crown-line-length", "length of the crown line", Length, "m", Within, 5, 80, plain},
    Quantity{"control-line-length", "length of the control line", Length, "m", Within, 5, 80, plain},
    Quantity{"vent-overlap", "overlap of the vent", Length, "mm", Higher, 0, 1000, plain},
    Quantity{"flying-wire-length-difference", "difference in length of the flying wires", Length, "mm", Lower, 0, 300,
             plain},
    Quantity{"carabiner-wear", "wear of the carabiner", Length, "mm", Lower, 0, 10, plain},
    Quantity{"broken-strands", "broken strands of the worst wire", Number, "count", Lower, 0, 200, counted},
    Quantity{"runner-thickness", "thickness left of the runner", Length, "mm", Higher, 0, 150, plain},
    Quantity{"wicker-break", "longest broken stretch of wicker", Length, "mm", Lower, 0, 1500, plain},
    Quantity{"burner-leak-test", "leak test of the burner", Pressure, "kPa", Higher, 100, 2500, leakTest},
    Quantity{"burner-pressure", "fuel pressure at the burner", Pressure, "kPa", Within, 100, 2000, plain},
    Quantity{"fuel-pressure-gauge-error", "error of the fuel pressure gauge", Pressure, "kPa", Within, -500, 500,
             errorShown},
    Quantity{"hose-leak-test", "leak test of the hose", Pressure, "kPa", Higher, 100, 2500, leakTest},
    Quantity{"cylinder-leak-test", "leak test of the cylinder", Pressure, "kPa", Higher, 100, 2500, leakTest},
    Quantity{"relief-valve-age", "age of the relief valve", Age, "year", Lower, 0, 40, plain},
    Quantity{"relief-valve-opening", "opening pressure of the relief valve", Pressure, "kPa", Within, 500, 5000,
             checked},
    Quantity{"cylinder-dent-depth", "depth of the deepest dent", Length, "mm", Lower, 0, 100, plain},
    Quantity{"altimeter-error", "error of the altimeter", Length, "m", Within, -300, 300, errorShown},
    Quantity{"variometer-error", "error of the variometer", Speed, "m/s", Within, -10, 10, errorShown},
    Quantity{"envelope-thermometer-error", "error of the envelope thermometer", TemperatureDifference, "K", Within, -60,
             60, errorShown},
    Quantity{"battery-voltage", "battery voltage", Voltage, "V", Higher, 0, 60, plain},
};

std::string symbolsOf(Dimension dimension) {
    std::string list;
    const auto units = unitsOf(dimension);
    for (std::size_t i = 0; i < units.size(); ++i) {
        list += i == 0 ? "" : i + 1 == units.size() ? " or " : ", ";
        list += units[i].symbol;
    }
    return list;
}

template <class Size>
std::optional<Problem> badSize(const std::optional<Size>& written, bool belongs, const Quantity& quantity,
                               const char* key) {
    if (!written)
        return std::nullopt;
    const double size = written->value();
    if (!belongs)
        return Problem{Code::BadQuantity,
                       "it is no part of a reading of '" + std::string(quantity.slug) + "'",
                       "leave it out",
                       {{}, 0, key}};
    if (!std::isfinite(size) || size <= 0)
        return Problem{Code::BadQuantity,
                       figureText(size) + " is not above zero",
                       "write what the test was done with, or leave it out where it is not known",
                       {{}, 0, key}};
    return std::nullopt;
}

std::optional<Problem> badDirection(const std::optional<std::string>& direction, const Quantity& quantity) {
    if (!direction)
        return std::nullopt;
    if (!quantity.traits.direction)
        return Problem{Code::BadQuantity,
                       "a reading of '" + std::string(quantity.slug) + "' has no direction",
                       "leave it out",
                       {{}, 0, "direction"}};
    if (*direction != "warp" && *direction != "weft")
        return Problem{Code::BadQuantity,
                       "'" + *direction + "' is no direction of fabric",
                       "write warp or weft",
                       {{}, 0, "direction"}};
    return std::nullopt;
}

}

std::span<const Quantity> allQuantities() { return quantities; }

const Quantity* quantityNamed(std::string_view slug) {
    for (const auto& quantity : quantities)
        if (quantity.slug == slug)
            return &quantity;
    return nullptr;
}

const Unit& unitOf(const Quantity& quantity) {
    const auto* unit = unitNamed(quantity.unit, quantity.dimension);
    assert(unit != nullptr);
    return *unit;
}

Figure figureOf(const Quantity& quantity, double value, const Unit& written) {
    return Figure(value, written).as(unitOf(quantity));
}

bool isPlausible(const Quantity& quantity, const Figure& figure) {
    const double value = figure.in(unitOf(quantity));
    return value >= quantity.lowest && value <= quantity.highest;
}

Result<const Quantity*> quantityFor(std::string_view slug) {
    if (const auto* quantity = quantityNamed(slug))
        return quantity;
    return problem(Code::BadQuantity, "'" + std::string(slug) + "' is no quantity that the bench can read",
                   "name one of the list of quantities, such as grab-strength or air-permeability",
                   {{}, 0, "quantity"});
}

Result<const Unit*> unitFor(const Quantity& quantity, std::string_view text) {
    if (const auto* unit = unitNamed(text, quantity.dimension))
        return unit;
    const auto* other = unitNamed(text);
    auto message = other ? "'" + std::string(text) + "' is a unit of " + std::string(dimensionTitle(other->dimension)) +
                               ", and '" + std::string(quantity.slug) + "' is a reading of " +
                               std::string(dimensionTitle(quantity.dimension))
                         : "'" + std::string(text) + "' is no unit known here";
    return problem(Code::BadQuantity, std::move(message), "write it in " + symbolsOf(quantity.dimension),
                   {{}, 0, "unit"});
}

std::optional<Problem> misfit(const Quantity& quantity, const TestConditions& conditions) {
    const auto& traits = quantity.traits;
    if (auto bad = badDirection(conditions.direction, quantity))
        return bad;
    if (auto bad = badSize(conditions.jaw, traits.jaw, quantity, "jaw_mm"))
        return bad;
    if (auto bad = badSize(conditions.pressure, traits.airflow, quantity, "pressure_pa"))
        return bad;
    return badSize(conditions.area, traits.airflow, quantity, "area_cm2");
}

}
