// SPDX-License-Identifier: GPL-3.0-or-later

/// The law that stands for a sum over flights, against sums that are drawn: a negative binomial number of flights (a
/// Poisson number whose mean is a gamma draw), each of a normal length. Figures are our own choice.

#include "fabric/numeric/draws.h"
#include "forecast/use_distribution.h"
#include "test_class.h"

#include <QtTest>

#include <algorithm>
#include <cmath>
#include <vector>

namespace use_distribution_test {

using namespace crownring;

namespace {

int poisson(double mean, Draws& draws) {
    int events = 0;
    for (double time = draws.exponential(); time < mean; time += draws.exponential())
        ++events;
    return events;
}

std::vector<double> drawnSums(const UseMoments& flights, const PerFlight& each, int count) {
    Draws draws(20261130);
    const double shape = flights.mean * flights.mean / (flights.variance - flights.mean);
    std::vector<double> sums;
    for (int i = 0; i < count; ++i) {
        double sum = 0;
        for (int left = poisson(draws.gamma(shape) * flights.mean / shape, draws); left > 0; --left)
            sum += each.mean + std::sqrt(each.variance) * draws.normal();
        sums.push_back(sum);
    }
    std::ranges::sort(sums);
    return sums;
}

}

class UseDistributionTest : public QObject {
    Q_OBJECT

private slots:
    void itsBandHoldsEightOfTenDrawnSums_data() {
        QTest::addColumn<double>("mean");
        QTest::addColumn<double>("variance");
        QTest::newRow("a week of a private balloon") << 0.6 << 1.0;
        QTest::newRow("a month of one") << 3.0 << 7.0;
        QTest::newRow("a month of rides") << 18.0 << 60.0;
        QTest::newRow("a year of which little is known") << 40.0 << 700.0;
        QTest::newRow("ten years") << 900.0 << 30000.0;
    }
    void itsBandHoldsEightOfTenDrawnSums() {
        QFETCH(const double, mean);
        QFETCH(const double, variance);
        const PerFlight each{60, 14.0 * 14.0};
        constexpr int count = 20'000;
        const auto sums = drawnSums({mean, variance}, each, count);
        const UseDistribution use({mean, variance}, each);
        for (const double share : {0.1, 0.5, 0.9}) {
            const double place = use.quantile(share);
            if (place <= 0)
                continue; // nothing is flown so often
            const auto below = std::ranges::upper_bound(sums, place) - sums.begin();
            // Four points: the law is not exact, the draws are known to a third of a point.
            QVERIFY2(std::abs(static_cast<double>(below) / count - share) < 0.04,
                     qPrintable(QString::number(static_cast<double>(below) / count)));
        }
        const auto none = std::ranges::count_if(sums, [](double sum) { return sum == 0; });
        QVERIFY(std::abs(static_cast<double>(none) / count - use.chanceOfNone()) < 0.015);
    }

    void theChanceAndTheQuantileAreOneLaw() {
        const UseDistribution use({4, 9}, {60, 200});
        for (const double share : {0.2, 0.5, 0.9})
            QVERIFY(std::abs(use.chanceOf(use.quantile(share)) - (1 - share)) < 1e-6);
        QCOMPARE(use.chanceOf(0), 1.0);
        QVERIFY(std::abs(use.chanceOf(1e-9) - (1 - use.chanceOfNone())) < 1e-6);
    }

    void whereNothingIsFlownNothingIsUsed() {
        const UseDistribution nothing;
        QCOMPARE(nothing.chanceOf(1), 0.0);
        QCOMPARE(nothing.quantile(0.9), 0.0);
        QCOMPARE(nothing.chanceOfNone(), 1.0);
        QCOMPARE(UseDistribution({0, 0}, {60, 200}).quantile(0.9), 0.0);
    }

    void fewFlightsMayBeNone() {
        QCOMPARE(UseDistribution({0.05, 0.05}, {60, 200}).quantile(0.9), 0.0);
        QVERIFY(std::abs(UseDistribution({0.05, 0.05}, {60, 200}).chanceOfNone() - std::exp(-0.05)) < 1e-9);
    }
};

CROWNRING_TEST(UseDistributionTest)

}

#include "use_distribution_test.moc"
