// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/quantity.h"

#include "problem/faults/reading_fault.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <string>

namespace crownring {

namespace {

constexpr ReadingTraits pull{.placed = true, .tester = true, .direction = true, .jaw = true, .held = true};
constexpr ReadingTraits tear{.placed = true, .tester = true, .direction = true};
constexpr ReadingTraits airflow{.placed = true, .tester = true, .airflow = true};
constexpr ReadingTraits timed{.placed = true, .tester = true};
constexpr ReadingTraits steps{.stepped = true};
constexpr ReadingTraits plain{};
constexpr ReadingTraits pressed{.fuelled = true};
constexpr ReadingTraits leakTest{.held = true, .gauge = true};
constexpr ReadingTraits checked{.tester = true};
constexpr ReadingTraits errorShown{.tester = true, .isSigned = true};
constexpr ReadingTraits worn{.onBasket = true, .wears = true};
constexpr ReadingTraits wornCount{.whole = true, .onBasket = true, .wears = true};
constexpr ReadingTraits wornJoint{.placed = true, .whole = true, .wears = true};
constexpr ReadingTraits onBasket{.onBasket = true};

// What of which item wears: trade usage, no source.
constexpr std::array baskets{ItemKind::Basket};
constexpr std::array envelopes{ItemKind::Envelope};
constexpr std::array hangers{ItemKind::Basket, ItemKind::Envelope, ItemKind::Burner, ItemKind::Other};

// Grab and strip: new fabric pulls 700 to 1,100 N on 45 mm in the application note of a maker of test instruments; old
// fabric below 50 N tears in the hand (common practice, no source). Timed leaks: an instrument of its own scale reads a
// few seconds of worn and some hundred of new fabric (facts on statistics, read); seconds are of no other unit.
constexpr std::array quantities = [] {
    using enum Dimension;
    using enum Good;
    return std::array{
        Quantity{"grab-strength", Force, "N", Higher, 50, 1200, pull},
        Quantity{"strip-strength", Force, "N", Higher, 50, 2500, pull},
        Quantity{"tear-strength", Force, "N", Higher, 1, 500, tear},
        Quantity{"air-permeability", AirVelocity, "mm/s", Lower, 0, 1500, airflow},
        Quantity{"permeability-time", Duration, "s", Higher, 1, 3600, timed},
        Quantity{"tell-tale", Temperature, "degC", Lower, 60, 180, steps},
        Quantity{"crown-line-length", Length, "m", Within, 5, 80, plain},
        Quantity{"control-line-length", Length, "m", Within, 5, 80, plain},
        Quantity{"vent-overlap", Length, "mm", Higher, 0, 1000, plain},
        Quantity{"flying-wire-length-difference", Length, "mm", Lower, 0, 300, onBasket},
        Quantity{"carabiner-wear", Length, "mm", Lower, 0, 10, worn, hangers},
        Quantity{"broken-strands", Number, "count", Lower, 0, 200, wornCount, hangers},
        Quantity{"wire-diameter", Length, "mm", Higher, 0.5, 20, worn, hangers},
        Quantity{"runner-thickness", Length, "mm", Higher, 0, 150, worn, baskets},
        Quantity{"floor-thickness", Length, "mm", Higher, 0, 60, worn, baskets},
        Quantity{"rope-handle-diameter", Length, "mm", Higher, 3, 60, worn, baskets},
        Quantity{"wicker-break", Length, "mm", Lower, 0, 1500, worn, baskets},
        Quantity{"tape-joint-broken-stitches", Number, "count", Lower, 0, 200, wornJoint, envelopes},
        Quantity{"burner-leak-test", Pressure, "kPa", Higher, 100, 2500, leakTest},
        Quantity{"burner-pressure", Pressure, "kPa", Within, 100, 2000, pressed},
        Quantity{"fuel-pressure-gauge-error", Pressure, "kPa", Within, -500, 500, errorShown},
        Quantity{"hose-leak-test", Pressure, "kPa", Higher, 100, 2500, leakTest},
        Quantity{"cylinder-leak-test", Pressure, "kPa", Higher, 100, 2500, leakTest},
        Quantity{"relief-valve-age", Age, "year", Lower, 0, 40, plain},
        Quantity{"relief-valve-opening", Pressure, "kPa", Within, 500, 5000, checked},
        Quantity{"cylinder-dent-depth", Length, "mm", Lower, 0, 100, plain},
        Quantity{"altimeter-error", Length, "m", Within, -300, 300, errorShown},
        Quantity{"variometer-error", Speed, "m/s", Within, -10, 10, errorShown},
        Quantity{"envelope-thermometer-error", TemperatureDifference, "K", Within, -60, 60, errorShown},
        Quantity{"battery-voltage", Voltage, "V", Higher, 0, 60, plain},
    };
}();

Listed symbolsOf(Dimension dimension) {
    Listed symbols{{}, Listed::Joined::Or};
    for (const auto& unit : unitsOf(dimension))
        symbols.list.emplace_back(unit.symbol);
    return symbols;
}

template <class Size>
std::optional<Problem> badSize(const std::optional<Size>& written, bool belongs, const Quantity& quantity,
                               const char* key) {
    if (!written)
        return std::nullopt;
    const double size = written->value();
    if (!belongs)
        return Problem{ReadingFault::NoPartOfIt, {termOf(quantity)}, atKey(key)};
    if (!std::isfinite(size) || size <= 0)
        return Problem{ReadingFault::NotAboveZero, {size}, atKey(key)};
    return std::nullopt;
}

std::optional<Problem> badDirection(const std::optional<std::string>& direction, const Quantity& quantity) {
    if (!direction)
        return std::nullopt;
    if (!quantity.traits.direction)
        return Problem{ReadingFault::HasNoDirection, {termOf(quantity)}, atKey("direction")};
    if (*direction != "warp" && *direction != "weft")
        return Problem{ReadingFault::NoDirection, {*direction}, atKey("direction")};
    return std::nullopt;
}

}

bool Quantity::isReadOf(ItemKind kind) const { return kinds.empty() || std::ranges::find(kinds, kind) != kinds.end(); }

std::span<const Quantity> allQuantities() { return quantities; }

const Quantity* quantityNamed(std::string_view slug) {
    for (const auto& quantity : quantities)
        if (quantity.slug == slug)
            return &quantity;
    return nullptr;
}

Term termOf(const Quantity& quantity) { return quantityTerm(quantity.slug); }

Term quantityTerm(std::string_view slug) { return {Term::Of::Quantity, std::string(slug)}; }

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
    return problem(ReadingFault::NoQuantity, {slug}, atKey("quantity"));
}

Result<const Unit*> unitFor(const Quantity& quantity, std::string_view text) {
    if (const auto* unit = unitNamed(text, quantity.dimension))
        return unit;
    const auto units = symbolsOf(quantity.dimension);
    const auto* other = unitNamed(text);
    if (!other)
        return problem(ReadingFault::NoUnit, {text, units}, atKey("unit"));
    return problem(ReadingFault::OtherDimension,
                   {text, termOf(other->dimension), termOf(quantity), termOf(quantity.dimension), units},
                   atKey("unit"));
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
