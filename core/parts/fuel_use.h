// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Whether a balloon burns more than it did: its latest flights against its own earlier ones at like temperatures and
/// loads. Porous fabric, a leaking vent or a burner out of tune burn more; so does another pilot, or wind.
///
///     41, 43, 42 kg an hour at 10 °C and 320 kg, where twelve flights of that sort before took 34 to 37
///     raised by 19 %, at 95 % from 14 to 24 %
///
/// Each of the latest three flights is held against the earlier ones that are like it: outside within 5 K, load within
/// 15 % (where a flight does not say either, it is like none). What is compared is the logarithm of fuel for each hour
/// flown. The interval of the mean of the three is Student's, over the scatter of the like flights about their own
/// means. It is called raised where that interval leaves out zero and the mean is at least a tenth. All of these
/// figures: common practice, no source. It proposes to look; whether the fabric is porous its own test says.

#include "measure/amount.h"
#include "parts/wear.h"

#include <cstddef>
#include <optional>
#include <span>

namespace crownring {

struct FuelFlight {
    Hours aloft;
    double burnt = 0; ///< in one unit for all flights
    std::optional<Celsius> outside;
    std::optional<Kilograms> load;
};

inline constexpr std::size_t latestCompared = 3;
inline constexpr std::size_t leastAlike = 5; ///< of each
inline constexpr Kelvins alikeOutside{5};
inline constexpr double alikeLoad = 0.15;
inline constexpr double leastRise = 0.10;

enum class NoFuelRise {
    TooFewFlights, ///< that say what they burnt
    TooFewAlike, ///< for one of the latest there are too few earlier ones like it, or it does not say how it was flown
};

struct FuelRise {
    Between<double> share{}; ///< of the earlier use; 0.19 is 19 % more
    double before = 0;       ///< an hour, of the like flights: the geometric mean
    double lately = 0;       ///< an hour, of the latest
    std::size_t alike = 0;   ///< flights that they are held against, each counted once
    [[nodiscard]] bool isRaised() const { return share.low > 0 && share.middle >= leastRise; }
};

/// @param flights in order of time
[[nodiscard]] tl::expected<FuelRise, NoFuelRise> fuelRise(std::span<const FuelFlight> flights);

}
