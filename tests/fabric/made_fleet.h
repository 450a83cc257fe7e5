// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Made-up fleets whose truth is known: lots, sets, overheatings, inspections, retirements, as a workshop would have
/// seen them. One fabric, new at 100, limit 30.

#include "fabric/likelihood/ageing_state.h"
#include "fabric/outlook/life.h"

#include <cstdint>
#include <vector>

namespace crownring {

struct FleetMaking {
    std::size_t sets = 24;
    std::size_t setsOfLot = 4;
    double proof = 1.5;    ///< proof load, as a multiple of the limit
    double breakShare = 0; ///< share of pulls taken to break
    bool lognormalSlopes = true;
    double phi = 1;
    std::size_t couponsOfLot = 5;
    double meanSlope = 0.2;        ///< a mean life of 602 hours
    double slopeVariation = 0.15;  ///< of lots about the fabric, and again of sets about their lot
    double interceptSpread = 0.05; ///< of lots, and again of sets
    double scatter = 0.08;
    double gamma = 0.7;
    std::size_t readingsOfSet = 0; ///< 0: six every hundred hours; else this many in all, for the sake of size
    std::uint64_t seed = 1;
};

inline constexpr double madeLimit = 30;
inline constexpr double madeNew = 100;
inline constexpr int crownPulls = 2;           ///< at each inspection, beside four elsewhere
inline constexpr double inspectionEvery = 100; ///< hours, give or take a tenth

/// What nobody can see of a set.
struct MadeSet {
    Line line;
    PlaceUse use;           ///< when last seen
    double life = 0;        ///< in hours flown, from `use` on at its dose per hour
    bool retired = false;   ///< a pull broke below the limit
    bool nextFails = false; ///< whether a pull at the crown breaks below the limit at the next inspection
};

struct MadeFleet {
    FabricFleet fleet;
    std::vector<MadeSet> truth; ///< one for each set
};

[[nodiscard]] MadeFleet madeFleet(const FleetMaking& making);

}
