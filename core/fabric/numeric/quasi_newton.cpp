// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/numeric/quasi_newton.h"

#include <algorithm>
#include <cmath>

namespace crownring {

namespace {

constexpr double flat = 1e-7;

/// The slope without what a floor holds up.
Eigen::VectorXd freeSlope(const LowestPoint& point, const Eigen::VectorXd& floors) {
    return ((point.at.array() <= floors.array()) && (point.there.slope.array() > 0)).select(0, point.there.slope);
}

/// Down along `direction` until the function is lower by a share of what its slope promises; where the promise is less
/// than the function's own rounding, until its slope says so (Hager and Zhang 2005, from memory).
bool descend(const Smooth& function, LowestPoint& point, const Eigen::VectorXd& direction,
             const Eigen::VectorXd& floors) {
    constexpr int mostHalvings = 40;
    constexpr double leastShare = 1e-4;
    const double rounding = 1e-11 * std::abs(point.there.value);
    double share = std::min(1.0, 1 / direction.norm());
    for (int halvings = 0; halvings < mostHalvings; ++halvings, share /= 2) {
        const Eigen::VectorXd next = (point.at + share * direction).cwiseMax(floors);
        const Eigen::VectorXd step = next - point.at;
        const double promise = point.there.slope.dot(step);
        auto there = function(next);
        if (there.value <= point.there.value + leastShare * promise ||
            (there.value <= point.there.value + rounding && there.slope.dot(step) <= (2 * leastShare - 1) * promise)) {
            point.at = next;
            point.there = std::move(there);
            return true;
        }
    }
    return false;
}

}

LowestPoint lowest(const Smooth& function, const Eigen::VectorXd& start, const Eigen::VectorXd& floors) {
    constexpr int mostSteps = 300;
    const auto identity = Eigen::MatrixXd::Identity(start.size(), start.size());
    LowestPoint point{start.cwiseMax(floors), {}, false};
    point.there = function(point.at);
    if (!std::isfinite(point.there.value))
        return point;
    Eigen::MatrixXd inverse = identity;
    bool isFresh = true;
    for (int steps = 0; steps < mostSteps; ++steps) {
        const auto before = point;
        const auto slope = freeSlope(point, floors);
        point.isFound = slope.lpNorm<Eigen::Infinity>() < flat;
        if (point.isFound)
            break;
        const Eigen::VectorXd held = (slope.array() == 0).select(0, -(inverse * slope));
        if (!(held.dot(slope) < 0) || !descend(function, point, held, floors)) {
            if (isFresh)
                break;
            inverse = identity;
            isFresh = true;
            continue;
        }
        const Eigen::VectorXd step = point.at - before.at;
        const Eigen::VectorXd change = point.there.slope - before.there.slope;
        const double curved = step.dot(change);
        if (curved <= 1e-12 * step.norm() * change.norm())
            continue;
        if (isFresh)
            inverse = curved / change.squaredNorm() * identity;
        isFresh = false;
        const Eigen::MatrixXd across = identity - step * change.transpose() / curved;
        inverse = across * inverse * across.transpose() + step * step.transpose() / curved;
    }
    return point;
}

Eigen::MatrixXd curvature(const Smooth& function, const Eigen::VectorXd& at) {
    constexpr double difference = 1e-4;
    Eigen::MatrixXd result(at.size(), at.size());
    for (Eigen::Index component = 0; component < at.size(); ++component) {
        const Eigen::VectorXd aside = difference * Eigen::VectorXd::Unit(at.size(), component);
        result.col(component) = (function(at + aside).slope - function(at - aside).slope) / (2 * difference);
    }
    return (result + result.transpose().eval()) / 2;
}

}
