// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Which balloons and items of the fleet the register shows.

#include "screen/desk/fleet_sheet.h"
#include "screen/desk/mine.h"

#include <QStringList>

namespace crownring::screen {

struct RegisterSieve {
    QStringList words; ///< each somewhere in what is said of it
    bool poolOnly = false;
    bool outOfService = false; ///< what is, and nothing else; else what is in service
    Mine mine;
};

/// What passes, and how many are out of service whatever is sought. It points into the sheet.
struct Sought {
    std::vector<const BalloonCard*> balloons; ///< by registration
    std::vector<const ItemFacts*> items;      ///< by kind and name
    int balloonsOut = 0;
    int itemsOut = 0;
    int balloonsBeside = 0; ///< would pass, if only what is out of service were asked for the other way round
    int itemsBeside = 0;
};

/// On any thread.
[[nodiscard]] Sought sought(const FleetSheet& sheet, const RegisterSieve& sieve);

}
