// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The unknown lines of a fleet as one row of figures: each stands about the one above it, sets about their lot, lots
/// about their fabric, and the cloth that a coupon was cut from about its lot.

#include "fabric/likelihood/fleet.h"

#include <Eigen/Core>
#include <cstdint>
#include <vector>

namespace crownring {

/// What figures scatter by about those above them.
enum class Level : std::uint8_t { LotIntercept, LotSlope, SetIntercept, SetSlope };

inline constexpr Eigen::Index levels = 4;

struct Edge {
    Eigen::Index child = 0;
    Eigen::Index parent = 0;
    Level level = Level::LotIntercept;
};

/// Where the figures of a line stand.
struct LinePlace {
    Eigen::Index intercept = 0;
    Eigen::Index slope = 0;
};

/// A test, with the figures of the line that it is of.
struct PlacedTest {
    LinePlace line;
    double hours = 0;
    double row = 1;
    double dose = 0;
    Observation observed;
};

struct LatentTree {
    Eigen::Index size = 0; ///< of the whole row; those of fabrics, in pairs, are its end
    std::vector<Edge> edges;
    std::vector<LinePlace> sets, lots, fabrics;
    std::vector<Eigen::Index> bolts; ///< one for each coupon
    std::vector<PlacedTest> tests;
};

[[nodiscard]] LatentTree latentTree(const FabricFleet& fleet);

}
