// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/numeric/first_passage.h"
#include "fabric/numeric/gauss_hermite.h"
#include "reference_cases.h"
#include "test_class.h"

#include <QtTest>

#include <cmath>

namespace first_passage_test {

using namespace crownring;

namespace {

const double limit = std::log(30);
const AgeingLine line{4.55, 0.2, 0.03 * 0.03, 0.02 * 0.02, 0.4 * 0.03 * 0.02};

double hours(double p) { return 100 * ageReached(line, limit, p).value(); }

}

class FirstPassageTest : public QObject {
    Q_OBJECT
private slots:
    void theReferenceCase() {
        std::map<std::string, double> found;
        for (const int age : {3, 4, 5, 6, 7, 8, 10})
            found["F(" + std::to_string(age) + "00h)"] = reachedBy(line, limit, age);
        found["quantile_0.05_hours"] = hours(0.05);
        found["quantile_0.5_hours"] = hours(0.5);
        found["quantile_0.95_hours"] = hours(0.95);
        found["never_mass"] = neverReached(line);
        found["P_limit_within_50h_given_ok_at_480h"] = reachedByGivenOk(line, limit, 5.3, 4.8);
        found["P_limit_within_100h_given_ok_at_480h"] = reachedByGivenOk(line, limit, 5.8, 4.8);
        for (const int tests : {1, 4, 8})
            found["P_any_of_" + std::to_string(tests) + "_tests_fails_at_540h"] =
                anyTestFails(line, limit, 5.4, 0.08, tests);
        found["P_1_test_closed_form_540h"] = anyTestFails(line, limit, 5.4, 0.08, 1);
        QCOMPARE(reference::mismatches("33_first_passage", found), QString());
    }

    void aQuantileIsWhereThatShareHasReachedTheLimit() {
        for (const double covariance : {-0.0005, 0.0, 0.0005})
            for (const double p : {0.001, 0.05, 0.3, 0.5, 0.7, 0.95, 0.999}) {
                const AgeingLine uncertain{4.6, 0.25, 0.003, 0.002, covariance};
                const auto age = ageReached(uncertain, limit, p);
                QVERIFY(age && *age > 0);
                QVERIFY(std::abs(reachedBy(uncertain, limit, *age) - p) < 1e-12);
                QVERIFY(reachedBy(uncertain, limit, *age * 0.999) < p);
            }
    }

    void whatHardlyAgesMayNeverReachIt() {
        const AgeingLine hardly{4.6, 0.02, 0.003, 0.0004, 0}; // P(lambda <= 0) = Phi(-1) = 0.158655
        QVERIFY(std::abs(neverReached(hardly) - 0.158655253931457) < 1e-14);
        QVERIFY(!ageReached(hardly, limit, 0.9));
        QVERIFY(ageReached(hardly, limit, 0.5).has_value());
        QCOMPARE(ageReached(hardly, 4.7, 0.5).value(), 0.0);
    }

    void permeabilityIsTheMirrorImage() {
        // ln permeability 1 + 0.3 t, limit ln 20: reached when its mean is, with half of the probability.
        const AgeingLine mirrored{-1, 0.3, 0.01, 0.001, 0};
        const double age = (std::log(20) - 1) / 0.3;
        QVERIFY(std::abs(reachedBy(mirrored, -std::log(20), age) - 0.5) < 1e-15);
    }

    void nodesAndWeights() {
        std::map<std::string, double> found;
        for (const int count : {5, 9, 15}) {
            const auto rule = gaussHermite(count);
            for (int node = 0; node < count; ++node) {
                const auto name = [&](const char* what) {
                    return "n" + std::to_string(count) + "_" + what + std::to_string(node + 1);
                };
                found[name("x")] = rule.nodes[node];
                found[name("w")] = rule.weights[node];
            }
        }
        QCOMPARE(reference::mismatches("31_gauss_hermite", found), QString());
    }
};

CROWNRING_TEST(FirstPassageTest)

}

#include "first_passage_test.moc"
