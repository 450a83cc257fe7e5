// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/made_fleet.h"
#include "fabric/numeric/weights.h"
#include "fabric/outlook/life.h"
#include "fabric/sampler/ageing_sampler.h"
#include "fabric/sampler/warm_start.h"
#include "test_class.h"

#include <QtTest>

#include <cmath>

namespace warm_start_test {

using namespace crownring;

namespace {

const double limit = std::log(madeLimit);
const AgeingPrior prior{{fabricPrior(madeNew, madeLimit)}, {}};

Posterior fitted(const FabricFleet& fleet) {
    SamplerSettings settings;
    settings.burnIn = 500;
    settings.drawsOfChain = 1000;
    settings.sweepsOfDraw = 2;
    return sampledPosterior(fleetColumns(fleet).value(), prior, settings).value();
}

/// A fleet whose last set has been tested once more, and the same before that test.
struct Tested {
    FabricFleet before;
    FabricFleet after;
    std::size_t set = 0;
    double hours = 0;
};

Tested testedOnceMore(double load) {
    FleetMaking making;
    making.sets = 8;
    making.breakShare = 0.15;
    const auto made = madeFleet(making);
    Tested tested{made.fleet, made.fleet, making.sets - 1, made.truth.back().use.hours};
    tested.after.readings.push_back({tested.set, tested.hours, 1, 0, {Seen::Exactly, std::log(load), 0}});
    return tested;
}

}

class WarmStartTest : public QObject {
    Q_OBJECT
private slots:
    /// Within 3 % of the full fit: some four standard errors of the quantiles of either.
    void aWarmFitIsTheFullFitButForChance() {
        auto tested = testedOnceMore(1);
        const auto before = fitted(tested.before);
        const auto now = strengthAt(before, tested.set, {tested.hours, 0, 0}, tested.hours);
        tested = testedOnceMore(now.low);
        const auto warm = warmFit(before, fleetColumns(tested.after).value(), tested.set, 1);
        QVERIFY(warm.worth > leastWorth);
        const auto full = fitted(tested.after);
        for (const std::size_t set : {tested.set, std::size_t{0}}) {
            const auto one = bandOf(livesOf(warm.posterior, set, limit, {}));
            const auto other = bandOf(livesOf(full, set, limit, {}));
            QVERIFY(std::abs(one.low / other.low - 1) < 0.03);
            QVERIFY(std::abs(one.middle / other.middle - 1) < 0.03);
        }
        const auto old = bandOf(livesOf(before, tested.set, limit, {}));
        const auto fresh = bandOf(livesOf(warm.posterior, tested.set, limit, {}));
        QVERIFY(old.middle / fresh.middle - 1 > 0.03); // the reading did say something
    }

    void aReadingThatNobodyForesawAsksForAFullFit() {
        const auto tested = testedOnceMore(2);
        const auto warm = warmFit(fitted(tested.before), fleetColumns(tested.after).value(), tested.set, 1);
        QVERIFY(warm.worth < leastWorth);
        QVERIFY(std::isfinite(bandOf(livesOf(warm.posterior, tested.set, limit, {})).middle));
    }

    void weights() {
        const auto weights = weightsOf({0, std::log(3), -1e6, 0});
        QVERIFY(std::abs(weights[1] - 0.6) < 1e-14);
        QCOMPARE(weights[2], 0.0);
        QVERIFY(std::abs(worthOf(weights) - 1 / (0.36 + 2 * 0.04)) < 1e-12);
        QCOMPARE(pickedByWeight(weights, 0.5), (std::vector<std::size_t>{0, 1, 1, 3}));
        const double none = -std::numeric_limits<double>::infinity();
        QCOMPARE(weightsOf({none, none})[0], 0.5);
    }
};

CROWNRING_TEST(WarmStartTest)

}

#include "warm_start_test.moc"
