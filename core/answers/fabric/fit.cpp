// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/fabric/fit.h"

#include "fabric/outlook/outlook.h"
#include "fabric/sampler/warm_start.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace crownring {

namespace {

AgeingPrior priorOf(const FabricRecord& record) {
    AgeingPrior prior;
    for (std::size_t fabric = 0; fabric < record.fabrics.size(); ++fabric) {
        const auto set = std::ranges::find_if(
            record.sets, [&](const FollowedSet& each) { return record.fleet.fabricOfLot[each.lot] == fabric; });
        prior.fabrics.push_back(fabricPrior(std::exp(record.lnLimit(set->envelope))));
    }
    return prior;
}

/// One fleet with more readings of one set, which stand last in it.
struct Fresh {
    FabricFleet fleet;
    std::size_t set = 0;
    std::size_t count = 0;
};

bool isSameFleet(const FabricRecord& a, const FabricRecord& b) {
    return a.channel == b.channel && a.lots == b.lots && a.fabrics == b.fabrics &&
           a.fleet.lotOfSet == b.fleet.lotOfSet && a.fleet.fabricOfLot == b.fleet.fabricOfLot &&
           std::ranges::equal(a.envelopes, b.envelopes, {}, &FollowedEnvelope::limit, &FollowedEnvelope::limit) &&
           std::ranges::equal(a.envelopes, b.envelopes, {}, &FollowedEnvelope::id, &FollowedEnvelope::id);
}

std::optional<Fresh> freshIn(const FabricRecord& before, const FabricRecord& now) {
    if (!isSameFleet(before, now) || now.readings.size() < before.readings.size())
        return std::nullopt;
    Fresh fresh{now.fleet, 0, now.readings.size() - before.readings.size()};
    std::map<EntryId, const SetReading*> known;
    for (std::size_t at = 0; at < before.readings.size(); ++at)
        known[before.readings[at].entry] = &before.fleet.readings[at];
    std::vector<std::size_t> added;
    for (std::size_t at = 0; at < now.readings.size(); ++at) {
        const auto found = known.find(now.readings[at].entry);
        if (found == known.end())
            added.push_back(at);
        else if (*found->second != now.fleet.readings[at]) // corrected, or hours came to light
            return std::nullopt;
    }
    if (added.size() != fresh.count)
        return std::nullopt;
    if (added.empty())
        return fresh;
    auto& rows = fresh.fleet.readings;
    fresh.set = rows[added.front()].set;
    const auto isAdded = [&](const SetReading& row) {
        return std::ranges::any_of(added, [&](std::size_t at) { return &rows[at] == &row; });
    };
    if (std::ranges::any_of(added, [&](std::size_t at) { return rows[at].set != fresh.set; }))
        return std::nullopt;
    std::vector<SetReading> ordered;
    for (const auto last : {false, true})
        for (const auto& row : rows)
            if (row.set == fresh.set && isAdded(row) == last)
                ordered.push_back(row);
    const auto first = std::ranges::find(rows, fresh.set, &SetReading::set);
    std::ranges::copy(ordered, first);
    return fresh;
}

}

Result<std::optional<FabricFit>> fitOf(std::shared_ptr<const FabricRecord> record, std::uint64_t seed,
                                       std::stop_token stop, const Progress& progress) {
    auto columns = fleetColumns(record->fleet);
    if (!columns)
        return tl::unexpected(columns.error());
    FabricFit fit;
    fit.columns = std::move(*columns);
    fit.prior = priorOf(*record);
    fit.record = std::move(record);
    auto settings = settingsFor(fit.columns);
    settings.seed = seed;
    auto posterior = sampledPosterior(fit.columns, fit.prior, settings, std::move(stop), progress);
    if (!posterior)
        return std::optional<FabricFit>();
    fit.posterior = std::move(*posterior);
    fit.worstRHat = worstRHat(fit.posterior);
    return std::optional(std::move(fit));
}

std::optional<FabricFit> refitted(const FabricFit& before, std::shared_ptr<const FabricRecord> record) {
    const auto fresh = freshIn(*before.record, *record);
    if (!fresh)
        return std::nullopt;
    auto columns = fleetColumns(fresh->fleet);
    if (!columns)
        return std::nullopt;
    if (fresh->count == 0)
        return FabricFit{std::move(record), std::move(*columns), before.prior, before.posterior, before.worstRHat};
    auto warm = warmFit(before.posterior, *columns, fresh->set, fresh->count);
    if (warm.worth < leastWorth)
        return std::nullopt;
    return FabricFit{std::move(record), std::move(*columns), before.prior, std::move(warm.posterior), before.worstRHat};
}

}
