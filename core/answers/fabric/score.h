// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answers/fabric/record.h"
#include "fabric/outlook/score.h"
#include "fabric/sampler/ageing_sampler.h"

namespace crownring {

/// How the forecasts of the last years did: the record as it was known before each half-year is fitted, and what the
/// tests of that half-year found is held against it. Tests that decide nothing are left out. Nothing when stopped.
[[nodiscard]] Result<std::optional<Score>> pastScore(const FabricRecord& record, std::uint64_t seed = 1,
                                                     std::stop_token stop = {}, const Progress& progress = {});
inline constexpr int halfYearsScored = 8;

}
