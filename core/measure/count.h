// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Whole numbers that mean something: minutes aloft, landings, inflations, days. They add to their own kind only.

#include <compare>
#include <cstdint>

namespace crownring {

/// A count of `What`: a signed whole number, since what is left may be negative.
template <class What>
class Count {
public:
    constexpr Count() = default;
    constexpr explicit Count(std::int64_t value) : m_value(value) {}

    [[nodiscard]] constexpr std::int64_t value() const { return m_value; }

    constexpr Count& operator+=(Count other) {
        m_value += other.m_value;
        return *this;
    }
    constexpr Count& operator-=(Count other) {
        m_value -= other.m_value;
        return *this;
    }
    friend constexpr Count operator+(Count a, Count b) { return Count(a.m_value + b.m_value); }
    friend constexpr Count operator-(Count a, Count b) { return Count(a.m_value - b.m_value); }
    friend constexpr auto operator<=>(Count, Count) = default;

private:
    std::int64_t m_value = 0;
};

/// Time in service, in whole minutes: from leaving the ground until touching it at the next landing (14 CFR 1.1).
using Minutes = Count<struct MinutesTag>;
using Landings = Count<struct LandingsTag>;
using Inflations = Count<struct InflationsTag>;
/// What one of an item's clocks shows, whichever of the three it is: where the clock is named beside it.
using ClockCount = Count<struct ClockTag>;
/// Of the calendar.
using Days = Count<struct DaysTag>;

/// The longest flight that the record takes: seven days.
inline constexpr Minutes longestFlight{7 * 24 * 60};

/// The most landings, and the most inflations, of one flight.
inline constexpr std::int64_t mostOfOneFlight = 200;

/// The largest figure accepted on any clock: about 19,000 years aloft. Sums of a whole fleet stay far from overflow.
inline constexpr std::int64_t largestCount = 10'000'000'000;

}
