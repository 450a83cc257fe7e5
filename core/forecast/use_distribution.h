// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How much may be flown in some time, as a distribution: nothing at all with some probability, else a gamma law with
/// the mean and the variance that are given.
///
/// Flights come in numbers that scatter more than Poisson's (weather, weeks off, festivals), each of its own length.
/// The number is taken to be negative binomial by its mean and variance, which gives the chance of none; the sum over
/// the flights has no closed form, and a gamma law of the same first two moments stands for it (Panjer and Willmot,
/// Insurance Risk Models, ch. 4 and 6, from memory). `tests/forecast` holds it against drawn sums.

#include "measure/count.h"

namespace crownring {

/// Mean and variance of a number or a sum.
struct UseMoments {
    double mean = 0;
    double variance = 0;
};

/// Of one flight: what it puts on a clock.
struct PerFlight {
    double mean = 0;
    double variance = 0;
};

class UseDistribution {
public:
    /// Nothing, for certain.
    UseDistribution() = default;
    /// @param flights how many; a variance below the mean (more regular than Poisson's) is taken for the mean
    /// @param certain what is put on besides, whatever happens
    UseDistribution(const UseMoments& flights, const PerFlight& each, double certain = 0);

    [[nodiscard]] double mean() const { return m_certain + m_mean; }
    [[nodiscard]] double chanceOfNone() const { return m_certain > 0 ? 0 : m_none; }
    /// That the sum is at least `least`; 1 for nothing or less.
    [[nodiscard]] double chanceOf(double least) const;
    /// The smallest sum that is not exceeded with probability `share`. @pre 0 < share < 1
    [[nodiscard]] double quantile(double share) const;

private:
    double m_certain = 0;
    double m_mean = 0; ///< of the rest
    double m_none = 1;
    double m_shape = 1; ///< of what is flown where anything is
    double m_scale = 0;
};

/// The three places of a distribution that are told everywhere.
struct UseBand {
    double p10 = 0;
    double p50 = 0;
    double p90 = 0;
};
[[nodiscard]] UseBand useBandOf(const UseDistribution& use);

}
