// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Does a lot of a fabric age faster than the other lots of it do?
///
/// Lots differ: to test each against their mean calls good ones bad in half of all fleets. Each lot is held against the
/// others, whose own spread counts (Paule and Mandel 1982, from memory), and against the chance of a false alarm among
/// so many lots. The test is modest: of ten lots it finds one that ages twice as fast, not one that ages a third
/// faster, so that it says what it could have found.

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

namespace crownring {

/// What is known of how fast a lot ages from its own readings alone.
struct LotSlope {
    double slope = 0;         ///< fall of ln strength in a unit of age
    double standardError = 0; ///< > 0, with the spread of the sets within the lot
    std::size_t sets = 0;
    std::size_t failures = 0; ///< readings that broke, of aged fabric
};

enum class LotStanding : std::uint8_t {
    TooLittle, ///< fewer sets or failures of this lot than say anything
    AsOthers,
    Watch, ///< of lots called so, one in ten may be as good as the others
    Alarm, ///< in one fleet of twenty some lot is called so although all are good
};

inline constexpr std::size_t leastLots = 5;
inline constexpr std::size_t leastSets = 2;
inline constexpr std::size_t leastFailures = 2;
inline constexpr double leastRatio = 1.25; ///< of the slope to that of the others
inline constexpr double watchLevel = 0.10; ///< of Benjamini and Hochberg's adjusted p-value
inline constexpr double alarmLevel = 0.05; ///< of Holm's

struct LotVerdict {
    LotStanding standing = LotStanding::TooLittle;
    double others = 0;          ///< weighted mean slope of the other lots
    double spreadOfOthers = 0;  ///< of their true slopes, a standard deviation
    double deviation = 0;       ///< from the others, in standard errors
    double p = 1;               ///< one-sided, of Student's t with two fewer degrees of freedom than lots
    double ratio = 1;           ///< to the slope of the others; infinite where those do not age
    double detectableRatio = 1; ///< that the alarm finds four times in five
};

struct LotComparison {
    std::vector<LotVerdict> lots;       ///< as given
    double smallestDetectableRatio = 1; ///< the least of them: what this fleet could find at all
};

/// The lots of one fabric; nothing with fewer than `leastLots` lots.
[[nodiscard]] std::optional<LotComparison> compareLots(const std::vector<LotSlope>& lots);

/// A fleet is looked at again and again. An alarm is given when two looks agree, the second with new readings; until
/// then it is watched.
[[nodiscard]] LotStanding confirmed(LotStanding before, LotStanding now, bool hasNewReadings);

struct WeightedMean {
    double mean = 0;
    double variance = 0; ///< of the mean
    double between = 0;  ///< variance between the true values
};

/// Mean of estimates that differ by more than their errors: the variance between them is the one at which the weighted
/// sum of squares is what is expected of it, or 0. At least two estimates.
[[nodiscard]] WeightedMean pauleMandel(const std::vector<double>& values, const std::vector<double>& variances);

}
