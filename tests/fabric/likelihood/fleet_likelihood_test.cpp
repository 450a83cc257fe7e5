// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/likelihood/fleet_likelihood.h"
#include "fabric/reference_fleet.h"
#include "test_class.h"

#include <QtTest>

#include <Eigen/LU>
#include <cmath>
#include <numbers>

namespace fleet_likelihood_test {

using namespace crownring;

namespace {

/// The reference fleet with readings of every kind: some of a coarse gauge, some below its least mark.
FabricFleet fleetOfEveryKind() {
    auto fleet = reference::fleet();
    for (std::size_t at = 0; at < fleet.readings.size(); at += 5) {
        auto& observed = fleet.readings[at].observed;
        observed = at % 2 == 0 ? Observation{Seen::Between, observed.low, observed.low + 0.1}
                               : Observation{Seen::AtMost, 0, observed.low + 0.05};
    }
    return fleet;
}

Eigen::VectorXd parametersOf(const FleetLikelihood& likelihood) {
    Eigen::VectorXd parameters(likelihood.parameters());
    parameters.head(fleetParameters) << -3, -3.3, -2.9, -3.1, -2.5, 0.6, 0.2;
    for (Eigen::Index at = fleetParameters; at < parameters.size(); at += 2)
        parameters.segment(at, 2) << 4.6, 0.2 + 0.01 * static_cast<double>(at);
    return parameters;
}

}

class FleetLikelihoodTest : public QObject {
    Q_OBJECT
private slots:
    void itsSlopeIsAsDifferencesSay_data() {
        QTest::addColumn<bool>("restricted");
        QTest::newRow("ML") << false;
        QTest::newRow("REML") << true;
    }

    void itsSlopeIsAsDifferencesSay() {
        QFETCH(bool, restricted);
        const FleetLikelihood likelihood(fleetOfEveryKind(), restricted);
        const auto parameters = parametersOf(likelihood);
        const auto here = likelihood.at(parameters, Eigen::VectorXd::Constant(likelihood.tree().size, 1));
        QVERIFY(std::isfinite(here.negative));
        constexpr double h = 1e-3;
        for (Eigen::Index at = 0; at < parameters.size(); ++at) {
            const auto aside = [&](double by) {
                return likelihood.at(parameters + by * Eigen::VectorXd::Unit(parameters.size(), at), here.figures);
            };
            const auto before = aside(-h);
            const auto behind = aside(h);
            const double slope =
                (8 * (behind.negative - before.negative) - (aside(2 * h).negative - aside(-2 * h).negative)) / (12 * h);
            QVERIFY2(
                std::abs(here.gradient[at] - slope) < 1e-6 * (1 + std::abs(slope)),
                qPrintable(QString("%1: %2 for %3").arg(at).arg(here.gradient[at], 0, 'g', 12).arg(slope, 0, 'g', 12)));
            const Eigen::VectorXd moved = ((behind.figures - before.figures) / (2 * h)).head(likelihood.integrated());
            QVERIFY((moved - here.slope.col(at)).norm() < 1e-4 * (1 + moved.norm()));
        }
    }

    // Where nothing is censored Laplace's method is exact: one set, so one multivariate normal vector.
    void withoutBoundsItIsThatOfAMultivariateNormal() {
        FabricFleet fleet{1, {0}, {0}, {}, {{0, {Seen::Exactly, 4.5, 0}}, {0, {Seen::Exactly, 4.7, 0}}}};
        for (const double hours : {50, 150, 300})
            fleet.readings.push_back({0, hours, 1, 0, {Seen::Exactly, 4.4 - hours / 400, 0}});
        const FleetLikelihood likelihood(fleet, false);
        Eigen::VectorXd parameters(likelihood.parameters());
        parameters << std::log(0.05), std::log(0.03), std::log(0.04), std::log(0.02), std::log(0.08), 0.7, 0, 4.6, 0.2;

        Eigen::VectorXd ages(5);
        ages << 0.5, 1.5, 3, 0, 0;
        Eigen::VectorXd y(5);
        y << 4.275, 4.025, 3.65, 4.5, 4.7;
        Eigen::MatrixXd covariance = Eigen::MatrixXd::Identity(5, 5) * 0.08 * 0.08;
        covariance.array() += 0.05 * 0.05;
        covariance += (0.03 * 0.03 + 0.02 * 0.02) * ages * ages.transpose();
        covariance.topLeftCorner(3, 3).array() += 0.04 * 0.04;
        covariance.bottomRightCorner(2, 2).diagonal().array() += 0.04 * 0.04;
        const Eigen::VectorXd off = y.array() - 4.6 + 0.2 * ages.array();
        const double expected = (5 * std::log(2 * std::numbers::pi) + std::log(covariance.determinant()) +
                                 off.dot(covariance.inverse() * off)) /
                                2;
        const auto found = likelihood.at(parameters, Eigen::VectorXd::Zero(likelihood.tree().size));
        QVERIFY(std::abs(found.negative - expected) < 1e-10);
    }
};

CROWNRING_TEST(FleetLikelihoodTest)

}

#include "fleet_likelihood_test.moc"
