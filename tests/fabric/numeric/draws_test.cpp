// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/numeric/draws.h"
#include "fabric/numeric/normal_tail.h"
#include "test_class.h"

#include <QtTest>
#include <boost/math/special_functions/gamma.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>

namespace draws_test {

using namespace crownring;

namespace {

constexpr int many = 40'000;

/// Kolmogorov's statistic of draws that a distribution function has turned into uniform ones, times the root of their
/// number: above 1.95 once in a thousand times (Kolmogorov's limit law).
double unevenness(std::vector<double> uniforms) {
    std::sort(uniforms.begin(), uniforms.end());
    double most = 0;
    const auto count = static_cast<double>(uniforms.size());
    for (std::size_t k = 0; k < uniforms.size(); ++k)
        most = std::max(
            {most, static_cast<double>(k + 1) / count - uniforms[k], uniforms[k] - static_cast<double>(k) / count});
    return most * std::sqrt(count);
}

template <class Draw>
double unevennessOf(Draw draw) {
    std::vector<double> uniforms(many);
    std::generate(uniforms.begin(), uniforms.end(), draw);
    return unevenness(uniforms);
}

double below(double z) { return std::exp(logNormalBelow(z)); }

/// Of a standard normal between two bounds.
double belowWithin(double z, double low, double high) {
    return std::exp(logNormalBetween(low, z) - logNormalBetween(low, high));
}

}

class DrawsTest : public QObject {
    Q_OBJECT
private slots:
    /// The generator is the one of ISO C++ [rand.predef], seeded through its seed sequence.
    void theGeneratorIsTheStandardOne() {
        std::seed_seq words{20261125U, 0U, 3U};
        std::mt19937_64 standard(words);
        Draws draws(20261125, 3);
        for (int k = 0; k < 100; ++k)
            QVERIFY(std::abs(draws.uniform() - std::ldexp(static_cast<double>(standard()), -64)) < 1e-15);
    }

    /// As they came with Boost 1.74; other values would change every stored forecast.
    void theFirstValuesStayWhatTheyAre() {
        Draws draws(20261125, 3);
        for (const double value : {0.48947734952766569, 0.090163632690563794})
            QCOMPARE(draws.uniform(), value);
        for (const double value : {-0.10540253791106605, -0.27624040701957298})
            QCOMPARE(draws.normal(), value);
        QCOMPARE(draws.exponential(), 0.84216936637827478);
        QCOMPARE(draws.gamma(4.5), 6.2772625792055932);
        QCOMPARE(draws.gamma(0.5), 0.66795083474564498);
        QCOMPARE(draws.normalAbove(0, 1, 2), 2.1421217220160393);
    }

    /// A chain whose arithmetic broke down asks for such; it once asked for ever.
    void ofWhatIsNoNumberOrOutOfReachADrawComesBack() {
        const double none = std::numeric_limits<double>::quiet_NaN();
        const double endless = std::numeric_limits<double>::infinity();
        Draws draws(1);
        QVERIFY(std::isnan(draws.normalAbove(none, 1, 0)));
        QVERIFY(std::isnan(draws.normalBelow(none, endless, 0)));
        QVERIFY(std::isnan(draws.normalBetween(none, 1, 0, 1)));
        QVERIFY(std::isnan(draws.normalBetween(0, 1, 1, none)));
        QCOMPARE(draws.normalAbove(0, 1, endless), endless);
        QCOMPARE(draws.normalAbove(0, 1, 1e200), 1e200);
        QCOMPARE(draws.normalBetween(0, 1e-200, 1, 2), 1.0);
    }

    void streamsDiffer() {
        Draws one(7, 0);
        Draws other(7, 1);
        QVERIFY(one.uniform() != other.uniform());
    }

    void plainLaws() {
        Draws draws(1);
        QVERIFY(unevennessOf([&] { return draws.uniform(); }) < 1.95);
        QVERIFY(unevennessOf([&] { return below(draws.normal()); }) < 1.95);
        QVERIFY(unevennessOf([&] { return -std::expm1(-draws.exponential()); }) < 1.95);
        for (const double shape : {0.5, 1.0, 2.5, 400.0})
            QVERIFY(unevennessOf([&] { return boost::math::gamma_p(shape, draws.gamma(shape)); }) < 1.95);
        QVERIFY(unevennessOf([&] { return boost::math::gamma_q(3.0, 2 / draws.inverseGamma(3, 2)); }) < 1.95);
    }

    /// Bounds on both sides of where the way of drawing changes.
    void cutNormals() {
        Draws draws(2);
        for (const double bound : {-4.0, 0.0, 0.39, 0.41, 2.0, 8.0}) {
            QVERIFY(unevennessOf([&] {
                        return -std::expm1(logNormalBelow(-draws.normalAbove(0, 1, bound)) - logNormalBelow(-bound));
                    }) < 1.95);
            QVERIFY(unevennessOf([&] {
                        const double z = (draws.normalBelow(10, 2, 10 - 2 * bound) - 10) / 2;
                        return std::exp(logNormalBelow(z) - logNormalBelow(-bound));
                    }) < 1.95);
        }
    }

    void normalsBetweenBounds() {
        Draws draws(3);
        const std::vector<std::pair<double, double>> bounds{{-1, 1}, {-0.1, 0.2}, {-5, 0.5}, {1, 1.1},
                                                            {2, 9},  {6, 6.5},    {-7, -6},  {-3, -0.2}};
        for (const auto& [low, high] : bounds)
            QVERIFY(unevennessOf([&, low = low, high = high] {
                        return belowWithin((draws.normalBetween(5, 3, 5 + 3 * low, 5 + 3 * high) - 5) / 3, low, high);
                    }) < 1.95);
    }
};

CROWNRING_TEST(DrawsTest)

}

#include "draws_test.moc"
