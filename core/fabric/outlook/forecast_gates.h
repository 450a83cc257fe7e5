// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a forecast of life rests on, so that no number is shown that the readings do not warrant.

#include "fabric/likelihood/fleet_columns.h"
#include "fabric/outlook/life.h"
#include "fabric/sampler/ageing_prior.h"

#include <cstdint>

namespace crownring {

enum class Ground : std::uint8_t {
    Enough,   ///< readings of the fabric that broke, and a band that they have narrowed
    HeldOnly, ///< fewer than `leastBroken` readings of the fabric broke: held tests bound the life, no date may be
              ///< shown
    Prior, ///< the band is mostly what was believed before any reading, or readings of one age leave the pace to that
};

inline constexpr std::size_t leastBroken = 3;
inline constexpr double leastInformation = 0.5; ///< common practice, no source
inline constexpr double oneAge = 1.1;           ///< ages within this ratio are one; common practice, no source
inline constexpr double farBeyond = 3;          ///< times the most that any set of the fabric had flown when tested
inline constexpr double rarelyBeyond = 0.05;

struct ForecastGrounds {
    Ground ground = Ground::HeldOnly;
    std::size_t broken = 0; ///< readings of the fabric in service whose strength is known, not only bounded from below
    double information =
        0; ///< 1 - var(ln life | readings) / var(ln life | prior), both for a set still in service; may be < 0
    double mostFlown = 0; ///< effective hours of the oldest reading of the fabric
    bool isOfOneAge =
        false; ///< all that broke was of one age and nothing of it new: it says nothing of how fast it ages
    bool isBeyondFlown = false; ///< the middle of the band lies where no set of the fabric has been
    bool isOpenEnded =
        false; ///< more than `rarelyBeyond` of the draws lie beyond `farBeyond` times that: "not within sight"
};

/// `seed` is of the draws from the prior.
[[nodiscard]] ForecastGrounds groundsOf(const FleetColumns& fleet, const AgeingPrior& prior, const Posterior& posterior,
                                        std::size_t set, double lnLimit, const PlaceUse& use, std::uint64_t seed = 1);

}
