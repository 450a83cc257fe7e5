// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Where to take readings on an envelope when its manual names a number and no places: a suggestion, spread around the
/// gores and weighted to the crown, which ages first. The manual decides; any other place may be read instead.
/// Common practice, no source.

#include <vector>

namespace crownring {

struct SuggestedPlace {
    int gore = 1; ///< from 1
    int row = 1;  ///< from 1 at the mouth
    bool operator==(const SuggestedPlace&) const = default;
};

/// `count` different places, or all panels where there are fewer. Half of them in the topmost row, a quarter each at
/// three quarters and at half of the height.
[[nodiscard]] std::vector<SuggestedPlace> suggestedPlaces(int count, int gores, int rows);

/// Where `plan` still asks once readings were taken: each serves its own place, and one taken elsewhere the nearest of
/// those that are left, so that what is left stays spread over all gores.
/// @param read different places
[[nodiscard]] std::vector<SuggestedPlace> stillAsked(std::vector<SuggestedPlace> plan, std::vector<SuggestedPlace> read,
                                                     int gores);

}
