// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The made-up fleet of the reference cases 37, 39 and 40: 24 fabric sets from 6 lots of 2 fabrics, proof load 45,
/// limit 30. Its rows are in the order of the sets; set 0 are the pulls of new fabric.

#include "fabric/likelihood/fleet.h"
#include "reference_cases.h"

#include <algorithm>

namespace crownring::reference {

inline constexpr double fleetLimit = 30;

inline FabricFleet fleet() {
    const auto rows = table("37_fleet_readings.csv");
    const auto index = [&](const char* column, std::size_t row) {
        return static_cast<std::size_t>(rows.at(column)[row]) - 1;
    };
    const auto most = [&](const char* column) {
        return static_cast<std::size_t>(*std::max_element(rows.at(column).begin(), rows.at(column).end()));
    };
    FabricFleet fleet;
    fleet.fabrics = most("fab");
    fleet.fabricOfLot.resize(most("lot"));
    fleet.lotOfSet.resize(most("env"));
    for (std::size_t row = 0; row < rows.at("env").size(); ++row) {
        const auto lot = index("lot", row);
        fleet.fabricOfLot[lot] = index("fab", row);
        const bool held = rows.at("kind")[row] == 1;
        const Observation observed{held ? Seen::AtLeast : Seen::Exactly, std::log(rows.at("load")[row]), 0};
        if (rows.at("env")[row] == 0) {
            fleet.coupons.push_back({lot, observed});
            continue;
        }
        const auto set = index("env", row);
        fleet.lotOfSet[set] = lot;
        fleet.readings.push_back({set, rows.at("hours")[row], rows.at("row")[row], rows.at("dose")[row], observed});
    }
    return fleet;
}

}
