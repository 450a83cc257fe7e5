// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/numeric/convergence.h"
#include "fabric/numeric/draws.h"
#include "test_class.h"

#include <QtTest>

#include <cmath>

namespace convergence_test {

using namespace crownring;

namespace {

/// Chains of a first-order autoregression with this correlation of neighbours, of variance 1, each about its own mean.
std::vector<double> chainsOf(double correlation, std::size_t length, const std::vector<double>& means,
                             std::uint64_t seed) {
    Draws draws(seed);
    std::vector<double> values;
    for (const double mean : means) {
        double value = draws.normal();
        for (std::size_t k = 0; k < length; ++k) {
            values.push_back(mean + value);
            value = correlation * value + std::sqrt(1 - correlation * correlation) * draws.normal();
        }
    }
    return values;
}

}

class ConvergenceTest : public QObject {
    Q_OBJECT
private slots:
    /// Two chains of four: by hand after Gelman et al. (Bayesian Data Analysis, 3rd ed., 11.4). Halves 1 3 | 2 4 | 3 5
    /// | 2 2 have means 2 3 4 2 and variances 2 2 2 0: within 1.5, between the means 11/12; sqrt((1.5/2 + 11/12)
    /// / 1.5).
    void splitRHatByHand() {
        const std::vector<double> draws{1, 3, 2, 4, 3, 5, 2, 2};
        QVERIFY(std::abs(splitRHat(draws, 2) - std::sqrt((0.75 + 11.0 / 12) / 1.5)) < 1e-14);
    }

    void chainsThatAgree() {
        const auto draws = chainsOf(0, 2000, {0, 0, 0, 0}, 1);
        QVERIFY(std::abs(splitRHat(draws, 4) - 1) < 0.003);
        QVERIFY(rankRHat(draws, 4) < 1.005);
    }

    void chainsThatDoNot() {
        QVERIFY(splitRHat(chainsOf(0, 2000, {0, 0, 0, 1}, 2), 4) > 1.05);
        auto drifting = chainsOf(0, 2000, {0}, 3);
        for (std::size_t k = 0; k < drifting.size(); ++k)
            drifting[k] += 2 * static_cast<double>(k) / 2000;
        QVERIFY(splitRHat(drifting, 1) > 1.1);
    }

    /// Equal middles and unequal widths: only the folded ranks see it (Vehtari et al. 2021, section 3.2).
    void unequalWidths() {
        auto draws = chainsOf(0, 2000, {0, 0, 0, 0}, 4);
        for (std::size_t k = 0; k < 2000; ++k)
            draws[k] *= 3;
        QVERIFY(splitRHat(draws, 4) < 1.01);
        QVERIFY(rankRHat(draws, 4) > 1.03);
    }

    /// An autoregression of correlation r is worth (1 - r) / (1 + r) of its draws.
    void effectiveDrawsOfAnAutoregression() {
        for (const double correlation : {-0.3, 0.0, 0.5, 0.9}) {
            const auto draws = chainsOf(correlation, 10'000, {0, 0, 0, 0}, 5);
            const double worth = 40'000 * (1 - correlation) / (1 + correlation);
            QVERIFY(std::abs(effectiveDraws(draws, 4) / worth - 1) < 0.12);
        }
    }

    /// For independent draws a quantile is worth all of them too.
    void effectiveDrawsOfAQuantile() {
        QVERIFY(std::abs(effectiveDrawsOfQuantile(chainsOf(0, 5000, {0, 0}, 6), 2, 0.05) / 10'000 - 1) < 0.1);
        QVERIFY(effectiveDrawsOfQuantile(chainsOf(0.9, 5000, {0, 0}, 6), 2, 0.05) < 2500);
    }

    /// Blom's scores: rank - 3/8 over count + 1/4; ties share their mean rank.
    void scores() {
        const auto scores = normalScores(std::vector<double>{5, 1, 3});
        QVERIFY(std::abs(scores[2]) < 1e-12);
        QVERIFY(std::abs(scores[0] - 0.869423773289) < 1e-11); // qnorm(2.625 / 3.25)
        QCOMPARE(scores[0], -scores[1]);
        const auto tied = normalScores(std::vector<double>{1, 1});
        QCOMPARE(tied[0], tied[1]);
    }
};

CROWNRING_TEST(ConvergenceTest)

}

#include "convergence_test.moc"
