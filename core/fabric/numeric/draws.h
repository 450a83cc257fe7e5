// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Random draws that are the same on every machine for the same seed: the generator and its transforms are
/// Boost.Random's, whose arithmetic is fixed, where the standard library's `std::normal_distribution` is not.

#include <boost/random/mersenne_twister.hpp>

#include <cstdint>

namespace crownring {

class Draws {
public:
    /// Streams of one seed are independent of each other: a chain takes its own number.
    explicit Draws(std::uint64_t seed, std::uint32_t stream = 0);

    double uniform(); ///< within [0, 1)
    double normal();  ///< mean 0, standard deviation 1
    double exponential();
    double gamma(double shape); ///< scale 1; shape > 0
    /// The reciprocal of a gamma draw: density proportional to x^(-shape-1) exp(-scale/x).
    double inverseGamma(double shape, double scale);

    /// A normal draw given that it lies above `low`, below `high` or between the two (`sd` > 0, `low` < `high`).
    /// Robert 1995, Statistics and Computing 5:121-125. Always ends: of what is no number comes none.
    double normalAbove(double mean, double sd, double low);
    double normalBelow(double mean, double sd, double high);
    double normalBetween(double mean, double sd, double low, double high);

private:
    double standardAbove(double low);
    double standardBetween(double low, double high);

    boost::random::mt19937_64 m_engine;
};

}
