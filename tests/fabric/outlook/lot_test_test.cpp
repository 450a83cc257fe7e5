// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/outlook/lot_slopes.h"
#include "fabric/outlook/lot_test.h"
#include "fabric/simulated_fleet.h"
#include "test_class.h"

#include <QtTest>
#include <boost/math/distributions/students_t.hpp>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace lot_test_test {

using namespace crownring;

namespace {

/// Ten lots whose true slopes differ by 15 % and are known to 10 %, as those of four sets each are.
struct Lots {
    double mean = 0.2;
    double spread = 0.03;
    double error = 0.02;
    std::size_t count = 10;
};

std::vector<LotSlope> drawnLots(const Lots& lots, double badRatio, Draws& draws) {
    std::vector<LotSlope> drawn;
    for (std::size_t lot = 0; lot < lots.count; ++lot) {
        const double truth = (lots.mean + lots.spread * draws.normal()) + (lot == 0 ? (badRatio - 1) * lots.mean : 0);
        drawn.push_back({truth + lots.error * draws.normal(), lots.error, 4, 10});
    }
    return drawn;
}

bool anyIs(const LotComparison& comparison, LotStanding least) {
    return std::any_of(comparison.lots.begin(), comparison.lots.end(),
                       [&](const auto& verdict) { return verdict.standing >= least; });
}

std::vector<LotSlope> nineAndOne(double slope) {
    std::vector<LotSlope> lots;
    for (const double each : {0.18, 0.19, 0.2, 0.21, 0.22, 0.17, 0.23, 0.2, 0.19})
        lots.push_back({each, 0.01, 4, 10});
    lots.push_back({slope, 0.01, 4, 10});
    return lots;
}

}

class LotTestTest : public QObject {
    Q_OBJECT
private slots:
    // With equal errors the weights are equal and the variance between is what the sample variance has above them.
    void equalErrorsAreTheCommonCase() {
        const std::vector<double> values{0.1, 0.25, 0.2, 0.4, 0.3};
        const auto found = pauleMandel(values, std::vector<double>(5, 0.004));
        QVERIFY(std::abs(found.mean - 0.25) < 1e-12);
        QVERIFY(std::abs(found.between - (0.0125 - 0.004)) < 1e-12);
        QVERIFY(std::abs(found.variance - 0.0125 / 5) < 1e-12);
    }

    // Its definition (Paule and Mandel 1982, from memory): the weighted sum of squares is the degrees of freedom.
    void unequalErrorsMeetTheDefinition() {
        const std::vector<double> values{0.1, 0.25, 0.2, 0.4, 0.3, 0.22};
        const std::vector<double> variances{0.001, 0.01, 0.0004, 0.002, 0.005, 0.0007};
        const auto found = pauleMandel(values, variances);
        double squares = 0;
        for (std::size_t at = 0; at < values.size(); ++at)
            squares += std::pow(values[at] - found.mean, 2) / (variances[at] + found.between);
        QVERIFY(found.between > 0);
        QVERIFY(std::abs(squares - 5) < 1e-9);
        QCOMPARE(pauleMandel({0.2, 0.201, 0.199}, {0.01, 0.01, 0.01}).between, 0.0);
    }

    // With equal errors the deviation is the externally studentised residual about a mean, which has Student's t with
    // two fewer degrees of freedom than lots (Cook and Weisberg 1982, from memory).
    void withEqualErrorsItIsTheTestForAnOutlier() {
        const auto lots = nineAndOne(0.26);
        const auto verdict = compareLots(lots).value().lots.back();
        double mean = 0;
        for (std::size_t lot = 0; lot < 9; ++lot)
            mean += lots[lot].slope / 9;
        double variance = 0;
        for (std::size_t lot = 0; lot < 9; ++lot)
            variance += std::pow(lots[lot].slope - mean, 2) / 8;
        const double t = (0.26 - mean) / std::sqrt(variance * (1 + 1.0 / 9));
        QVERIFY(std::abs(verdict.deviation - t) < 1e-9);
        QVERIFY(std::abs(verdict.p - cdf(complement(boost::math::students_t(8), t))) < 1e-9);
        QVERIFY(std::abs(verdict.ratio - 0.26 / mean) < 1e-9);
    }

    void aLotThatAgesTwiceAsFastIsAnAlarm() {
        const auto comparison = compareLots(nineAndOne(0.4)).value();
        QVERIFY(comparison.lots.back().standing == LotStanding::Alarm);
        for (std::size_t lot = 0; lot < 9; ++lot)
            QVERIFY(comparison.lots[lot].standing == LotStanding::AsOthers);
    }

    void gates() {
        auto lots = nineAndOne(0.4);
        lots.back().sets = 1;
        QVERIFY(compareLots(lots)->lots.back().standing == LotStanding::TooLittle);
        lots.back() = {0.4, 0.01, 4, 1};
        QVERIFY(compareLots(lots)->lots.back().standing == LotStanding::TooLittle);
        QVERIFY(!compareLots({lots.begin(), lots.begin() + 4}));
        QVERIFY(compareLots({lots.begin(), lots.begin() + 5}));
        // Certainly faster, but not by so much that it matters.
        std::vector<LotSlope> alike(9, {0.2, 0.0001, 4, 10});
        alike.push_back({0.24, 0.0001, 4, 10});
        const auto verdict = compareLots(alike)->lots.back();
        QVERIFY(verdict.p < 1e-6);
        QVERIFY(verdict.standing == LotStanding::AsOthers);
        // A slow lot is none to warn of.
        QVERIFY(compareLots(nineAndOne(0.02))->lots.back().standing == LotStanding::AsOthers);
    }

    void anAlarmTakesTwoLooksThatAgree() {
        using enum LotStanding;
        QVERIFY(confirmed(AsOthers, Alarm, true) == Watch);
        QVERIFY(confirmed(Alarm, Alarm, false) == Watch);
        QVERIFY(confirmed(Alarm, Alarm, true) == Alarm);
        QVERIFY(confirmed(Alarm, AsOthers, true) == AsOthers);
        QVERIFY(confirmed(Watch, Watch, true) == Watch);
    }

    // Levels as promised, whatever the lots' own spread; 600 fleets, so that a share of 5 % is known to 0.9 %.
    void goodLotsAreSeldomAccused() {
        Draws draws(1);
        for (const double spread : {0.0, 0.03}) {
            constexpr int fleets = 600;
            int watched = 0;
            int alarmed = 0;
            int firstBelowFive = 0;
            for (int fleet = 0; fleet < fleets; ++fleet) {
                const auto comparison = compareLots(drawnLots({0.2, spread, 0.02, 10}, 1, draws)).value();
                watched += anyIs(comparison, LotStanding::Watch);
                alarmed += anyIs(comparison, LotStanding::Alarm);
                firstBelowFive += comparison.lots.front().p < 0.05;
            }
            QVERIFY2(watched <= 0.13 * fleets, qPrintable(QString::number(watched)));
            QVERIFY2(alarmed <= 0.07 * fleets, qPrintable(QString::number(alarmed)));
            QVERIFY2(firstBelowFive <= 0.075 * fleets, qPrintable(QString::number(firstBelowFive)));
            if (spread > 0)
                QVERIFY(alarmed >= 0.02 * fleets && firstBelowFive >= 0.03 * fleets);
        }
    }

    void whatItSaysItCanDetectItDetectsFourTimesInFive() {
        Draws draws(2);
        constexpr int fleets = 400;
        double detectable = 0;
        for (int fleet = 0; fleet < fleets; ++fleet)
            detectable += compareLots(drawnLots({}, 1, draws))->lots.front().detectableRatio / fleets;
        int found = 0;
        for (int fleet = 0; fleet < fleets; ++fleet)
            found += compareLots(drawnLots({}, detectable, draws))->lots.front().standing == LotStanding::Alarm;
        QVERIFY2(found > 0.72 * fleets && found < 0.88 * fleets,
                 qPrintable(QString("%1 at %2").arg(found).arg(detectable)));
        QVERIFY(detectable > 1.5 && detectable < 2.1);
    }

    void aBadLotOfAFleet() {
        Draws draws(3);
        FleetPlan plan;
        plan.lots = 10;
        plan.inspections = 4;
        plan.badLot = 2;
        const auto slopes = slopesOfLots(simulatedFleet(plan, draws), 0).value();
        QCOMPARE(slopes.size(), std::size_t{10});
        std::vector<LotSlope> lots;
        for (const auto& [lot, slope] : slopes) {
            QCOMPARE(slope.sets, std::size_t{4});
            QVERIFY(std::abs(slope.slope - (lot == 0 ? 0.44 : 0.22)) < (lot == 0 ? 0.15 : 0.09));
            QVERIFY(slope.standardError > 0.01 && slope.standardError < 0.05);
            lots.push_back(slope);
        }
        const auto comparison = compareLots(lots).value();
        QVERIFY(comparison.lots.front().standing == LotStanding::Alarm);
        for (std::size_t lot = 1; lot < lots.size(); ++lot)
            QVERIFY(comparison.lots[lot].standing == LotStanding::AsOthers);
    }
};

CROWNRING_TEST(LotTestTest)

}

#include "lot_test_test.moc"
