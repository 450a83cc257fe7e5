// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How the fabric of a fleet ages, from its readings. Reading the record (`fabricRecord`) and fitting are apart, so
/// that a fit can run on another thread than that of the record.

#include "answers/fabric/record.h"
#include "fabric/sampler/ageing_sampler.h"

#include <memory>

namespace crownring {

struct FabricFit {
    std::shared_ptr<const FabricRecord> record;
    FleetColumns columns;
    AgeingPrior prior;
    Posterior posterior;
    double worstRHat = 1;
};

using SharedFit = std::shared_ptr<const FabricFit>;

/// Nothing when stopped before the end. BadValue for a record that is none.
[[nodiscard]] Result<std::optional<FabricFit>> fitOf(std::shared_ptr<const FabricRecord> record, std::uint64_t seed = 1,
                                                     std::stop_token stop = {}, const Progress& progress = {});

/// The same without a new fit: on another day with no reading more, or with readings added to one set
/// (`fabric/warm_start.h`). Nothing where the fleets differ by more, or what is left of the draws will not do: then
/// only `fitOf` answers.
[[nodiscard]] std::optional<FabricFit> refitted(const FabricFit& before, std::shared_ptr<const FabricRecord> record);

}
