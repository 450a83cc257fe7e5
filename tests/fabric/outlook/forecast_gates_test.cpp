// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/made_fleet.h"
#include "fabric/outlook/forecast_gates.h"
#include "fabric/sampler/ageing_sampler.h"
#include "test_class.h"

#include <QtTest>

#include <algorithm>
#include <cmath>

namespace forecast_gates_test {

using namespace crownring;

namespace {

const double limit = std::log(madeLimit);
const AgeingPrior prior{{fabricPrior(madeNew, madeLimit)}, {}};

struct Case {
    MadeFleet made;
    FleetColumns columns;
    Posterior posterior;
};

Case fitted(const MadeFleet& made) {
    SamplerSettings settings;
    settings.burnIn = 300;
    settings.drawsOfChain = 300;
    settings.sweepsOfDraw = 2;
    const auto columns = fleetColumns(made.fleet).value();
    return {made, columns, sampledPosterior(columns, prior, settings).value()};
}

ForecastGrounds groundsOf(const Case& of, std::size_t set) {
    return groundsOf(of.columns, prior, of.posterior, set, limit, of.made.truth[set].use);
}

MadeFleet fleetOf(double proof, double breakShare) {
    FleetMaking making;
    making.sets = 12;
    making.proof = proof;
    making.breakShare = breakShare;
    return madeFleet(making);
}

}

class ForecastGatesTest : public QObject {
    Q_OBJECT
private slots:
    void muchThatBrokeIsEnough() {
        const auto of = fitted(fleetOf(1.5, 0.3));
        const auto grounds = groundsOf(of, 0);
        QVERIFY(grounds.broken >= leastBroken);
        QVERIFY(grounds.information > leastInformation);
        QCOMPARE(grounds.ground, Ground::Enough);
        QVERIFY(!grounds.isOpenEnded);
    }

    void heldTestsAloneGiveNoNumber() {
        auto made = fleetOf(1.5, 0);
        for (auto& reading : made.fleet.readings)
            reading.observed = {Seen::AtLeast, std::log(35), 0};
        const auto of = fitted(made);
        const auto grounds = groundsOf(of, 0);
        QCOMPARE(grounds.broken, 0U);
        QCOMPARE(grounds.ground, Ground::HeldOnly);
        QVERIFY(grounds.isOpenEnded);
    }

    /// Three pulls of one set broke when nearly new; of another set's life they say next to nothing.
    void fewReadingsOfYouthAreThePriorStill() {
        MadeFleet made;
        made.fleet = {1, {0, 0}, {0, 1}, {}, {}};
        for (const double load : {95.0, 104.0, 99.0})
            made.fleet.readings.push_back({0, 5, 1, 0, {Seen::Exactly, std::log(load), 0}});
        made.truth.resize(2);
        const auto grounds = groundsOf(fitted(made), 1);
        QCOMPARE(grounds.ground, Ground::Prior);
        QVERIFY(grounds.isBeyondFlown);
        QVERIFY(std::abs(grounds.mostFlown - 5) < 1e-9);
    }

    /// Tests of one day cannot tell how fast fabric ages, however many they are; new fabric beside them can.
    void readingsOfOneAgeLeaveThePaceToThePrior() {
        MadeFleet made;
        made.fleet = {1, {0}, {}, {}, {}};
        for (std::size_t set = 0; set < 10; ++set) {
            made.fleet.lotOfSet.push_back(0);
            made.fleet.readings.push_back({set,
                                           300 + static_cast<double>(set),
                                           1,
                                           0,
                                           {Seen::Exactly, std::log(60.0 + static_cast<double>(set)), 0}});
        }
        made.truth.resize(10);
        for (auto& truth : made.truth)
            truth.use.hours = 310;
        const auto grounds = groundsOf(fitted(made), 0);
        QVERIFY(grounds.isOfOneAge);
        QCOMPARE(grounds.ground, Ground::Prior);
        for (int pull = 0; pull < 5; ++pull)
            made.fleet.coupons.push_back({0, {Seen::Exactly, std::log(100.0 + pull), 0}});
        const auto beside = groundsOf(fitted(made), 0);
        QVERIFY(!beside.isOfOneAge);
        QCOMPARE(beside.ground, Ground::Enough);
    }

    void anotherFabricsReadingsDoNotCount() {
        auto made = fleetOf(1.5, 0.3);
        made.fleet.fabrics = 2;
        made.fleet.fabricOfLot.push_back(1);
        made.fleet.lotOfSet.push_back(made.fleet.fabricOfLot.size() - 1);
        const AgeingPrior two{{prior.fabrics[0], prior.fabrics[0]}, {}};
        const auto columns = fleetColumns(made.fleet).value();
        SamplerSettings settings;
        settings.burnIn = settings.drawsOfChain = 50;
        const auto posterior = sampledPosterior(columns, two, settings).value();
        const auto grounds = groundsOf(columns, two, posterior, made.fleet.lotOfSet.size() - 1, limit, {});
        QCOMPARE(grounds.broken, 0U);
        QCOMPARE(grounds.mostFlown, 0.0);
        QCOMPARE(grounds.ground, Ground::HeldOnly);
    }
};

CROWNRING_TEST(ForecastGatesTest)

}

#include "forecast_gates_test.moc"
