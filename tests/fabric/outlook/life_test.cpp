// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/likelihood/effective_age.h"
#include "fabric/numeric/quantile.h"
#include "fabric/outlook/life.h"
#include "test_class.h"

#include <QtTest>

#include <cmath>

namespace life_test {

using namespace crownring;

namespace {

const double limit = std::log(30);

/// A posterior of one set whose draws are these.
Posterior of(const std::vector<Line>& lines, double phi = 1) {
    Posterior posterior = emptyPosterior({{}, {}, {{}}, {}, {}, {}}, 1, lines.size());
    for (std::size_t draw = 0; draw < lines.size(); ++draw)
        keepDraw({{}, {}, {lines[draw]}, {}, {0.1, 0.1, 0.1, 0.1, 0.08}, {0.7, phi}}, draw, posterior);
    return posterior;
}

}

class LifeTest : public QObject {
    Q_OBJECT
private slots:
    /// By hand: ln(100/30) = 1.2039728; at 0.2 a hundred hours that is 601.986 hours.
    void withoutOverheating() {
        const auto lives = livesOf(of({{std::log(100), 0.2}}), 0, limit, {200, 0, 0});
        QVERIFY(std::abs(lives[0] - 601.9864021629679) < 1e-9);
    }

    /// At its life the crown is at the limit, whatever phi and however hot it is flown.
    void atItsLifeTheCrownIsAtTheLimit() {
        for (const double phi : {0.7, 1.0, 1.4}) {
            const PlaceUse use{200, 12, 0.03};
            const auto posterior = of({{4.6, 0.21}}, phi);
            const double life = livesOf(posterior, 0, limit, use)[0];
            const double dose = use.dose + use.dosePerHour * (life - use.hours);
            QVERIFY(std::abs(4.6 - 0.21 * effectiveAge({0.7, phi}, life, 1, dose) - limit) < 1e-12);
            QVERIFY(strengthAt(posterior, 0, {life, dose, 0}, life).middle - 30 < 1e-9);
        }
    }

    void belowFromTheFirst() { QCOMPARE(livesOf(of({{3, 0.2}}), 0, limit, {})[0], 0.0); }

    void aBandIsOfWhatIsStillInService() {
        const auto lives = livesOf(of({{limit + 0.2, 0.2}, {limit + 0.8, 0.2}, {limit + 1, 0.2}}), 0, limit, {});
        const auto forecast = lifeForecast(lives, 300); // lives of 100, 400 and 500 hours
        QVERIFY(std::abs(forecast.reachedAlready - 1.0 / 3) < 1e-12);
        QVERIFY(std::abs(forecast.life->middle - 450) < 1e-9);
        QVERIFY(std::abs(chanceReached(lives, 300, 450) - 0.5) < 1e-12);
        QCOMPARE(chanceReached(lives, 300, 300), 0.0);
    }

    void noBandWhereNothingIsLeft() {
        const auto posterior = of({{limit + 0.2, 0.2}});
        const auto lives = livesOf(posterior, 0, limit, {});
        QVERIFY(!lifeForecast(lives, 300).life);
        QCOMPARE(lifeForecast(lives, 300).reachedAlready, 1.0);
        QCOMPARE(chanceReached(lives, 300, 400), 1.0);
        QCOMPARE(chancePullBelow(posterior, 0, limit, {300, 0, 0}, 400, 1), 1.0);
    }

    void whatHardlyAgesLivesLongAndStaysANumber() {
        const auto lives = livesOf(of({{4.6, 1e-300}}), 0, limit, {10, 0, 0});
        QVERIFY(lives[0] > 1e100);
        QVERIFY(lifeForecast(lives, 10).life->low > 1e100);
    }

    /// R: quantile(c(1, 2, 4, 8), c(0, .05, .5, 1)) = 1.00 1.15 3.00 8.00
    void quantiles() {
        const std::vector<double> values{8, 1, 4, 2};
        QCOMPARE(quantileOf(values, 0), 1.0);
        QVERIFY(std::abs(quantileOf(values, 0.05) - 1.15) < 1e-14);
        QCOMPARE(quantileOf(values, 0.5), 3.0);
        QCOMPARE(quantileOf(values, 1), 8.0);
        const double never = std::numeric_limits<double>::infinity();
        QCOMPARE(quantileOf(std::vector<double>{1, never, never}, 0.9), never);
    }
};

CROWNRING_TEST(LifeTest)

}

#include "life_test.moc"
