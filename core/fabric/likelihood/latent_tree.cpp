// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/likelihood/latent_tree.h"

namespace crownring {

namespace {

std::vector<LinePlace> places(std::size_t count, Eigen::Index& next) {
    std::vector<LinePlace> lines(count);
    for (auto& line : lines) {
        line = {next, next + 1};
        next += 2;
    }
    return lines;
}

}

LatentTree latentTree(const FabricFleet& fleet) {
    LatentTree tree;
    tree.sets = places(fleet.lotOfSet.size(), tree.size);
    for (std::size_t coupon = 0; coupon < fleet.coupons.size(); ++coupon)
        tree.bolts.push_back(tree.size++);
    tree.lots = places(fleet.fabricOfLot.size(), tree.size);
    tree.fabrics = places(fleet.fabrics, tree.size);

    for (std::size_t set = 0; set < tree.sets.size(); ++set) {
        const auto& lot = tree.lots.at(fleet.lotOfSet[set]);
        tree.edges.push_back({tree.sets[set].intercept, lot.intercept, Level::SetIntercept});
        tree.edges.push_back({tree.sets[set].slope, lot.slope, Level::SetSlope});
    }
    for (std::size_t coupon = 0; coupon < fleet.coupons.size(); ++coupon)
        tree.edges.push_back(
            {tree.bolts[coupon], tree.lots.at(fleet.coupons[coupon].lot).intercept, Level::SetIntercept});
    for (std::size_t lot = 0; lot < tree.lots.size(); ++lot) {
        const auto& fabric = tree.fabrics.at(fleet.fabricOfLot[lot]);
        tree.edges.push_back({tree.lots[lot].intercept, fabric.intercept, Level::LotIntercept});
        tree.edges.push_back({tree.lots[lot].slope, fabric.slope, Level::LotSlope});
    }

    for (const auto& reading : fleet.readings)
        tree.tests.push_back({tree.sets.at(reading.set), reading.hours, reading.row, reading.dose, reading.observed});
    // New cloth has no age, so that it does not matter which slope it is given.
    for (std::size_t coupon = 0; coupon < fleet.coupons.size(); ++coupon)
        tree.tests.push_back({{tree.bolts[coupon], tree.lots.at(fleet.coupons[coupon].lot).slope},
                              0,
                              1,
                              0,
                              fleet.coupons[coupon].observed});
    return tree;
}

}
