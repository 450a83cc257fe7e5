// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/likelihood/normal_term.h"
#include "fabric/likelihood/standard_term.h"
#include "test_class.h"

#include <QtTest>

#include <cmath>
#include <functional>
#include <vector>

namespace term_slopes_test {

using namespace crownring;

namespace {

const std::vector<Observation> everyKind = {
    {Seen::Exactly, 0.4, 0}, {Seen::AtLeast, 0.4, 0},    {Seen::AtLeast, -3, 0},    {Seen::AtMost, 0, 0.7},
    {Seen::AtMost, 0, 4},    {Seen::Between, -0.3, 0.9}, {Seen::Between, 2.5, 2.9}, {Seen::Between, -5, -4}};

/// Central differences, of a truncation error by h^4.
double slope(const std::function<double(double)>& of, double at) {
    constexpr double h = 1e-3;
    return (8 * (of(at + h) - of(at - h)) - (of(at + 2 * h) - of(at - 2 * h))) / (12 * h);
}

bool isNear(double found, double expected) { return std::abs(found - expected) <= 1e-8 * (1 + std::abs(expected)); }

}

class TermSlopesTest : public QObject {
    Q_OBJECT
private slots:
    void byLocationAndSigmaAsDifferencesSay() {
        for (const auto& observed : everyKind) {
            for (const double location : {-1.0, 0.2, 1.5})
                for (const double logSigma : {-0.7, 0.0, 0.4}) {
                    const auto term = normalTerm(observed, location, std::exp(logSigma));
                    const auto byLocation = [&](double NormalTerm::*part) {
                        return slope([&](double x) { return normalTerm(observed, x, std::exp(logSigma)).*part; },
                                     location);
                    };
                    const auto bySigma = [&](double NormalTerm::*part) {
                        return slope([&](double x) { return normalTerm(observed, location, std::exp(x)).*part; },
                                     logSigma);
                    };
                    QVERIFY(isNear(term.location, byLocation(&NormalTerm::value)));
                    QVERIFY(isNear(term.location2, byLocation(&NormalTerm::location)));
                    QVERIFY(isNear(term.location3, byLocation(&NormalTerm::location2)));
                    QVERIFY(isNear(term.logSigma, bySigma(&NormalTerm::value)));
                    QVERIFY(isNear(term.locationLogSigma, bySigma(&NormalTerm::location)));
                    QVERIFY(isNear(term.location2LogSigma, bySigma(&NormalTerm::location2)));
                }
        }
    }

    void byStandardisedErrorsAsDifferencesSay() {
        for (const auto scatter : {Scatter::Normal, Scatter::LeastExtreme})
            for (const auto& observed : everyKind) {
                const auto at = [&](double low, double high) {
                    return standardTerm(scatter, observed.seen, low, high);
                };
                const auto byLow = [&](double StandardTerm::*part) {
                    return slope([&](double z) { return at(z, observed.high).*part; }, observed.low);
                };
                const auto byHigh = [&](double StandardTerm::*part) {
                    return slope([&](double z) { return at(observed.low, z).*part; }, observed.high);
                };
                const auto term = at(observed.low, observed.high);
                QVERIFY(isNear(term.low, byLow(&StandardTerm::value)));
                QVERIFY(isNear(term.high, byHigh(&StandardTerm::value)));
                QVERIFY(isNear(term.lowLow, byLow(&StandardTerm::low)));
                QVERIFY(isNear(term.lowHigh, byHigh(&StandardTerm::low)));
                QVERIFY(isNear(term.highHigh, byHigh(&StandardTerm::high)));
            }
    }

    // The regression and the fleet have their own formulas for the same likelihood.
    void bothEnginesSayTheSame() {
        for (const auto& observed : everyKind) {
            const double sigma = 0.8;
            const auto standard = standardTerm(Scatter::Normal, observed.seen, (observed.low - 0.1) / sigma,
                                               (observed.high - 0.1) / sigma);
            const double density = observed.seen == Seen::Exactly ? std::log(sigma) : 0;
            QVERIFY(std::abs(normalTerm(observed, 0.1, sigma).value - (standard.value - density)) < 1e-13);
        }
    }
};

CROWNRING_TEST(TermSlopesTest)

}

#include "term_slopes_test.moc"
