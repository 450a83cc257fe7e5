// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How much of a forecast its readings warrant. Whoever tells one asks here, the screen and crownringctl alike; what is
/// withheld is not in the answer at all.

#include "fabric/outlook/outlook.h"

#include <span>

namespace crownring {

/// What of a band may be told: all of it, its cautious end alone, or nothing.
template <class At>
struct ToldBand {
    std::optional<At> low;
    std::optional<At> middle;
    std::optional<At> high;

    [[nodiscard]] bool isWhole() const { return low && middle && high; }
    bool operator==(const ToldBand&) const = default;
};

enum class LifeEnd : std::uint8_t {
    Over,       ///< hardly a draw says that it is still in service: `life` is empty
    NotKnown,   ///< readings do not tell it; only the early end bounds it
    OutOfSight, ///< by readings, but its late end lies far beyond what was ever tested: only the early end is told
    InSight,
};

struct ToldOutlook {
    Hours flown;             ///< on that fabric
    Hours dose;              ///< of over-temperature so far, in hours of plain ageing
    bool byReadings = false; ///< else figures of what is to come rest on what is assumed, and are withheld
    LifeEnd end = LifeEnd::NotKnown;
    ToldBand<double> strength;       ///< in the unit of the readings; where not by readings only the end that is worse
    ToldBand<Hours> life;            ///< flown on that fabric
    std::optional<double> failsNext; ///< by readings only, as the next two
    std::optional<double> belowByNext;
    std::optional<double> reachedAlready;
    ForecastGrounds grounds;
};

/// @param rises the quantity rises as fabric ages, so that its high end is the worse one
[[nodiscard]] ToldOutlook toldOf(const SetOutlook& outlook, bool rises = false);

/// Of the sets of one envelope the one whose early end is nearest: it speaks for the envelope. At least one set.
[[nodiscard]] std::size_t weakestOf(std::span<const SetOutlook> sets);

}
