// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/numeric/draws.h"
#include "fabric/outlook/best_next_reading.h"
#include "test_class.h"

#include <QtTest>

#include <cmath>

namespace best_next_reading_test {

using namespace crownring;

namespace {

const double limit = std::log(30);
const PlaceUse use{300, 0, 0};

/// Slopes from 0.15 to 0.3, one intercept, phi 1: strength now is from 41 to 64, and a pull tells the slope.
Posterior posterior() {
    Posterior posterior = emptyPosterior({{}, {}, {{}}, {}, {}, {}}, 1, 1000);
    for (std::size_t draw = 0; draw < 1000; ++draw)
        keepDraw(
            {{}, {}, {{std::log(100), 0.15 + 0.00015 * static_cast<double>(draw)}}, {}, {0, 0, 0, 0, 0.08}, {0, 1}},
            draw, posterior);
    return posterior;
}

double bandThen(std::optional<double> proof) {
    return worthOfPull(posterior(), 0, limit, use, {proof}).value().bandThen;
}

}

class BestNextReadingTest : public QObject {
    Q_OBJECT
private slots:
    void aPullToBreakTellsMost() {
        const double broken = bandThen(std::nullopt);
        const double higher = bandThen(50);
        const double lower = bandThen(35);
        QVERIFY(broken < higher);
        QVERIFY(higher < lower);
        QVERIFY(broken < 0.7 * worthOfPull(posterior(), 0, limit, use, {}).value().bandNow);
    }

    /// The weakest draw breaks at 41, five times the scatter above 27.
    void aPullThatSurelyHoldsTellsNothing() {
        const auto worth = worthOfPull(posterior(), 0, limit, use, {20}).value();
        QVERIFY(std::abs(worth.bandThen / worth.bandNow - 1) < 0.01);
    }

    /// Lives run evenly over slopes: ln(100/30) / slope hours at the 5 and 95 % places.
    void theBandNow() {
        const auto worth = worthOfPull(posterior(), 0, limit, use, {}).value();
        const double fall = std::log(100.0 / 30);
        QVERIFY(std::abs(worth.bandNow - 100 * (fall / 0.1575 - fall / 0.2925)) < 2);
    }

    void whatIsPastItsLifeHasNoNextReading() { QVERIFY(!worthOfPull(posterior(), 0, limit, {900, 0, 0}, {})); }

    void theSameSeedSaysTheSame() {
        QCOMPARE(worthOfPull(posterior(), 0, limit, use, {45}, 50, 3)->bandThen,
                 worthOfPull(posterior(), 0, limit, use, {45}, 50, 3)->bandThen);
    }
};

CROWNRING_TEST(BestNextReadingTest)

}

#include "best_next_reading_test.moc"
