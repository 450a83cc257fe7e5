// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <functional>

namespace crownring {

struct ValueAndSlope {
    double value = 0; ///< infinite where there is none
    Eigen::VectorXd slope;
};

using Smooth = std::function<ValueAndSlope(const Eigen::VectorXd&)>;

struct LowestPoint {
    Eigen::VectorXd at;
    ValueAndSlope there;
    bool isFound = false; ///< the slope vanishes there, but for components at their floor that point below it
};

/// A local minimum of a smooth function whose components may not go below their floors: Broyden, Fletcher, Goldfarb and
/// Shanno's method with halved steps (Nocedal and Wright, Numerical Optimization, 6.1; from memory), no longer than 1.
[[nodiscard]] LowestPoint lowest(const Smooth& function, const Eigen::VectorXd& start, const Eigen::VectorXd& floors);

/// Second derivatives by central differences of the slope, symmetric.
[[nodiscard]] Eigen::MatrixXd curvature(const Smooth& function, const Eigen::VectorXd& at);

}
