// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fabric/numeric/draws.h"

#include <Eigen/Cholesky>
#include <Eigen/Core>
#include <algorithm>
#include <cmath>

namespace crownring {

/// Metropolis' random walk in `Size` dimensions whose proposals learn their shape from where the chain has been, and
/// their width from the share that is taken; what was learnt then holds (Andrieu and Thoms 2008, Statistics and
/// Computing 18:343-373, algorithm 4).
template <int Size>
class RandomWalk {
public:
    using Vector = Eigen::Matrix<double, Size, 1>;
    using Matrix = Eigen::Matrix<double, Size, Size>;

    explicit RandomWalk(const Vector& widths) : m_shape(widths.asDiagonal()) {}

    [[nodiscard]] Vector step(Draws& draws) const {
        Vector normals;
        for (auto& normal : normals)
            normal = draws.normal();
        return m_width * (m_shape * normals);
    }

    /// `taken` is the probability with which the last proposal was taken; each look at where the chain has been waits
    /// twice as long as the one before, and forgets what came earlier.
    void learn(const Vector& position, double taken) {
        m_width *= std::exp((taken - wished) / std::sqrt(static_cast<double>(++m_steps)));
        ++m_seen;
        const Vector off = position - m_mean;
        m_mean += off / static_cast<double>(m_seen);
        m_products += off * (position - m_mean).transpose();
        if (m_seen == m_nextLook)
            look();
    }

private:
    /// Roberts and Rosenthal 2001, Statistical Science 16:351-367.
    static constexpr double wished = Size == 1 ? 0.44 : 0.28;

    void look() {
        Matrix covariance = m_products / static_cast<double>(m_seen);
        covariance.diagonal().array() += 1e-8;
        m_shape = covariance.llt().matrixL();
        m_width = 2.38 / std::sqrt(static_cast<double>(Size));
        m_steps = 0;
        m_mean.setZero();
        m_products.setZero();
        m_seen = 0;
        m_nextLook *= 2;
    }

    Matrix m_shape; ///< lower triangular; its square is the shape of proposals
    double m_width = 1;
    long m_steps = 0;
    long m_seen = 0;
    long m_nextLook = 100;
    Vector m_mean = Vector::Zero();
    Matrix m_products = Matrix::Zero();
};

/// Probability that Metropolis' rule takes a proposal of this log ratio; 0 for none (not a number).
inline double acceptance(double lnRatio) { return std::isnan(lnRatio) ? 0 : std::exp(std::min(lnRatio, 0.0)); }

/// ln of a half-Cauchy density as one of ln(sd), up to a constant.
inline double lnHalfCauchy(double sd, double scale) { return std::log(sd) - std::log1p((sd / scale) * (sd / scale)); }

/// ln of a normal density, up to a constant.
inline double lnNormal(double value, double mean, double sd) {
    const double z = (value - mean) / sd;
    return -z * z / 2;
}

}
