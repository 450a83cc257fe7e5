// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A fleet whose numbers have been looked at, in columns that a sweep walks from end to end.

#include "fabric/likelihood/fleet.h"
#include "problem/problem.h"

#include <cstddef>
#include <vector>

namespace crownring {

struct FleetColumns {
    std::size_t fabrics = 0;
    std::vector<std::size_t> fabricOfLot;
    std::vector<std::size_t> lotOfSet;

    std::vector<double> lnAge; ///< of each reading: ln((hours + dose) / 100 / T0), minus infinity when new
    std::vector<double> depth; ///< 1 - row
    std::vector<Observation> observed;
    std::vector<std::size_t> firstOfSet; ///< where a set's readings begin; one more at the end

    std::vector<Observation> coupons;
    std::vector<std::size_t> lotOfCoupon;

    std::size_t sets() const { return lotOfSet.size(); }
    std::size_t lots() const { return fabricOfLot.size(); }
    std::size_t readings() const { return observed.size(); }
};

/// `BadValue` where a number points nowhere, readings are out of order, or a value is none.
[[nodiscard]] Result<FleetColumns> fleetColumns(const FabricFleet& fleet);

/// t of each reading.
void agesOf(const FleetColumns& fleet, const AgeingShape& shape, std::vector<double>& ages);

}
