// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/numeric/multiplicity.h"
#include "reference_cases.h"
#include "test_class.h"

#include <QtTest>

#include <algorithm>

namespace multiplicity_test {

using namespace crownring;

namespace {

const std::map<std::string, Multiplicity> methods{{"BH", Multiplicity::BenjaminiHochberg},
                                                  {"BY", Multiplicity::BenjaminiYekutieli},
                                                  {"holm", Multiplicity::Holm},
                                                  {"bonferroni", Multiplicity::Bonferroni}};

std::map<std::string, double> found(std::vector<double> pValues, bool turned) {
    std::map<std::string, double> all;
    if (turned)
        std::reverse(pValues.begin(), pValues.end());
    for (const auto& [name, method] : methods) {
        auto result = adjusted(pValues, method);
        if (turned)
            std::reverse(result.begin(), result.end());
        for (std::size_t at = 0; at < result.size(); ++at)
            all[name + (at < 9 ? "_0" : "_") + std::to_string(at + 1)] = result[at];
    }
    return all;
}

}

class MultiplicityTest : public QObject {
    Q_OBJECT
private slots:
    // Fifteen p-values of Benjamini and Hochberg 1995 (from memory), adjusted by R's p.adjust.
    void theReferenceCaseInEitherOrder() {
        const auto pValues = reference::table("34_pvalues.csv").at("p");
        QCOMPARE(reference::mismatches("34_multiple_testing", found(pValues, false)), QString());
        QCOMPARE(reference::mismatches("34_multiple_testing", found(pValues, true)), QString());
    }

    void noneAndOne() {
        for (const auto& [name, method] : methods) {
            QVERIFY(adjusted({}, method).empty());
            QCOMPARE(adjusted({0.3}, method).front(), 0.3);
        }
    }
};

CROWNRING_TEST(MultiplicityTest)

}

#include "multiplicity_test.moc"
