// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How much two pictures differ for an eye that sees no colour.

#include <QImage>

#include <cstdlib>

namespace crownring::screen::sample {

/// The share of points that clearly differ.
inline double difference(const QImage& a, const QImage& b) {
    int differ = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x)
            differ += std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y))) > 64 ? 1 : 0;
    return double(differ) / (a.width() * a.height());
}

}
