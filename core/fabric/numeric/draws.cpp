// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/numeric/draws.h"

#include <boost/random/exponential_distribution.hpp>
#include <boost/random/gamma_distribution.hpp>
#include <boost/random/normal_distribution.hpp>
#include <boost/random/uniform_01.hpp>

#include <algorithm>
#include <cmath>
#include <random>

namespace crownring {

namespace {

/// Above this bound an exponential proposal is accepted more often than a plain normal one.
constexpr double plainUpTo = 0.4;

/// From here on a tail is narrower than the step between two doubles: what lies above is the bound itself.
constexpr double farthest = 1e8;

}

Draws::Draws(std::uint64_t seed, std::uint32_t stream) {
    std::seed_seq words{static_cast<std::uint32_t>(seed), static_cast<std::uint32_t>(seed >> 32U), stream};
    m_engine.seed(words);
}

double Draws::uniform() { return boost::random::uniform_01<double>()(m_engine); }

double Draws::normal() { return boost::random::normal_distribution<double>()(m_engine); }

double Draws::exponential() { return boost::random::exponential_distribution<double>()(m_engine); }

double Draws::gamma(double shape) { return boost::random::gamma_distribution<double>(shape)(m_engine); }

double Draws::inverseGamma(double shape, double scale) { return scale / gamma(shape); }

double Draws::normalAbove(double mean, double sd, double low) { return mean + sd * standardAbove((low - mean) / sd); }

double Draws::normalBelow(double mean, double sd, double high) { return mean - sd * standardAbove((mean - high) / sd); }

double Draws::normalBetween(double mean, double sd, double low, double high) {
    const double from = (low - mean) / sd;
    const double to = (high - mean) / sd;
    const double drawn = from + to > 0 ? standardBetween(from, to) : -standardBetween(-to, -from);
    return std::clamp(mean + sd * drawn, low, high);
}

double Draws::standardAbove(double low) {
    if (!(low < farthest)) // no number too: no draw would ever be above it
        return low;
    if (low <= plainUpTo) {
        double drawn = normal();
        while (drawn < low)
            drawn = normal();
        return drawn;
    }
    const double rate = (low + std::sqrt(low * low + 4)) / 2;
    while (true) {
        const double drawn = low + exponential() / rate;
        const double off = drawn - rate;
        if (uniform() <= std::exp(-off * off / 2))
            return drawn;
    }
}

/// For an interval whose middle is not below 0.
double Draws::standardBetween(double low, double high) {
    if (!(low < farthest) || std::isnan(high))
        return low;
    const double rate = (std::max(low, 0.0) + std::sqrt(low * low + 4)) / 2;
    if (high - low > 2 / rate) {
        double drawn = standardAbove(low);
        while (drawn > high)
            drawn = standardAbove(low);
        return drawn;
    }
    const double nearest = std::max(low, 0.0);
    while (true) {
        const double drawn = low + (high - low) * uniform();
        if (uniform() <= std::exp((nearest * nearest - drawn * drawn) / 2))
            return drawn;
    }
}

}
