// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fabric/likelihood/fleet.h"
#include "fabric/outlook/lot_test.h"
#include "problem/problem.h"

namespace crownring {

struct SlopeOfLot {
    std::size_t lot = 0;
    LotSlope slope;
};

/// How fast each lot of a fabric ages by its own readings: a restricted fit of the fleet in which lots' slopes are not
/// drawn towards each other. Lots that no set is of are left out. Problems as of `fitFleet`.
[[nodiscard]] Result<std::vector<SlopeOfLot>> slopesOfLots(const FabricFleet& fleet, std::size_t fabric);

}
