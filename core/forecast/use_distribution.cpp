// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/use_distribution.h"

#include <boost/math/special_functions/gamma.hpp>

#include <algorithm>
#include <cmath>

namespace crownring {

namespace {

/// Doubles are enough, and four times as quick as what the library takes by itself.
using Quick =
    boost::math::policies::policy<boost::math::policies::promote_double<false>, boost::math::policies::digits10<8>>;

constexpr double hardlyAny = 1e-9;

}

UseDistribution::UseDistribution(const UseMoments& flights, const PerFlight& each, double certain)
    : m_certain(certain) {
    if (flights.mean < hardlyAny || each.mean < hardlyAny)
        return;
    // Negative binomial of mean m and variance m (1 + t): none with (1 + t)^(-m / t), Poisson's exp(-m) as t goes to 0.
    const double spread = std::max(flights.variance, flights.mean);
    const double extra = spread / flights.mean - 1;
    m_none = extra < 1e-6 ? std::exp(-flights.mean) : std::exp(-flights.mean / extra * std::log1p(extra));
    m_mean = flights.mean * each.mean;
    const double variance = flights.mean * each.variance + spread * each.mean * each.mean;
    const double some = std::max(1 - m_none, hardlyAny);
    const double meanOfSome = m_mean / some;
    const double square = (variance + m_mean * m_mean) / some;
    const double varianceOfSome = std::max(square - meanOfSome * meanOfSome, 1e-4 * meanOfSome * meanOfSome);
    m_shape = meanOfSome * meanOfSome / varianceOfSome;
    m_scale = varianceOfSome / meanOfSome;
}

double UseDistribution::chanceOf(double least) const {
    if (least <= m_certain)
        return 1;
    if (m_scale <= 0)
        return 0;
    return (1 - m_none) * boost::math::gamma_q(m_shape, (least - m_certain) / m_scale, Quick());
}

double UseDistribution::quantile(double share) const {
    if (m_scale <= 0 || share <= m_none)
        return m_certain;
    return m_certain + m_scale * boost::math::gamma_p_inv(m_shape, (share - m_none) / (1 - m_none), Quick());
}

UseBand useBandOf(const UseDistribution& use) { return {use.quantile(0.1), use.quantile(0.5), use.quantile(0.9)}; }

}
