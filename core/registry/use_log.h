// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What was flown, day by day: of an item by its own clock, of a balloon by the flights logged for it.

#include "civil/civil_date.h"
#include "measure/name.h"
#include "measure/usage.h"

#include <cstddef>
#include <cstdint>
#include <unordered_map>
#include <vector>

namespace crownring {

struct DayUse {
    CivilDate on;
    std::int32_t flights = 0;
    Usage use; ///< of all of them
    bool operator==(const DayUse&) const = default;
};

/// From the first day on that the record knows of it to the last that was asked for, both inclusive. On a day that is
/// not among them nothing was flown.
struct UseLog {
    CivilDate first;
    CivilDate last;
    std::vector<DayUse> days; ///< in order, one a day
    bool operator==(const UseLog&) const = default;
};

/// Of many items. Those that went the same way share a log.
struct UseLogs {
    std::vector<UseLog> logs;
    std::unordered_map<ItemId, std::size_t> ofItem; ///< its place among them
};

}
