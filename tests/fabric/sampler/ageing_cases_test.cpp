// SPDX-License-Identifier: GPL-3.0-or-later
/// The two reference fits of a whole fleet by an independent sampler: cases 39 (phi = 1) and 40 (phi free).
#include "fabric/numeric/convergence.h"
#include "fabric/numeric/quantile.h"
#include "fabric/outlook/life.h"
#include "fabric/reference_fleet.h"
#include "fabric/sampler/ageing_sampler.h"
#include "test_class.h"

#include <QtTest>

#include <numeric>

namespace ageing_cases_test {

using namespace crownring;

namespace {

Posterior fitted(bool phiFree) {
    const auto fleet = fleetColumns(reference::fleet()).value();
    const AgeingPrior prior{{fabricPrior(100, 30), fabricPrior(100, 30)}, {}};
    SamplerSettings settings;
    settings.phiFree = phiFree;
    settings.burnIn = 600;
    settings.drawsOfChain = 2000;
    settings.sweepsOfDraw = 2;
    return sampledPosterior(fleet, prior, settings).value();
}

double meanOf(const DrawColumn& column) {
    return std::accumulate(column.begin(), column.end(), 0.0) / static_cast<double>(column.size());
}

double sdOf(const DrawColumn& column) {
    double squares = 0;
    for (const double value : column)
        squares += std::pow(value - meanOf(column), 2) / static_cast<double>(column.size());
    return std::sqrt(squares);
}

std::map<std::string, double> foundIn(const Posterior& posterior) {
    std::map<std::string, double> found;
    for (std::size_t set = 0; set < 6; ++set) {
        const auto name = "env0" + std::to_string(set + 1);
        const auto band = bandOf(livesOf(posterior, set, std::log(reference::fleetLimit), {}));
        found[name + "_life_q05_h"] = band.low;
        found[name + "_life_q50_h"] = band.middle;
        found[name + "_life_q95_h"] = band.high;
        found[name + "_mean_a"] = meanOf(posterior.sets[set].intercept);
        found[name + "_mean_lambda"] = meanOf(posterior.sets[set].slope);
    }
    for (std::size_t fabric = 0; fabric < 2; ++fabric) {
        found["mean_mua" + std::to_string(fabric + 1)] = meanOf(posterior.fabrics[fabric].intercept);
        found["mean_mul" + std::to_string(fabric + 1)] = meanOf(posterior.fabrics[fabric].slope);
    }
    found["mean_sd_lot_intercept"] = meanOf(posterior.lotIntercept);
    found["mean_sd_lot_slope"] = meanOf(posterior.lotSlope);
    found["mean_sd_env_intercept"] = meanOf(posterior.setIntercept);
    found["mean_sd_env_slope"] = meanOf(posterior.setSlope);
    found["mean_sigma"] = meanOf(posterior.scatter);
    found["mean_gamma"] = meanOf(posterior.gamma);
    found["mean_phi"] = meanOf(posterior.phi);
    found["sd_phi"] = sdOf(posterior.phi);
    return found;
}

}

class AgeingCasesTest : public QObject {
    Q_OBJECT
private slots:
    void plainExponential() {
        const auto posterior = fitted(false);
        QCOMPARE(reference::mismatches("39_fleet_gibbs", foundIn(posterior)), QString());
        QCOMPARE(sdOf(posterior.phi), 0.0);
    }

    void shapeFree() {
        const auto posterior = fitted(true);
        QCOMPARE(reference::mismatches("40_fleet_gibbs_phi", foundIn(posterior)), QString());
        QVERIFY(rankRHat(posterior.phi, posterior.chains) < 1.05);
    }
};

CROWNRING_TEST(AgeingCasesTest)

}

#include "ageing_cases_test.moc"
