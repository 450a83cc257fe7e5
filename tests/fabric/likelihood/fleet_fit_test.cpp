// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/likelihood/fleet_fit.h"
#include "fabric/reference_fleet.h"
#include "fabric/simulated_fleet.h"
#include "test_class.h"

#include <QtTest>

#include <cmath>

namespace fleet_fit_test {

using namespace crownring;

namespace {

const double limit = std::log(reference::fleetLimit);

std::string numbered(const char* what, std::size_t number) { return what + std::to_string(number); }

/// Quantities of case 37 as its rows name them.
std::map<std::string, double> quantities(const FleetFit& fit) {
    std::map<std::string, double> found{{"negloglik", -fit.logLikelihood}};
    std::vector<std::pair<std::string, FleetParameter>> names{{"log_sd_lot_intercept", FleetParameter::LogLotIntercept},
                                                              {"log_sd_lot_slope", FleetParameter::LogLotSlope},
                                                              {"log_sd_env_intercept", FleetParameter::LogSetIntercept},
                                                              {"log_sd_env_slope", FleetParameter::LogSetSlope},
                                                              {"logs", FleetParameter::LogSigma},
                                                              {"gamma", FleetParameter::Gamma}};
    const auto put = [&](const std::string& name, Eigen::Index at) {
        found[name] = fit.parameters[at];
        found["se_" + name] = std::sqrt(fit.covariance(at, at));
    };
    for (const auto& [name, parameter] : names)
        put(name, indexOf(parameter));
    for (Eigen::Index at = fleetParameters; at < fit.parameters.size(); ++at) {
        const auto fabric = static_cast<std::size_t>(at - fleetParameters) / 2 + 1;
        put(numbered((at - fleetParameters) % 2 == 0 ? "mua" : "mul", fabric), at);
    }
    for (std::size_t set = 0; set < fit.sets.size(); ++set) {
        const auto name = numbered(set < 9 ? "env0" : "env", set + 1);
        const auto& line = fit.sets[set];
        found[name + "_a"] = line.alpha;
        found[name + "_lambda_per100h"] = line.lambda;
        found[name + "_sd_a"] = std::sqrt(line.alphaVariance);
        found[name + "_sd_lambda"] = std::sqrt(line.lambdaVariance);
        found[name + "_cov"] = line.covariance;
        for (const auto& [share, p] : {std::pair{"0.05", 0.05}, {"0.5", 0.5}, {"0.95", 0.95}})
            found[name + "_life_q" + share + "_h"] = 100 * ageReached(line, limit, p).value_or(std::nan(""));
    }
    return found;
}

}

class FleetFitTest : public QObject {
    Q_OBJECT
private slots:
    void theReferenceFleetByMaximumLikelihood() {
        FleetFitChoice choice;
        choice.restricted = false;
        QCOMPARE(reference::mismatches("37_fleet_laplace_ML", quantities(fitFleet(reference::fleet(), choice).value())),
                 QString());
    }

    void theReferenceFleetByRestrictedLikelihood() {
        QCOMPARE(reference::mismatches("37_fleet_laplace_REML", quantities(fitFleet(reference::fleet()).value())),
                 QString());
    }

    // Small fleets often have their highest likelihood where a spread is nothing; that is a fit too.
    void spreadsThatComeToNothingDoNotStopIt() {
        Draws draws(7);
        FleetPlan plan;
        plan.lots = 3;
        plan.setsOfLot = 3;
        plan.inspections = 4;
        plan.spreads = {0, 0, 0.03, 0, 0.08};
        int atFloor = 0;
        for (int fleet = 0; fleet < 4; ++fleet) {
            const auto fit = fitFleet(simulatedFleet(plan, draws));
            QVERIFY(fit.has_value());
            for (Eigen::Index level = 0; level < levels; ++level)
                if (fit->parameters[level] <= std::log(leastSpread)) {
                    ++atFloor;
                    QCOMPARE(fit->covariance(level, level), 0.0);
                }
            for (const auto& set : fit->sets)
                QVERIFY(set.alphaVariance > 0 && set.lambdaVariance > 0 && set.lambdaVariance < 0.01);
        }
        QVERIFY(atFloor > 0);
    }

    void theShapeIsFoundAgain() {
        Draws draws(8);
        FleetPlan plan;
        plan.setsOfLot = 2;
        plan.shape = {0.5, 1.4};
        FleetFitChoice choice;
        choice.freePhi = true;
        const auto fit = fitFleet(simulatedFleet(plan, draws), choice).value();
        const auto isWithin = [&](FleetParameter parameter, double truth) {
            const auto at = indexOf(parameter);
            const double error = std::sqrt(fit.covariance(at, at));
            return error > 0 && error < 0.3 && std::abs(fit.parameters[at] - truth) < 3 * error;
        };
        QVERIFY(isWithin(FleetParameter::Gamma, 0.5));
        QVERIFY(isWithin(FleetParameter::LogPhi, std::log(1.4)));
        QVERIFY(isWithin(FleetParameter::LogSigma, std::log(0.08)));
    }

    void whatSaysNothingIsRefused() {
        auto held = reference::fleet();
        held.coupons.clear();
        for (auto& reading : held.readings)
            reading.observed = {Seen::AtLeast, std::log(45), 0};
        const auto nothingBroke = fitFleet(held);
        QVERIFY(!nothingBroke && nothingBroke.error().code() == Code::BadValue);

        auto oneAge = reference::fleet();
        for (auto& reading : oneAge.readings)
            reading = {reading.set, 0, 1, 0, reading.observed};
        QVERIFY(!fitFleet(oneAge));

        auto ofNoSet = reference::fleet();
        ofNoSet.readings.back().set = 99;
        QVERIFY(!fitFleet(ofNoSet));
    }
};

CROWNRING_TEST(FleetFitTest)

}

#include "fleet_fit_test.moc"
