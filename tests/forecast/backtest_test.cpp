// SPDX-License-Identifier: GPL-3.0-or-later

/// The goals of honest dates, on a few made-up fleets whose last year is hidden; crownring_forecast_backtest runs many,
/// and tests/README.md keeps its table. Fleets are of seeds that nothing was chosen by.

#include "forecast/backtest.h"
#include "forecast/made_logs.h"
#include "test_class.h"

#include <QtTest>

namespace backtest_test {

using namespace crownring::made;

namespace {

constexpr int fleets = 12;
constexpr double leastOfOne = 0.70; ///< goal, of each character
constexpr double leastOfAll = 0.75, mostOfAll = 0.85;
constexpr double mostError = 0.85; ///< of the better of what people do now

}

class BacktestTest : public QObject {
    Q_OBJECT

private slots:
    void bandsHoldEightOfTenAndTheirMiddleIsBetterThanWhatPeopleDoNow() {
        Scores all;
        for (const auto character : allCharacters) {
            Scores scores;
            for (std::uint64_t seed = 501; seed < 501 + fleets; ++seed)
                scores += backtest(madeFleet(character, seed), seed);
            const auto row = rowOf(nameOf(character), scores);
            QVERIFY2(scores.months.coverage() >= leastOfOne, row.c_str());
            QVERIFY2(scores.dates.coverage() >= leastOfOne, row.c_str());
            all += scores;
        }
        const auto row = rowOf("all", all);
        for (const auto* score : {&all.months, &all.dates}) {
            QVERIFY2(score->coverage() >= leastOfAll && score->coverage() <= mostOfAll, row.c_str());
            QVERIFY2(score->ratio() <= mostError, row.c_str());
        }
    }

    void theSameSeedGivesTheSameFleet() {
        const auto fleet = madeFleet(Character::Private, 7);
        QVERIFY(fleet.front().known == madeFleet(Character::Private, 7).front().known);
        QVERIFY(fleet.front().known != madeFleet(Character::Private, 8).front().known);
        QCOMPARE(rowOf("", backtest(fleet, 7)), rowOf("", backtest(fleet, 7)));
    }
};

CROWNRING_TEST(BacktestTest)

}

#include "backtest_test.moc"
