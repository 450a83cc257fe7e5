// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Releases that were signed and that the record, as it is now, would refuse: a reading corrected since, a tester found
/// out of calibration, a line withdrawn.

#include "registry/books.h"

#include <map>

namespace crownring {

/// The latest come first.
/// @param balloon only its releases
/// @param most how many releases are asked about, the latest first: each asks the gate again
[[nodiscard]] Result<std::vector<InspectionId>>
unsupportedReleases(Books& books, const std::optional<Registration>& balloon, CivilDate on, std::size_t most);

/// Of the visits in which any of these items was inspected, the latest opened first.
[[nodiscard]] Result<std::vector<InspectionId>> unsupportedReleasesOf(Books& books, const std::vector<ItemId>& items,
                                                                      CivilDate on, std::size_t most);

using LostReleases = std::map<Registration, std::vector<InspectionId>>;
/// Of the whole fleet, by the balloon that was inspected; of components that were alone on the bench none.
[[nodiscard]] Result<LostReleases> unsupportedByBalloon(Books& books, CivilDate on, std::size_t most);

/// What counts today was released last: so many releases are asked about where a balloon or a kit is asked for.
inline constexpr std::size_t latestReleases = 4;
/// Of a whole fleet that many are asked about.
inline constexpr std::size_t latestOfTheFleet = 200;

}
