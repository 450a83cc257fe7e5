// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>

namespace crownring {

/// Nodes and weights so that the integral of f(x) exp(-x^2) over all x is near the sum of weight f(node); exact for
/// polynomials of a degree below twice the number of nodes. Nodes ascend.
struct GaussHermite {
    Eigen::VectorXd nodes;
    Eigen::VectorXd weights;
};

/// From the eigenvalues of the recurrence of Hermite's polynomials (Golub and Welsch 1969, from memory). `count` >= 1.
[[nodiscard]] GaussHermite gaussHermite(int count);

}
