// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/rank_calibration.h"
#include "test_class.h"

#include <QtTest>

namespace rank_calibration_test {

using namespace crownring;

class RankCalibrationTest : public QObject {
    Q_OBJECT
private slots:
    /// `crownring_coverage ranks` asks the same of thousands of fleets.
    void trueParametersRankAnywhere() {
        const auto calibration = calibrated(120, 1, calibrationPrior(), calibrationPrior());
        QCOMPARE(calibration.ranks.size(), 13U);
        for (const auto& [quantity, ranks] : calibration.ranks)
            QVERIFY2(calibration.chance(quantity) > 0.01, quantity.c_str());
    }

    /// A fit that believes something else than what the fleets were drawn from does not pass.
    void anotherPriorIsFoundOut() {
        auto believed = calibrationPrior();
        believed.lnPhi = {0.6, 0.15};
        QVERIFY(calibrated(60, 2, calibrationPrior(), believed).chance("phi") < 0.001);
    }
};

CROWNRING_TEST(RankCalibrationTest)

}

#include "rank_calibration_test.moc"
