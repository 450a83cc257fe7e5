// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/outlook/lot_slopes.h"

#include "fabric/likelihood/fleet_fit.h"

#include <cmath>

namespace crownring {

namespace {

/// Far beyond any difference between lots.
constexpr double unpooled = 10;

}

Result<std::vector<SlopeOfLot>> slopesOfLots(const FabricFleet& fleet, std::size_t fabric) {
    FleetFitChoice choice;
    choice.lotSlope = unpooled;
    const auto fit = fitFleet(fleet, choice);
    if (!fit)
        return tl::unexpected(fit.error());
    std::vector<LotSlope> lots(fleet.fabricOfLot.size());
    for (std::size_t lot = 0; lot < lots.size(); ++lot) {
        lots[lot].slope = fit->lots[lot].lambda;
        lots[lot].standardError = std::sqrt(fit->lots[lot].lambdaVariance);
    }
    for (const auto lot : fleet.lotOfSet)
        ++lots.at(lot).sets;
    for (const auto& reading : fleet.readings)
        if (reading.observed.seen != Seen::AtLeast)
            ++lots.at(fleet.lotOfSet.at(reading.set)).failures;
    std::vector<SlopeOfLot> found;
    for (std::size_t lot = 0; lot < lots.size(); ++lot)
        if (fleet.fabricOfLot[lot] == fabric && lots[lot].sets > 0)
            found.push_back({lot, lots[lot]});
    return found;
}

}
