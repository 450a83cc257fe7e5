// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The readings of a fleet as plain columns, ready for arithmetic.
///
/// The unit is the fabric set: the panels of one envelope that came from one lot and were put in at the same hours. A
/// panel replaced begins a set of its own, at zero hours. Sets stand within lots, lots within fabrics; all are numbered
/// from 0.

#include "fabric/likelihood/observation.h"

#include <cstddef>
#include <vector>

namespace crownring {

struct SetReading {
    std::size_t set = 0;
    double hours = 0; ///< flown on this fabric when it was tested, >= 0
    double row = 1;   ///< height of the place: 0 at the mouth, 1 at the crown
    double dose = 0;  ///< equivalent hours of over-temperature up to then, >= 0 (`fabric/heat.h`)
    Observation observed;

    bool operator==(const SetReading&) const = default;
};

/// A test of new fabric of a lot, at zero hours: a mill's certificate or a pull from the bolt.
struct Coupon {
    std::size_t lot = 0;
    Observation observed;
};

struct FabricFleet {
    std::size_t fabrics = 0;
    std::vector<std::size_t> fabricOfLot; ///< one for each lot
    std::vector<std::size_t> lotOfSet;    ///< one for each set
    std::vector<SetReading> readings;     ///< of one set next to each other, sets in order
    std::vector<Coupon> coupons;
};

/// How a set ages, the same for all sets of a fleet: effective hours are t = T0 * (tau/T0)^phi with
/// tau = exp(-gamma (1 - row)) * (hours + kappa * dose) / 100; log strength is alpha - lambda t.
struct AgeingShape {
    double gamma = 0.7; ///< how much slower fabric ages towards the mouth; 0 for not at all
    double phi = 1;     ///< 1: a plain exponential; above 1: slowly first, then faster
};

inline constexpr double agePivot = 6;         ///< T0, in hundreds of hours
inline constexpr double doseWeight = 1;       ///< kappa
inline constexpr double hoursOfAgeUnit = 100; ///< hours in a unit of t

}
