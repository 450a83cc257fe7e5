// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Physical amounts that do not mix: newtons, millimetres, pascals. Each is a number of its one unit; how people write
/// them is in `unit.h`, and an amount whose dimension is known only from what was read is a `Figure` (`figure.h`).

#include "measure/count.h"

#include <compare>

namespace crownring {

/// A number of `What`. It adds to its own kind only, and does not become a bare number unasked.
template <class What>
class Amount {
public:
    constexpr Amount() = default;
    constexpr explicit Amount(double value) : m_value(value) {}

    [[nodiscard]] constexpr double value() const { return m_value; }

    friend constexpr Amount operator+(Amount a, Amount b) { return Amount(a.m_value + b.m_value); }
    friend constexpr Amount operator-(Amount a, Amount b) { return Amount(a.m_value - b.m_value); }
    friend constexpr Amount operator*(double times, Amount a) { return Amount(times * a.m_value); }
    /// How many times the one holds the other.
    friend constexpr double operator/(Amount a, Amount b) { return a.m_value / b.m_value; }
    friend constexpr auto operator<=>(Amount, Amount) = default;

private:
    double m_value = 0;
};

using Newtons = Amount<struct NewtonsTag>;
using Pascals = Amount<struct PascalsTag>;
using Millimetres = Amount<struct MillimetresTag>;
using Metres = Amount<struct MetresTag>;
using Kilograms = Amount<struct KilogramsTag>;
using Litres = Amount<struct LitresTag>;
using SquareCentimetres = Amount<struct SquareCentimetresTag>;
/// Air permeability: the velocity of the air that passes perpendicularly through the fabric (ISO 9237).
using MillimetresPerSecond = Amount<struct MillimetresPerSecondTag>;
/// Time in service as a curve over it is drawn: of fabric, whose age is no whole number of minutes.
using Hours = Amount<struct HoursTag>;
/// A difference of two temperatures.
using Kelvins = Amount<struct KelvinsTag>;

/// A temperature. Two of them differ by kelvins and have no sum.
class Celsius {
public:
    constexpr Celsius() = default;
    constexpr explicit Celsius(double value) : m_value(value) {}

    [[nodiscard]] constexpr double value() const { return m_value; }

    friend constexpr Kelvins operator-(Celsius a, Celsius b) { return Kelvins(a.m_value - b.m_value); }
    friend constexpr Celsius operator+(Celsius a, Kelvins b) { return Celsius(a.m_value + b.value()); }
    friend constexpr auto operator<=>(Celsius, Celsius) = default;

private:
    double m_value = 0;
};

/// The coldest and hottest that the record takes of an envelope.
inline constexpr Celsius coldestTaken{-60};
inline constexpr Celsius hottestTaken{400};

[[nodiscard]] constexpr Hours hoursOf(Minutes minutes) {
    constexpr double minutesOfHour = 60;
    return Hours(static_cast<double>(minutes.value()) / minutesOfHour);
}

}
