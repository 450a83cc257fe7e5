// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// For each lot of fabric: does it age faster than the others of its fabric? See `fabric/lot_test.h` for what can be
/// found at all.

#include "answers/fabric/forecast.h"
#include "fabric/outlook/lot_test.h"

namespace crownring {

struct LotRow {
    std::size_t lot = 0; ///< into `FabricRecord::lots`
    std::size_t envelopes = 0;
    std::size_t readings = 0;
    std::optional<LotPace> pace; ///< from the fit that forecasts come from; nothing for an only lot
    LotStanding standing = LotStanding::TooLittle;
    std::optional<LotVerdict> verdict; ///< nothing where the fabric has too few lots
};

struct FabricLots {
    std::size_t fabric = 0;                        ///< into `FabricRecord::fabrics`
    std::vector<LotRow> lots;                      ///< those that a set is of, alarms first, then by how fast they age
    std::optional<double> smallestDetectableRatio; ///< nothing with fewer than `leastLots` lots
};

inline constexpr int monthsBetweenLooks = 3;

/// An alarm stands where the look of `monthsBetweenLooks` ago said so too and readings of the lot came since; else the
/// lot is watched. Where the readings leave the ageing of the fleet open, no lot stands out.
[[nodiscard]] std::vector<FabricLots> lotsOf(const FabricFit& fit);

}
