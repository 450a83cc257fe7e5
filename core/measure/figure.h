// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A figure with its unit: an amount of which only what was read says of what it is. It never becomes a bare number
/// unasked, and is compared with figures of its own dimension.
///
///     Figure pull(30, *unitNamed("lbf"));
///     pull.amount<Newtons>()                       133.4 N
///     pull.amount<Pascals>()                       nothing
///     pull < Figure(150, *unitNamed("N"))          true
///     pull < Figure(150, *unitNamed("mm/s"))       false, and so is the other way round

#include "measure/amount.h"
#include "measure/unit.h"

#include <cassert>
#include <compare>
#include <optional>
#include <string>

namespace crownring {

/// The dimension that an amount of `measure/amount.h` is of; its number is one of the base unit.
template <class AmountOf>
inline constexpr Dimension dimensionOf = Dimension::Number;
template <>
inline constexpr Dimension dimensionOf<Newtons> = Dimension::Force;
template <>
inline constexpr Dimension dimensionOf<MillimetresPerSecond> = Dimension::AirVelocity;
template <>
inline constexpr Dimension dimensionOf<Pascals> = Dimension::Pressure;
template <>
inline constexpr Dimension dimensionOf<Millimetres> = Dimension::Length;
template <>
inline constexpr Dimension dimensionOf<SquareCentimetres> = Dimension::Area;
template <>
inline constexpr Dimension dimensionOf<Celsius> = Dimension::Temperature;
template <>
inline constexpr Dimension dimensionOf<Kelvins> = Dimension::TemperatureDifference;

class Figure {
public:
    /// None of anything.
    Figure() : m_unit(&unitsOf(Dimension::Number).front()) {}
    /// @param unit of the program's list, which outlives all figures
    Figure(double value, const Unit& unit) : m_value(value), m_unit(&unit) {}

    [[nodiscard]] const Unit& unit() const { return *m_unit; }
    [[nodiscard]] Dimension dimension() const { return m_unit->dimension; }
    /// @pre `unit` is of the same dimension
    [[nodiscard]] double in(const Unit& unit) const {
        assert(unit.dimension == dimension());
        return &unit == m_unit ? m_value : convert(m_value, *m_unit, unit);
    }
    /// @pre `unit` is of the same dimension
    [[nodiscard]] Figure as(const Unit& unit) const { return {in(unit), unit}; }
    /// In its own unit.
    [[nodiscard]] double value() const { return m_value; }

    /// Nothing where it is of another dimension.
    template <class AmountOf>
    [[nodiscard]] std::optional<AmountOf> amount() const {
        static_assert(dimensionOf<AmountOf> != Dimension::Number);
        return dimension() == dimensionOf<AmountOf> ? std::optional(AmountOf(toBase(m_value, *m_unit))) : std::nullopt;
    }

    /// Unordered where the dimensions differ. Exact: 13.6078 kgf and 30 lbf, which differ in their last digits only,
    /// are told apart (`reaches` does not).
    friend std::partial_ordering operator<=>(const Figure& a, const Figure& b) {
        return a.dimension() == b.dimension() ? a.m_value <=> b.in(*a.m_unit) : std::partial_ordering::unordered;
    }
    friend bool operator==(const Figure& a, const Figure& b) { return a <=> b == std::partial_ordering::equivalent; }
    /// How many times the one holds the other. @pre of one dimension, whose zero is nothing
    friend double operator/(const Figure& a, const Figure& b) { return a.m_value / b.in(*a.m_unit); }

private:
    double m_value = 0;
    const Unit* m_unit;
};

/// Whether a figure is at least as large as a bound, but for the last digits, which come from converting units: 13.6078
/// kgf reach 30 lbf. False where the dimensions differ.
[[nodiscard]] bool reaches(const Figure& figure, const Figure& bound);

/// "133.4 N", "121.1 °C".
[[nodiscard]] std::string amountText(const Figure& figure);

}
