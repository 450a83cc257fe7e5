// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Readings of one fabric, drawn: the sample as the room takes it, and the file that R reads.

#include "fabric/likelihood/censored_regression.h"
#include "fabric/numeric/draws.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <string>

namespace crownring {

/// Pulls on `rows` places of 0 to 600 hours: torn, held at a proof load, torn below a least mark, or held at one step
/// of a weight and torn at the next. Some were seen more than once.
inline CensoredSample drawnReadings(Eigen::Index rows, Draws& draws) {
    CensoredSample sample{Eigen::MatrixXd::Ones(rows, 3), {}, {}};
    const double proof = std::log(70);
    const double leastMark = std::log(32);
    for (Eigen::Index row = 0; row < rows; ++row) {
        sample.design.row(row) << 1, 600 * draws.uniform(), draws.uniform();
        const double strength =
            4.6 - 0.0016 * sample.design(row, 1) - 0.2 * sample.design(row, 2) + 0.15 * draws.normal();
        const double step = std::floor(strength * 20) / 20;
        const double kind = draws.uniform();
        sample.observed.push_back(kind < 0.4 && strength > proof ? Observation{Seen::AtLeast, proof, 0}
                                  : strength < leastMark         ? Observation{Seen::AtMost, 0, leastMark}
                                  : kind > 0.8                   ? Observation{Seen::Between, step, step + 0.05}
                                                                 : Observation{Seen::Exactly, strength, 0});
        sample.weights.push_back(kind < 0.1 ? 3 : 1);
    }
    return sample;
}

inline std::string csvOf(const CensoredSample& sample) {
    const auto figure = [](double value, bool isOpen) {
        char text[32];
        std::snprintf(text, sizeof text, "%.17g", value);
        return isOpen ? std::string("NA") : std::string(text);
    };
    std::string csv = "low,high,weight,hours,row\n";
    for (std::size_t row = 0; row < sample.observed.size(); ++row) {
        const auto& observed = sample.observed[row];
        const auto at = static_cast<Eigen::Index>(row);
        const double high = observed.seen == Seen::Exactly ? observed.low : observed.high;
        csv += figure(observed.low, observed.seen == Seen::AtMost) + ',' +
               figure(high, observed.seen == Seen::AtLeast) + ',' + figure(sample.weights[row], false) + ',' +
               figure(sample.design(at, 1), false) + ',' + figure(sample.design(at, 2), false) + '\n';
    }
    return csv;
}

}
