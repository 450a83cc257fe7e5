// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Readings of a fleet as JAGS takes them (R's dump), and draws as it gives them (CODA).

#include "fabric/likelihood/fleet.h"

#include <map>
#include <string>
#include <vector>

namespace crownring::bench {

/// `ageing.data` and `ageing.inits` for ageing.bug: fleets of one fabric whose tests broke or held.
void writeForJags(const FabricFleet& fleet, const std::string& folder);

/// Draws of each parameter, chains one after the other.
[[nodiscard]] std::map<std::string, std::vector<double>> codaOf(const std::string& folder, int chains);

}
