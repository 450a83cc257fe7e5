// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/made_fleet.h"
#include "fabric/numeric/normal_table.h"
#include "fabric/numeric/normal_tail.h"
#include "fabric/numeric/quantile.h"
#include "fabric/outlook/life.h"
#include "fabric/sampler/ageing_sampler.h"
#include "fabric/sampler/prior_draws.h"
#include "test_class.h"

#include <QtTest>

#include <algorithm>
#include <cmath>

namespace ageing_sampler_test {

using namespace crownring;

namespace {

const double limit = std::log(madeLimit);
const AgeingPrior prior{{fabricPrior(madeNew, madeLimit)}, {}};

SamplerSettings quick() {
    SamplerSettings settings;
    settings.burnIn = 300;
    settings.drawsOfChain = 300;
    settings.sweepsOfDraw = 2;
    return settings;
}

FabricFleet smallFleet() {
    FleetMaking making;
    making.sets = 8;
    making.breakShare = 0.2;
    return madeFleet(making).fleet;
}

FabricFleet oneSet(std::vector<SetReading> readings) { return {1, {0}, {0}, std::move(readings), {}}; }

SetReading reading(double hours, Seen seen, double load) {
    return {0, hours, 1, 0, {seen, std::log(load), std::log(load)}};
}

Posterior fitted(const FabricFleet& fleet) {
    return sampledPosterior(fleetColumns(fleet).value(), prior, quick()).value();
}

bool isFinite(const Posterior& posterior) {
    const auto finite = [](const DrawColumn& column) {
        return std::all_of(column.begin(), column.end(), [](double value) { return std::isfinite(value); });
    };
    const auto& set = posterior.sets[0];
    return finite(set.intercept) && finite(set.slope) && finite(posterior.scatter) && finite(posterior.phi) &&
           *std::min_element(set.slope.begin(), set.slope.end()) > 0;
}

Band lifeOf(const Posterior& posterior) { return bandOf(livesOf(posterior, 0, limit, {})); }

}

class AgeingSamplerTest : public QObject {
    Q_OBJECT
private slots:
    void drawsDoNotDependOnThreads() {
        const auto fleet = fleetColumns(smallFleet()).value();
        auto settings = quick();
        settings.drawsOfChain = 50;
        settings.threads = 1;
        const auto one = sampledPosterior(fleet, prior, settings).value();
        settings.threads = 3;
        const auto three = sampledPosterior(fleet, prior, settings).value();
        QVERIFY(one.sets[3].slope == three.sets[3].slope);
        QVERIFY(one.phi == three.phi);
        settings.seed = 2;
        QVERIFY(one.phi != sampledPosterior(fleet, prior, settings)->phi);
        QVERIFY(one.phi[0] != one.phi[50]); // another chain
    }

    void aFitCanBeStopped() {
        std::stop_source stop;
        auto settings = quick();
        settings.drawsOfChain = 1'000'000;
        double last = 0;
        const auto stopSoon = [&](double share) {
            last = share;
            stop.request_stop();
        };
        QVERIFY(!sampledPosterior(fleetColumns(smallFleet()).value(), prior, settings, stop.get_token(), stopSoon));
        QVERIFY(last > 0 && last < 0.05);
    }

    void progressEndsAtTheWhole() {
        double last = 0;
        bool isRising = true;
        auto settings = quick();
        settings.drawsOfChain = 20;
        settings.threads = 1;
        const auto watch = [&](double share) {
            isRising &= share > last;
            last = share;
        };
        QVERIFY(sampledPosterior(fleetColumns(smallFleet()).value(), prior, settings, {}, watch).has_value());
        QVERIFY(isRising);
        QCOMPARE(last, 1.0);
    }

    /// Without readings the fit is what was believed: within 4 standard errors of draws from the prior, for 100
    /// effective.
    void noReadings() {
        const auto posterior = fitted(oneSet({}));
        QVERIFY(isFinite(posterior));
        const auto believed = priorOfSet(prior.fabrics[0], prior, 4000, 5);
        const auto share = [](const DrawColumn& lives, double hours) {
            return static_cast<double>(
                       std::count_if(lives.begin(), lives.end(), [&](double life) { return life < hours; })) /
                   static_cast<double>(lives.size());
        };
        for (const double hours : {300.0, 600.0, 1200.0})
            QVERIFY(std::abs(share(livesOf(posterior, 0, limit, {}), hours) -
                             share(livesOf(believed, 0, limit, {}), hours)) < 4 * std::sqrt(0.25 / 100));
    }

    /// The pulls agree to the last digit: they say nothing of how tests scatter, least of all that they do not.
    void equalPullsAtOneAgeAreFittedToo() {
        for (const double hours : {2.8667, 300.0}) {
            const auto posterior =
                fitted(oneSet({reading(hours, Seen::Exactly, 55), reading(hours, Seen::Exactly, 55)}));
            QVERIFY(isFinite(posterior));
            QVERIFY(*std::ranges::min_element(posterior.scatter) >= leastScatter);
            const auto now = strengthAt(posterior, 0, {hours, 0, 0}, hours);
            QVERIFY(now.low < 55 && 55 < now.high && now.high < 110);
        }
    }

    void oneReadingNarrowsAndStaysWide() {
        const auto nothing = lifeOf(fitted(oneSet({})));
        const auto posterior = fitted(oneSet({reading(300, Seen::Exactly, 55)}));
        const auto band = lifeOf(posterior);
        QVERIFY(isFinite(posterior));
        QVERIFY(band.high - band.low < nothing.high - nothing.low);
        QVERIFY(band.high > 1.5 * band.low);
        const auto now = strengthAt(posterior, 0, {300, 0, 0}, 300);
        QVERIFY(now.low < 55 && 55 < now.high);
    }

    void heldTestsBoundFromBelowOnly() {
        std::vector<SetReading> held;
        for (const double hours : {100.0, 200.0, 300.0, 400.0})
            held.push_back(reading(hours, Seen::AtLeast, 45));
        const auto posterior = fitted(oneSet(held));
        QVERIFY(isFinite(posterior));
        QVERIFY(lifeOf(posterior).low > lifeOf(fitted(oneSet({}))).low);
        QVERIFY(lifeOf(posterior).high > 1000);
    }

    /// Readings of one day cannot tell intercept from slope; the prior still can, a little.
    void allOnOneDay() {
        std::vector<SetReading> day;
        for (const double load : {50.0, 55.0, 60.0, 58.0})
            day.push_back(reading(250, Seen::Exactly, load));
        const auto posterior = fitted(oneSet(day));
        QVERIFY(isFinite(posterior));
        const auto now = strengthAt(posterior, 0, {250, 0, 0}, 250);
        QVERIFY(now.low > 40 && now.high < 75);
        QVERIFY(lifeOf(posterior).high > 1.5 * lifeOf(posterior).low);
    }

    /// A load in the wrong unit is an answer that is far off, not a crash; it is for the form to doubt it.
    void aThousandTimesTooStrong() {
        auto fleet = smallFleet();
        fleet.readings[0].observed = {Seen::Exactly, std::log(60'000), 0};
        QVERIFY(isFinite(fitted(fleet)));
    }

    void everyKindOfReading() {
        auto torn = reading(500, Seen::AtMost, 20);
        auto steps = reading(400, Seen::Between, 30);
        steps.observed.high = std::log(40);
        const auto posterior = fitted(oneSet({reading(0, Seen::Exactly, 100), steps, torn}));
        QVERIFY(isFinite(posterior));
        QVERIFY(lifeOf(posterior).middle < 520 && lifeOf(posterior).middle > 350);
    }

    void whatIsNoReadingIsRefused() {
        QVERIFY(!fleetColumns(oneSet({reading(-1, Seen::Exactly, 50)})));
        QVERIFY(!fleetColumns(oneSet({reading(1, Seen::Exactly, 0)}))); // ln 0
        QVERIFY(!fleetColumns(oneSet({reading(1, Seen::Between, 50)})));
        auto stranger = oneSet({reading(1, Seen::Exactly, 50)});
        stranger.readings[0].set = 1;
        QVERIFY(!fleetColumns(stranger));
        auto steep = oneSet({reading(1, Seen::Exactly, 50)});
        steep.readings[0].row = 1.5;
        QCOMPARE(fleetColumns(steep).error().code(), Code::BadValue);
        QVERIFY(!fleetColumns({1, {1}, {0}, {}, {}}));
        QVERIFY(!fleetColumns({1, {0}, {0}, {}, {{3, {}}}}));
    }

    void theQuickLogarithmIsNearEnough() {
        for (double z = -12; z < 10; z += 0.0037)
            QVERIFY(std::abs(logNormalBelowQuickly(z) - logNormalBelow(z)) < 1e-9);
        QCOMPARE(logNormalBelowQuickly(-std::numeric_limits<double>::infinity()),
                 -std::numeric_limits<double>::infinity());
        QCOMPARE(logNormalBelowQuickly(std::numeric_limits<double>::infinity()), 0.0);
    }
};

CROWNRING_TEST(AgeingSamplerTest)

}

#include "ageing_sampler_test.moc"
