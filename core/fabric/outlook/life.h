// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// When a fabric set comes to its limit at its weakest place, in hours flown, from draws of the posterior. Fabric ages
/// fastest at the crown, so that place is the highest that the set reaches.
///
/// The limit is one of the mean strength there. A pull also sees the scatter of tests, so a pull below the limit
/// comes about sooner, and more likely the more pulls there are; the two chances are never the same figure.

#include "fabric/sampler/posterior.h"

#include <optional>

namespace crownring {

/// How a set has been flown, and will be.
struct PlaceUse {
    double hours = 0;       ///< flown on this fabric
    double dose = 0;        ///< equivalent hours of over-temperature so far (`fabric/heat.h`)
    double dosePerHour = 0; ///< expected of each hour to come
    double row = 1;         ///< height of the place: 0 at the mouth, 1 at the crown
};

/// Quantiles at 5, 50 and 95 %.
struct Band {
    double low = 0;
    double middle = 0;
    double high = 0;
};

[[nodiscard]] Band bandOf(const DrawColumn& draws);

/// For each draw the hours flown at which the place's mean comes to `lnLimit`, below `use.hours` when it has already;
/// 0 where it was below from the first.
[[nodiscard]] DrawColumn livesOf(const Posterior& posterior, std::size_t set, double lnLimit, const PlaceUse& use);

struct LifeForecast {
    double reachedAlready = 0; ///< share of draws whose life is over
    std::optional<Band> life;  ///< given that it is not; nothing where hardly a draw says so
};

[[nodiscard]] LifeForecast lifeForecast(const DrawColumn& lives, double hoursNow);

/// Chance that the limit is reached by `hoursThen`, given that it is not yet; 1 where hardly a draw says so.
[[nodiscard]] double chanceReached(const DrawColumn& lives, double hoursNow, double hoursThen);

/// Mean strength of the place when `hoursThen` are flown, in the unit of the readings.
[[nodiscard]] Band strengthAt(const Posterior& posterior, std::size_t set, const PlaceUse& use, double hoursThen);

/// Chance that the mean is below the limit when `hoursThen` are flown, whether it is now or not.
[[nodiscard]] double chanceBelowAt(const Posterior& posterior, std::size_t set, double lnLimit, const PlaceUse& use,
                                   double hoursThen);

/// Chance that one pull there breaks below the limit when `hoursThen` are flown, whatever its mean is now.
[[nodiscard]] double chanceBreaksBelow(const Posterior& posterior, std::size_t set, double lnLimit, const PlaceUse& use,
                                       double hoursThen);

/// Chance that at least one of `pulls` pulls there, when `hoursThen` are flown, breaks below the limit, given
/// that its mean is above the limit now; 1 where hardly a draw says so.
[[nodiscard]] double chancePullBelow(const Posterior& posterior, std::size_t set, double lnLimit, const PlaceUse& use,
                                     double hoursThen, int pulls);

}
