// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Fleets drawn from the very model that is fitted: what went in is known.

#include "fabric/likelihood/ageing_state.h"
#include "fabric/likelihood/effective_age.h"
#include "fabric/numeric/draws.h"

#include <cmath>

namespace crownring {

struct FleetPlan {
    std::size_t lots = 6;
    std::size_t setsOfLot = 4;
    std::size_t inspections = 5; ///< one every 100 hours, of two places at the crown and four below
    Line fabric{std::log(100), 0.22};
    Spreads spreads{0.05, 0.03, 0.05, 0.03, 0.08};
    AgeingShape shape{};
    double proof = std::log(45); ///< what holds it is not torn, but for one test in seven
    double badLot = 1;           ///< how much faster the first lot ages
};

inline FabricFleet simulatedFleet(const FleetPlan& plan, Draws& draws) {
    FabricFleet fleet;
    fleet.fabrics = 1;
    fleet.fabricOfLot.assign(plan.lots, 0);
    const auto about = [&](double mean, double sd) { return mean + sd * draws.normal(); };
    const auto seen = [&](double strength) {
        const bool isHeld = strength > plan.proof && draws.uniform() > 1.0 / 7;
        return Observation{isHeld ? Seen::AtLeast : Seen::Exactly, isHeld ? plan.proof : strength, 0};
    };
    for (std::size_t lot = 0; lot < plan.lots; ++lot) {
        const Line line{about(plan.fabric.intercept, plan.spreads.lotIntercept),
                        about(plan.fabric.slope, plan.spreads.lotSlope) * (lot == 0 ? plan.badLot : 1)};
        for (int coupon = 0; coupon < 5; ++coupon)
            fleet.coupons.push_back(
                {lot,
                 {Seen::Exactly, about(about(line.intercept, plan.spreads.setIntercept), plan.spreads.scatter), 0}});
        for (std::size_t set = 0; set < plan.setsOfLot; ++set) {
            const Line own{about(line.intercept, plan.spreads.setIntercept), about(line.slope, plan.spreads.setSlope)};
            for (std::size_t inspection = 1; inspection <= plan.inspections; ++inspection)
                for (int test = 0; test < 6; ++test) {
                    const double hours = 100 * static_cast<double>(inspection);
                    const double row = test < 2 ? 1 : draws.uniform();
                    const double mean = own.intercept - own.slope * effectiveAge(plan.shape, hours, row, 0);
                    fleet.readings.push_back(
                        {fleet.lotOfSet.size(), hours, row, 0, seen(about(mean, plan.spreads.scatter))});
                }
            fleet.lotOfSet.push_back(lot);
        }
    }
    return fleet;
}

}
