// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What of the readings of an inspection stands in the way of signing it. Pure.

#include "bench/release/release.h"

namespace crownring {

/// Where a refusal is about: a line of the checklist, an item.
struct RefusedAt {
    std::string line;
    std::optional<ItemId> item;
};

/// Nothing where a tester is named that was in calibration on that day.
/// @param what was done or read with it
[[nodiscard]] std::optional<Refusal> refusalOfTester(const BenchFile& file, const std::optional<TesterId>& tester,
                                                     CivilDate day, const Argument& what, const RefusedAt& at);

/// Each reading that speaks: taken with a tester in calibration, at a place that there is, confirmed where it looks
/// impossible, judged, and with its defect where it fails.
[[nodiscard]] std::vector<Refusal> refusalsOfReadings(const BenchFile& file);

}
