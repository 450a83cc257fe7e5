// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/likelihood/censored_regression.h"
#include "reference_cases.h"
#include "test_class.h"

#include <QtTest>

#include <cmath>

namespace censored_cases_test {

using namespace crownring;
using reference::Table;

namespace {

using Names = std::vector<std::string>;

/// The columns that coefficients are named after, behind that of the intercept.
CensoredSample sampleOf(const Table& table, const Names& columns, std::vector<Observation> observed) {
    CensoredSample sample{Eigen::MatrixXd::Ones(static_cast<Eigen::Index>(observed.size()),
                                                static_cast<Eigen::Index>(columns.size()) + 1),
                          std::move(observed),
                          {}};
    for (std::size_t column = 0; column < columns.size(); ++column)
        sample.design.col(static_cast<Eigen::Index>(column) + 1) =
            Eigen::VectorXd::Map(table.at(columns[column]).data(), sample.design.rows());
    for (const auto* weight : {"w", "n"})
        if (table.contains(weight))
            sample.weights = table.at(weight);
    return sample;
}

/// Times of which some only say that it took longer; `status` 1 for those that ended.
std::vector<Observation> endedOrNot(const Table& table, const std::string& time, const std::string& status) {
    std::vector<Observation> observed;
    for (std::size_t row = 0; row < table.at(time).size(); ++row)
        observed.push_back(
            {table.at(status)[row] == 1 ? Seen::Exactly : Seen::AtLeast, std::log(table.at(time)[row]), 0});
    return observed;
}

std::vector<Observation> betweenInspections(const Table& table) {
    std::vector<Observation> observed;
    for (std::size_t row = 0; row < table.at("lo").size(); ++row) {
        const double low = table.at("lo")[row];
        const double high = table.at("hi")[row];
        observed.push_back(std::isnan(high) ? Observation{Seen::AtLeast, std::log(low), 0}
                           : low == 0       ? Observation{Seen::AtMost, 0, std::log(high)}
                                            : Observation{Seen::Between, std::log(low), std::log(high)});
    }
    return observed;
}

/// Quantities of a case as its rows name them. R's survreg gives the density of the time itself.
std::map<std::string, double> quantities(const CensoredSample& sample, const CensoredFit& fit, const Names& columns) {
    std::map<std::string, double> found;
    Names names{"Intercept"};
    names.insert(names.end(), columns.begin(), columns.end());
    names.emplace_back("logscale");
    for (std::size_t name = 0; name < names.size(); ++name) {
        const auto at = static_cast<Eigen::Index>(name);
        found["coef_" + names[name]] = name < columns.size() + 1 ? fit.coefficients[at] : fit.logSigma;
        found["se_" + names[name]] = std::sqrt(fit.covariance(at, at));
        for (Eigen::Index other = 0; other <= at; ++other)
            found["vcov_" + std::to_string(at + 1) + "_" + std::to_string(other + 1)] = fit.covariance(at, other);
    }
    found["scale"] = std::exp(fit.logSigma);
    found["loglik_logscale"] = fit.logLikelihood;
    found["loglik"] = fit.logLikelihood;
    for (std::size_t row = 0; row < sample.observed.size(); ++row)
        if (sample.observed[row].seen == Seen::Exactly)
            found["loglik"] -= (sample.weights.empty() ? 1 : sample.weights[row]) * sample.observed[row].low;
    return found;
}

std::map<std::string, double> fitted(const CensoredSample& sample, const Names& columns, Scatter scatter) {
    return quantities(sample, fitCensored(sample, scatter).value(), columns);
}

QString wrongOf(const std::string& name, const CensoredSample& sample, const Names& columns,
                Scatter scatter = Scatter::Normal) {
    return reference::mismatches(name, fitted(sample, columns, scatter));
}

}

class CensoredCasesTest : public QObject {
    Q_OBJECT
private slots:
    void tobinsDurables() {
        const auto table = reference::table("01_tobin.csv");
        std::vector<Observation> observed;
        for (const double durable : table.at("durable"))
            observed.push_back(durable > 0 ? Observation{Seen::Exactly, durable, 0} : Observation{Seen::AtMost, 0, 0});
        const auto sample = sampleOf(table, {"age", "quant"}, observed);
        auto found = fitted(sample, {"age", "quant"}, Scatter::Normal);
        found["loglik"] = found["loglik_logscale"]; // what was read is no logarithm
        found["loglik_null"] = fitCensored(sampleOf(table, {}, observed)).value().logLikelihood;
        QCOMPARE(reference::mismatches("01_tobin_gaussian_left", found), QString());
    }

    void capacitors() {
        const auto table = reference::table("02_capacitor.csv");
        const Names columns{"temperature", "voltage"};
        const auto sample = sampleOf(table, columns, endedOrNot(table, "time", "status"));
        QCOMPARE(wrongOf("02_capacitor_lognormal_right", sample, columns), QString());
        QCOMPARE(wrongOf("02_capacitor_weibull_right", sample, columns, Scatter::LeastExtreme), QString());
    }

    void ovarianCancer() {
        const auto table = reference::table("03_ovarian.csv");
        const Names columns{"ecog.ps", "rx"};
        const auto sample = sampleOf(table, columns, endedOrNot(table, "futime", "fustat"));
        QCOMPARE(wrongOf("03_ovarian_lognormal_right", sample, columns), QString());
        QCOMPARE(wrongOf("03_ovarian_weibull_right", sample, columns, Scatter::LeastExtreme), QString());
    }

    void motors() {
        const auto table = reference::table("04_motors.csv");
        const auto sample = sampleOf(table, {"x"}, endedOrNot(table, "time", "cens"));
        QCOMPARE(wrongOf("04_motors_arrhenius_weibull", sample, {"x"}, Scatter::LeastExtreme), QString());

        auto found = fitted(sample, {"x"}, Scatter::Normal);
        const QuantileAt tenth{Eigen::Vector2d(1, 1000 / (130 + 273.2)), standardQuantile(Scatter::Normal, 0.1)};
        const auto estimate = estimateAt(fitCensored(sample).value(), tenth);
        const auto profile = profileInterval(sample, Scatter::Normal, tenth, 0.95).value();
        found["logq10_130C"] = estimate.value;
        found["se_delta_logq10_130C"] = estimate.standardError;
        found["profile95_lo_logq10_130C"] = profile.low;
        found["profile95_hi_logq10_130C"] = profile.high;
        QCOMPARE(reference::mismatches("04_motors_arrhenius_lognormal", found), QString());

        auto decimal = sample;
        for (auto& observed : decimal.observed)
            observed.low /= std::log(10.0);
        auto decadic = fitted(decimal, {"x"}, Scatter::Normal);
        decadic["loglik"] = decadic["loglik_logscale"];
        QCOMPARE(reference::mismatches("04_motors_arrhenius_gaussian_log10", decadic), QString());
    }

    void motorsAtAnotherZero() {
        const auto table = reference::table("05_imotor.csv");
        QCOMPARE(
            wrongOf("05_imotor_lognormal_right", sampleOf(table, {"x"}, endedOrNot(table, "time", "status")), {"x"}),
            QString());
    }

    void insulatingFluid() {
        const auto table = reference::table("06_ifluid.csv");
        std::vector<Observation> observed;
        for (const double time : table.at("time"))
            observed.push_back({Seen::Exactly, std::log(time), 0});
        QCOMPARE(wrongOf("06_ifluid_lognormal_uncensored", sampleOf(table, {"lvolt"}, observed), {"lvolt"}), QString());
    }

    void turbineWheels() {
        const auto table = reference::table("07_turbine_expanded.csv");
        std::vector<Observation> observed;
        for (std::size_t row = 0; row < table.at("hours").size(); ++row) {
            const double bound = std::log(table.at("hours")[row]);
            observed.push_back(table.at("kind")[row] == 1 ? Observation{Seen::AtLeast, bound, 0}
                                                          : Observation{Seen::AtMost, 0, bound});
        }
        auto found = fitted(sampleOf(table, {}, observed), {}, Scatter::Normal);
        found["probit_intercept"] = -found["coef_Intercept"] / found["scale"];
        found["probit_slope_loghours"] = 1 / found["scale"];
        QCOMPARE(reference::mismatches("07_turbine_lognormal_currentstatus", found), QString());
    }

    void cracks() {
        const auto table = reference::table("08_cracks.csv");
        const auto sample = sampleOf(table, {}, betweenInspections(table));
        QCOMPARE(wrongOf("08_cracks_lognormal_interval", sample, {}), QString());
        QCOMPARE(wrongOf("08_cracks_weibull_interval", sample, {}, Scatter::LeastExtreme), QString());
    }

    void deviceA() {
        const auto table = reference::table("09_deviceA.csv");
        const auto sample = sampleOf(table, {"x"}, endedOrNot(table, "time", "status"));
        QCOMPARE(wrongOf("09_deviceA_arrhenius_lognormal", sample, {"x"}), QString());
    }

    void icDevice() {
        const auto table = reference::table("10_icdevice.csv");
        QCOMPARE(wrongOf("10_icdevice_arrhenius_interval", sampleOf(table, {"x"}, betweenInspections(table)), {"x"}),
                 QString());
    }
};

CROWNRING_TEST(CensoredCasesTest)

}

#include "censored_cases_test.moc"
