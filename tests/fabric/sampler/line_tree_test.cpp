// SPDX-License-Identifier: GPL-3.0-or-later
/// The draws of lines against linear algebra, and lives against first passage in closed form: phi = 1, known spreads.
#include "fabric/numeric/first_passage.h"
#include "fabric/outlook/life.h"
#include "fabric/sampler/line_tree.h"
#include "test_class.h"

#include <QtTest>

#include <Eigen/Dense>
#include <cmath>

namespace line_tree_test {

using namespace crownring;

namespace {

constexpr std::size_t many = 20'000;
const AgeingPrior prior{{fabricPrior(100, 30)}, {}};
const Spreads spreads{0.06, 0.03, 0.05, 0.02, 0.08};

/// One lot of two sets, pulled to break at four ages, and a coupon.
FabricFleet fleet() {
    FabricFleet fleet;
    fleet.fabrics = 1;
    fleet.fabricOfLot = {0};
    fleet.lotOfSet = {0, 0};
    for (const std::size_t set : {0U, 1U})
        for (const double hours : {50.0, 150.0, 300.0, 400.0})
            fleet.readings.push_back(
                {set, hours, 1, 0, {Seen::Exactly, 4.55 - 0.0021 * hours + 0.1 * std::sin(hours), 0}});
    fleet.coupons = {{0, {Seen::Exactly, 4.7, 0}}};
    return fleet;
}

/// Mean and covariance of (fabric, lot, set 0, set 1), each intercept and slope, by one dense precision matrix.
struct Dense {
    Eigen::VectorXd mean;
    Eigen::MatrixXd covariance;
};

Dense dense(const FabricFleet& fleet) {
    Eigen::MatrixXd precision = Eigen::MatrixXd::Zero(8, 8);
    Eigen::VectorXd weighted = Eigen::VectorXd::Zero(8);
    const auto add = [&](const Eigen::VectorXd& row, double value, double sd) {
        precision += row * row.transpose() / (sd * sd);
        weighted += row * value / (sd * sd);
    };
    const auto unit = [](Eigen::Index place) { return Eigen::VectorXd(Eigen::VectorXd::Unit(8, place)); };
    const auto& fabric = prior.fabrics[0];
    add(unit(0), fabric.intercept.mean, fabric.intercept.sd);
    add(unit(1), fabric.slope.mean, fabric.slope.sd);
    add(unit(2) - unit(0), 0, spreads.lotIntercept);
    add(unit(3) - unit(1), 0, spreads.lotSlope);
    for (const Eigen::Index set : {4, 6}) {
        add(unit(set) - unit(2), 0, spreads.setIntercept);
        add(unit(set + 1) - unit(3), 0, spreads.setSlope);
    }
    for (const auto& reading : fleet.readings) {
        const auto set = static_cast<Eigen::Index>(4 + 2 * reading.set);
        add(unit(set) - unit(set + 1) * reading.hours / 100, reading.observed.low, spreads.scatter);
    }
    add(unit(2), fleet.coupons[0].observed.low, std::hypot(spreads.scatter, spreads.setIntercept));
    const Eigen::MatrixXd covariance = precision.inverse();
    return {covariance * weighted, covariance};
}

Posterior drawn() {
    const auto readings = fleet();
    const auto columns = fleetColumns(readings).value();
    std::vector<double> ages, latent, latentCoupons{readings.coupons[0].observed.low};
    agesOf(columns, {0.7, 1}, ages);
    for (const auto& reading : readings.readings)
        latent.push_back(reading.observed.low);
    TestedLines tested;
    gatherTests(columns, ages, latent, latentCoupons, spreads.scatter, tested);
    AgeingState state{{{}}, {{}}, {{}, {}}, {0}, spreads, {0.7, 1}};
    auto posterior = emptyPosterior(state, 1, many);
    LineTree tree(columns, prior);
    Draws draws(1);
    for (std::size_t draw = 0; draw < many; ++draw) {
        tree.draw(draws, tested, state);
        keepDraw(state, draw, posterior);
    }
    return posterior;
}

double covarianceOf(const DrawColumn& one, const DrawColumn& other) {
    const Eigen::Map<const Eigen::ArrayXd> a(one.data(), static_cast<Eigen::Index>(one.size()));
    const Eigen::Map<const Eigen::ArrayXd> b(other.data(), static_cast<Eigen::Index>(other.size()));
    return ((a - a.mean()) * (b - b.mean())).mean();
}

}

class LineTreeTest : public QObject {
    Q_OBJECT
private slots:
    void drawsAreThoseOfTheDensePosterior() {
        const auto posterior = drawn();
        const auto exact = dense(fleet());
        const std::vector<const DrawColumn*> columns{&posterior.fabrics[0].intercept, &posterior.fabrics[0].slope,
                                                     &posterior.lots[0].intercept,    &posterior.lots[0].slope,
                                                     &posterior.sets[0].intercept,    &posterior.sets[0].slope,
                                                     &posterior.sets[1].intercept,    &posterior.sets[1].slope};
        for (Eigen::Index i = 0; i < 8; ++i) {
            const auto& column = *columns[static_cast<std::size_t>(i)];
            const double mean = Eigen::Map<const Eigen::ArrayXd>(column.data(), many).mean();
            QVERIFY(std::abs(mean - exact.mean[i]) < 4 * std::sqrt(exact.covariance(i, i) / many));
            for (Eigen::Index j = 0; j <= i; ++j) {
                const double scale = std::sqrt(exact.covariance(i, i) * exact.covariance(j, j));
                const double found = covarianceOf(column, *columns[static_cast<std::size_t>(j)]);
                QVERIFY(std::abs(found - exact.covariance(i, j)) < 6 * scale / std::sqrt(many));
            }
        }
    }

    void livesAreFirstPassages() {
        const auto posterior = drawn();
        const auto exact = dense(fleet());
        const AgeingLine line{exact.mean[4], exact.mean[5], exact.covariance(4, 4), exact.covariance(5, 5),
                              exact.covariance(4, 5)};
        const double limit = std::log(30);
        const PlaceUse use{400, 0, 0};
        const auto lives = livesOf(posterior, 0, limit, use);
        for (const double hours : {450.0, 500.0, 550.0, 600.0, 700.0}) {
            const double given = reachedByGivenOk(line, limit, hours / 100, 4);
            QVERIFY(std::abs(chanceReached(lives, 400, hours) - given) < 4 * std::sqrt(0.25 / many));
        }
        for (const int pulls : {1, 4})
            QVERIFY(std::abs(chancePullBelow(posterior, 0, limit, use, 450, pulls) -
                             anyTestFails(line, limit, 4.5, spreads.scatter, pulls)) < 4 * std::sqrt(0.25 / many));
        const auto band = bandOf(lives);
        QVERIFY(std::abs(band.middle / (100 * ageReached(line, limit, 0.5).value()) - 1) < 0.005);
        QVERIFY(std::abs(band.low / (100 * ageReached(line, limit, 0.05).value()) - 1) < 0.005);
    }

    /// The density with the lines integrated out is that of the strengths themselves: a ratio over spreads, by a dense
    /// normal.
    void integratedDensity() {
        const auto columns = fleetColumns(fleet()).value();
        std::vector<double> ages, latent, latentCoupons{4.7};
        agesOf(columns, {0.7, 1}, ages);
        for (const auto& reading : fleet().readings)
            latent.push_back(reading.observed.low);
        TestedLines tested;
        gatherTests(columns, ages, latent, latentCoupons, spreads.scatter, tested);
        LineTree tree(columns, prior);
        const auto lnDense = [&](const Spreads& at) {
            const Eigen::Index count = 9;
            Eigen::MatrixXd covariance = Eigen::MatrixXd::Zero(count, count);
            Eigen::VectorXd off(count);
            const auto square = [](double value) { return value * value; };
            const auto& fabric = prior.fabrics[0];
            for (Eigen::Index i = 0; i < count; ++i) {
                const auto age = [&](Eigen::Index k) { return k < 8 ? ages[static_cast<std::size_t>(k)] : 0.0; };
                off[i] = (i < 8 ? latent[static_cast<std::size_t>(i)] : 4.7) - fabric.intercept.mean +
                         fabric.slope.mean * age(i);
                for (Eigen::Index j = 0; j < count; ++j) {
                    const bool ofOneSet = i < 8 && j < 8 && i / 4 == j / 4;
                    covariance(i, j) =
                        square(fabric.intercept.sd) + square(at.lotIntercept) +
                        (square(fabric.slope.sd) + square(at.lotSlope)) * age(i) * age(j) +
                        (ofOneSet ? square(at.setIntercept) + square(at.setSlope) * age(i) * age(j) : 0) +
                        (i == j ? square(at.scatter) + (i == 8 ? square(at.setIntercept) : 0) : 0);
                }
            }
            const Eigen::LLT<Eigen::MatrixXd> root(covariance);
            return -root.matrixL().solve(off).squaredNorm() / 2 - root.matrixLLT().diagonal().array().log().sum();
        };
        auto other = spreads;
        other.lotIntercept = 0.1;
        other.lotSlope = 0.01;
        other.setIntercept = 0.02;
        other.setSlope = 0.05;
        const double found = tree.gather(tested, other) - tree.gather(tested, spreads);
        QVERIFY(std::abs(found - (lnDense(other) - lnDense(spreads))) < 1e-9);
    }
};

CROWNRING_TEST(LineTreeTest)

}

#include "line_tree_test.moc"
