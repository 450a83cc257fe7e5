// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the page of one envelope's fabric shows, as plain values: what the record holds of it (`FabricSight`, read on
/// the record's thread), and what a fit says of it to come (`FabricOutlook`, computed on a thread of its own).

#include "answers/fabric/forecast.h"

#include <array>
#include <map>
#include <memory>

namespace crownring::screen {

struct FabricSight {
    std::vector<FabricChannel> channels;
    std::size_t channel = 0;
    std::shared_ptr<const FabricRecord> fleet; ///< all envelopes of the channel
    std::size_t envelope = 0;
    Ahead ahead;
    std::vector<std::size_t> setOfPanel; ///< by row from the mouth, then gore

    [[nodiscard]] std::size_t setAt(int gore, int row) const {
        return setOfPanel[static_cast<std::size_t>((row - 1) * of().gores + gore - 1)];
    }
    [[nodiscard]] const FabricRecord& record() const { return *fleet; }
    [[nodiscard]] const FollowedEnvelope& of() const { return fleet->envelopes[envelope]; }
    [[nodiscard]] const FabricChannel& at() const { return channels[channel]; }
    /// The lots that its panels are of, in the order of its sets; those that nobody knows are left out.
    [[nodiscard]] std::vector<std::size_t> lots() const;
};

/// @param channel its number among those of the envelope; the first where there are fewer
[[nodiscard]] Result<FabricSight> fabricSight(Books& books, const ItemId& envelope, std::size_t channel, CivilDate on);

/// What is expected, with the map's forecasts for times to come.
struct FabricOutlook {
    static constexpr double mostAhead = 300; ///< hours flown from now that the map can look ahead
    static constexpr std::size_t steps = 20;
    static constexpr std::size_t curvePoints = 48;

    EnvelopeForecast forecast;
    double worstRHat = 1;
    std::size_t draws = 0;
    std::size_t envelopes = 0;
    std::size_t readings = 0;
    /// The weakest set's place: from new to beyond now, hours on that fabric; empty where readings do not tell it.
    std::vector<std::pair<double, Band>> curve;

    [[nodiscard]] const SetForecast& weakest() const { return forecast.sets[forecast.weakest]; }
    /// Between the steps that were computed. Nothing for a panel that the envelope does not have, or of a set that
    /// readings do not tell.
    [[nodiscard]] std::optional<PanelForecast> at(std::size_t set, int row, double hoursAhead) const;

    using Steps = std::array<PanelForecast, steps + 1>;
    std::map<std::pair<std::size_t, int>, Steps> panels; ///< by set and row
};

[[nodiscard]] FabricOutlook fabricOutlook(const FabricFit& fit, std::size_t envelope, const Ahead& ahead);

}
