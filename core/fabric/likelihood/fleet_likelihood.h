// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How likely a fleet's readings are, with the lines of sets and lots (and of fabrics, for a restricted likelihood)
/// integrated out by Laplace's method: exact where nothing was only held. All constants are in it; the restricted one
/// has a flat prior for the fabrics' figures, as usual for REML.

#include "fabric/likelihood/latent_tree.h"

namespace crownring {

/// What is not integrated out, in this order; behind it, unless restricted, intercept and slope of each fabric.
enum class FleetParameter : std::uint8_t {
    LogLotIntercept,
    LogLotSlope,
    LogSetIntercept,
    LogSetSlope,
    LogSigma,
    Gamma,
    LogPhi,
};

inline constexpr Eigen::Index fleetParameters = 7;

constexpr Eigen::Index indexOf(FleetParameter parameter) { return static_cast<Eigen::Index>(parameter); }

struct FleetLikelihoodAt {
    double negative = 0;        ///< minus the log-likelihood; infinite where there is none
    Eigen::VectorXd gradient;   ///< of it, by the parameters
    Eigen::VectorXd figures;    ///< the most likely row of `LatentTree`, with the fabrics' in any case
    Eigen::MatrixXd covariance; ///< of the figures that are integrated out, the parameters given
    Eigen::MatrixXd slope;      ///< of those figures by the parameters
};

class FleetLikelihood {
public:
    FleetLikelihood(const FabricFleet& fleet, bool restricted);

    [[nodiscard]] const LatentTree& tree() const { return m_tree; }
    [[nodiscard]] Eigen::Index integrated() const { return m_integrated; } ///< how many figures of the row are
    [[nodiscard]] Eigen::Index parameters() const { return fleetParameters + m_tree.size - m_integrated; }

    /// `near` is where the search for the most likely row begins: any row will do, a near one is quicker.
    [[nodiscard]] FleetLikelihoodAt at(const Eigen::VectorXd& parameters, const Eigen::VectorXd& near) const;

private:
    LatentTree m_tree;
    Eigen::Index m_integrated;
};

}
