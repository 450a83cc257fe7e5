// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/drawn_readings.h"
#include "fabric/likelihood/censored_regression.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>

#include <cmath>

namespace censored_regression_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

bool isRefused(const CensoredSample& sample) {
    for (const auto scatter : {Scatter::Normal, Scatter::LeastExtreme}) {
        const auto fit = fitCensored(sample, scatter);
        if (fit || fit.error().code() != Code::BadValue || !isSaid(fit.error()))
            return false;
    }
    return true;
}

CensoredSample readings(std::uint64_t seed, Eigen::Index rows = 60) {
    Draws draws(seed);
    return drawnReadings(rows, draws);
}

}

class CensoredRegressionTest : public QObject {
    Q_OBJECT
private slots:
    void aWeightIsThatManyReadings() {
        const auto weighted = readings(1);
        CensoredSample repeated;
        for (std::size_t row = 0; row < weighted.observed.size(); ++row)
            repeated.observed.insert(repeated.observed.end(), static_cast<std::size_t>(weighted.weights[row]),
                                     weighted.observed[row]);
        repeated.design.resize(static_cast<Eigen::Index>(repeated.observed.size()), 3);
        Eigen::Index next = 0;
        for (std::size_t row = 0; row < weighted.observed.size(); ++row)
            for (int times = 0; times < weighted.weights[row]; ++times)
                repeated.design.row(next++) = weighted.design.row(static_cast<Eigen::Index>(row));
        QVERIFY(repeated.observed.size() > weighted.observed.size());
        const auto one = fitCensored(weighted).value();
        const auto other = fitCensored(repeated).value();
        QVERIFY((one.coefficients - other.coefficients).norm() < 1e-10);
        QVERIFY((one.covariance - other.covariance).norm() < 1e-10);
        QVERIFY(std::abs(one.logLikelihood - other.logLikelihood) < 1e-9);
    }

    // Units are a matter of taste: kelvin for hours, an ounce for a stone.
    void columnsInOtherUnitsGiveTheSameFit() {
        const auto sample = readings(2);
        auto other = sample;
        other.design.col(1) = other.design.col(1) * 1e-6 + Eigen::VectorXd::Constant(60, 300);
        for (auto& observed : other.observed) {
            observed.low += 20;
            observed.high += 20;
        }
        const auto one = fitCensored(sample).value();
        const auto turned = fitCensored(other).value();
        QVERIFY(std::abs(one.logLikelihood - turned.logLikelihood) < 1e-8);
        QVERIFY(std::abs(one.logSigma - turned.logSigma) < 1e-8);
        QVERIFY(std::abs(one.coefficients[1] * 1e6 / turned.coefficients[1] - 1) < 1e-6);
    }

    // At its ends the likelihood, with the intercept held there, has fallen by half of the quantile of chi-square with
    // one degree of freedom (3.841458820694124 at 95 %, as in case 04). A held intercept is a fit without its column.
    void atTheEndsOfAProfileTheLikelihoodHasFallenEnough() {
        const auto sample = readings(3);
        for (const auto scatter : {Scatter::Normal, Scatter::LeastExtreme}) {
            const auto fit = fitCensored(sample, scatter).value();
            const auto interval = profileInterval(sample, scatter, {Eigen::Vector3d(1, 0, 0), 0}, 0.95).value();
            QVERIFY(interval.low < fit.coefficients[0] && fit.coefficients[0] < interval.high);
            for (const double end : {interval.low, interval.high}) {
                auto without = sample;
                without.design = sample.design.rightCols(2);
                for (auto& observed : without.observed) {
                    observed.low -= end;
                    observed.high -= end;
                }
                const double fall = fit.logLikelihood - fitCensored(without, scatter).value().logLikelihood;
                QVERIFY(std::abs(2 * fall - 3.841458820694124) < 1e-7);
            }
        }
    }

    void whatLeavesAFigureOpenIsRefused() {
        auto held = readings(4);
        for (auto& observed : held.observed)
            observed = {Seen::AtLeast, 3.9, 0};
        QVERIFY(isRefused(held));

        auto noScatter = readings(4);
        for (std::size_t row = 0; row < 60; ++row)
            noScatter.observed[row] = {Seen::Exactly, noScatter.design(static_cast<Eigen::Index>(row), 1), 0};
        QVERIFY(isRefused(noScatter));

        // What is held and what tears are told apart by a column alone.
        auto parted = readings(4);
        for (std::size_t row = 0; row < 60; ++row)
            parted.observed[row] = parted.design(static_cast<Eigen::Index>(row), 1) < 300
                                       ? Observation{Seen::AtLeast, 3.9, 0}
                                       : Observation{Seen::AtMost, 0, 3.8};
        QVERIFY(isRefused(parted));

        auto twice = readings(4);
        twice.design.col(2) = 2 * twice.design.col(1);
        QVERIFY(isRefused(twice));
        QVERIFY(isRefused({Eigen::MatrixXd::Ones(1, 1), {{Seen::Exactly, 4, 0}}, {}}));
    }

    void aProfileWithoutAnEndIsRefused() {
        // Four readings say a little of the mean, and of no value that it cannot be.
        CensoredSample few{
            Eigen::MatrixXd::Ones(4, 1),
            {{Seen::AtLeast, 1.0, 0}, {Seen::AtMost, 0, 1.1}, {Seen::AtLeast, 1.2, 0}, {Seen::AtMost, 0, 1.3}},
            {}};
        QVERIFY(fitCensored(few));
        const auto interval = profileInterval(few, Scatter::Normal, {Eigen::VectorXd::Ones(1), 0}, 0.95);
        QVERIFY(!interval && interval.error().code() == Code::BadValue);
    }
};

CROWNRING_TEST(CensoredRegressionTest)

}

#include "censored_regression_test.moc"
