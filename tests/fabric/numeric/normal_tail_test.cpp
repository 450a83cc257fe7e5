// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/likelihood/standard_term.h"
#include "fabric/numeric/normal_tail.h"
#include "reference_cases.h"
#include "test_class.h"

#include <QtTest>
#include <boost/math/special_functions/erf.hpp>

#include <algorithm>
#include <numbers>
#include <regex>

namespace normal_tail_test {

using namespace crownring;

namespace {

double heldTerm(double z, double StandardTerm::*part) {
    return standardTerm(Scatter::Normal, Seen::AtLeast, z, 0).*part;
}

/// What the room finds for a quantity of case 30, by its name.
std::optional<double> found(const std::string& quantity) {
    static const std::regex one(R"((logPhi|mills_phi_over_Phi)\(([-0-9.]+)\))");
    static const std::regex two(R"(log\[Phi\(([-0-9.]+)\)-Phi\(([-0-9.]+)\)\])");
    static const std::regex cut(R"((E|Var)\[Z\|Z>([-0-9.]+)\])");
    std::smatch part;
    if (std::regex_match(quantity, part, one))
        return part[1] == "logPhi" ? logNormalBelow(std::stod(part[2])) : normalHazard(-std::stod(part[2]));
    if (std::regex_match(quantity, part, two))
        return logNormalBetween(std::stod(part[2]), std::stod(part[1]));
    // A variable cut off below has the first two derivatives of ln P(Z > z) for its moments.
    if (std::regex_match(quantity, part, cut))
        return part[1] == "E" ? -heldTerm(std::stod(part[2]), &StandardTerm::low)
                              : 1 + heldTerm(std::stod(part[2]), &StandardTerm::lowLow);
    return {};
}

}

class NormalTailTest : public QObject {
    Q_OBJECT
private slots:
    void theReferenceCase() {
        std::map<std::string, double> all;
        for (const auto& one : reference::expectedOf("30_special"))
            if (const auto value = found(one.quantity))
                all[one.quantity] = *value;
        QCOMPARE(reference::mismatches("30_special", all), QString());
    }

    // Against Boost.Math's erfc in the 64-bit mantissa of long double, whose range holds phi(40).
    void twelveDigitsFromMinusFortyToTen() {
        double worstLog = 0;
        double worstHazard = 0;
        for (double z = -40; z <= 10; z += 0.03125) {
            const long double wide = z;
            const long double below = boost::math::erfc(-wide / std::numbers::sqrt2_v<long double>) / 2;
            const long double above = boost::math::erfc(wide / std::numbers::sqrt2_v<long double>) / 2;
            const long double log = z > 0 ? std::log1p(-above) : std::log(below);
            const long double density = std::exp(-wide * wide / 2) * std::numbers::inv_sqrtpi_v<long double> /
                                        std::numbers::sqrt2_v<long double>;
            worstLog = std::max(worstLog, static_cast<double>(std::abs(logNormalBelow(z) / log - 1)));
            worstHazard =
                std::max(worstHazard, static_cast<double>(std::abs(normalHazard(-z) / (density / below) - 1)));
        }
        QVERIFY2(worstLog < 1e-12, qPrintable(QString::number(worstLog)));
        QVERIFY2(worstHazard < 1e-12, qPrintable(QString::number(worstHazard)));
    }

    void spansAddUp() {
        for (double low = -12; low < 12; low += 0.75)
            for (double width = 0.01; width < 5; width *= 3) {
                const double whole = logNormalBetween(low, low + 2 * width);
                const double parts = std::exp(logNormalBetween(low, low + width) - whole) +
                                     std::exp(logNormalBetween(low + width, low + 2 * width) - whole);
                QVERIFY(std::abs(parts - 1) < 1e-11);
            }
    }
};

CROWNRING_TEST(NormalTailTest)

}

#include "normal_tail_test.moc"
