// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/outlook/score.h"
#include "test_class.h"

#include <QtTest>

#include <array>
#include <cmath>

namespace score_test {

using namespace crownring;

/// Brier's score: G. W. Brier, Verification of forecasts expressed in terms of probability, Monthly Weather Review 78
/// (1950) 1-3; here the half of it that is used for two outcomes. Worked by hand.
class ScoreTest : public QObject {
    Q_OBJECT
private slots:
    void byHand() {
        const std::array<Foretold, 4> foretold{{{0.9, true}, {0.6, true}, {0.3, false}, {0.2, true}}};
        const auto score = scoreOf(foretold);
        // (0.01 + 0.16 + 0.09 + 0.64) / 4; three of four came: 0.75 * 0.25.
        QVERIFY(std::abs(score.brier - 0.225) < 1e-12);
        QVERIFY(std::abs(score.baseRate - 0.1875) < 1e-12);
        QCOMPARE(score.came, std::size_t{3});
        QCOMPARE(score.bins[1].count, std::size_t{2}); // 0.2 and 0.3
        QVERIFY(std::abs(score.bins[1].foretold - 0.25) < 1e-12);
        QVERIFY(std::abs(score.bins[1].came - 0.5) < 1e-12);
        QCOMPARE(score.bins[3].count, std::size_t{1});
        QCOMPARE(score.bins[4].count, std::size_t{1});
    }
    void certainty() {
        const std::array<Foretold, 2> foretold{{{1, true}, {0, false}}};
        QCOMPARE(scoreOf(foretold).brier, 0.0);
        QCOMPARE(scoreOf(foretold).bins[4].count, std::size_t{1});
    }
    void ofNothing() {
        QCOMPARE(scoreOf({}).count, std::size_t{0});
        QCOMPARE(scoreOf({}).brier, 0.0);
    }
};

CROWNRING_TEST(ScoreTest, QCoreApplication)

}

#include "score_test.moc"
