// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/numeric/gauss_hermite.h"

#include <Eigen/Eigenvalues>
#include <numbers>

namespace crownring {

GaussHermite gaussHermite(int count) {
    const Eigen::VectorXd diagonal = Eigen::VectorXd::Zero(count);
    const Eigen::VectorXd beside = (Eigen::ArrayXd::LinSpaced(count - 1, 1, count - 1) / 2).sqrt();
    Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> recurrence;
    recurrence.computeFromTridiagonal(diagonal, beside);
    return {recurrence.eigenvalues(), recurrence.eigenvectors().row(0).array().square() / std::numbers::inv_sqrtpi};
}

}
