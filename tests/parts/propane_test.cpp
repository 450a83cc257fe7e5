// SPDX-License-Identifier: GPL-3.0-or-later

/// Pressure over liquid propane and n-butane, against what others published.

#include "parts/propane.h"
#include "said.h"
#include "test_class.h"
#include "words/saturation_source.h"

#include <QtTest>

#include <cmath>
#include <limits>

namespace propane_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr double kilo = 1000;

double kilopascals(Celsius at, double butane = 0) { return saturationPressure(at, butane).value().value() / kilo; }
bool isNear(double found, double published, double relative) {
    return std::abs(found - published) <= relative * published;
}

/// What it is refused for, which is told whole.
std::string faultOf(const Result<Pascals>& refused) {
    return isSaid(refused.error()) ? std::string(rowOf(refused.error().fault).name) : "not said";
}

}

class PropaneTest : public QObject {
    Q_OBJECT

private slots:
    /// Ten temperatures of a published table of saturation pressures (fluidtool.com, "R290 pressure temperature chart",
    /// read), which was computed from the whole equation of state by another program and is rounded to 0.1 kPa; and the
    /// two of Lemmon et al. 2009, Table A1, that an open implementation quotes in its tests (-50 and 50 °C).
    void pressureIsThatOfThePublishedTable_data() {
        QTest::addColumn<double>("celsius");
        QTest::addColumn<double>("published");
        const std::pair<double, double> table[] = {{-20, 244.5}, {-10, 345.3}, {0, 474.5},   {10, 636.6},
                                                   {20, 836.5},  {30, 1079.0}, {40, 1369.4}, {50, 1713.3},
                                                   {60, 2116.8}, {70, 2586.8}, {-50, 70.569}};
        for (const auto& [celsius, published] : table)
            QTest::addRow("%g degC", celsius) << celsius << published;
    }
    void pressureIsThatOfThePublishedTable() {
        QFETCH(const double, celsius);
        QFETCH(const double, published);
        QVERIFY(isNear(kilopascals(Celsius(celsius)), published, 0.0005));
    }

    /// An older and independent fit: log10(p/mmHg) = 6.82973 - 813.2 / (248 + t), as a maker of analysers prints it
    /// with its source (PN 903-8797, page 6-4, read).
    void anOlderEquationAgreesWithinOnePerCent() {
        constexpr double kilopascalsOfMmHg = 0.133322;
        for (int celsius = -40; celsius <= 20; celsius += 10) {
            const double older = std::pow(10, 6.82973 - 813.2 / (248 + celsius)) * kilopascalsOfMmHg;
            QVERIFY(isNear(kilopascals(Celsius(celsius)), older, 0.01));
        }
    }

    /// Normal boiling points of the two papers, 231.036 K and 272.660 K.
    void atItsBoilingPointAGaugeShowsNothing() {
        QVERIFY(isNear(kilopascals(Celsius(231.036 - 273.15)), 101.325, 0.0001));
        QVERIFY(isNear(kilopascals(Celsius(272.660 - 273.15), 1), 101.325, 0.0001));
    }

    /// Bücker and Wagner 2006, Table 44, as an open implementation quotes it in its tests.
    void butaneIsThatOfItsPaper() {
        QVERIFY(isNear(kilopascals(Celsius(220 - 273.15), 1), 7.805, 0.001));
        QVERIFY(isNear(kilopascals(Celsius(300 - 273.15), 1), 257.60, 0.001));
        QVERIFY(isNear(kilopascals(Celsius(400 - 273.15), 1), 2495.4, 0.001));
    }

    /// Raoult's law: on the line between the two.
    void aMixtureLiesBetweenItsPartsAsItsFractionSays() {
        for (const double celsius : {-30.0, 0.0, 35.0}) {
            const Celsius at(celsius);
            const double propane = kilopascals(at);
            const double butane = kilopascals(at, 1);
            QVERIFY(butane < propane);
            QVERIFY(isNear(kilopascals(at, 0.3), 0.7 * propane + 0.3 * butane, 1e-12));
        }
    }

    /// Triple points 85.525 and 134.895 K, critical points 369.89 and 425.125 K (the two papers). A mixture is given
    /// only where both parts are liquids for themselves.
    void thereIsNoLiquidOutsideItsRange() {
        QVERIFY(saturationPressure(Celsius(-187.6)));
        QCOMPARE(faultOf(saturationPressure(Celsius(-188))), "colder-than-liquid");
        QCOMPARE(faultOf(saturationPressure(Celsius(96.8))), "hotter-than-liquid");
        QVERIFY(saturationPressure(Celsius(96.7)));
        QVERIFY(saturationPressure(Celsius(120), 1));
        QCOMPARE(faultOf(saturationPressure(Celsius(120), 0.5)), "hotter-than-liquid");
        QCOMPARE(faultOf(saturationPressure(Celsius(-150), 0.5)), "colder-than-liquid");
        QCOMPARE(faultOf(saturationPressure(Celsius(std::numeric_limits<double>::quiet_NaN()))), "colder-than-liquid");
    }

    void aFractionIsOneOfTheWhole() {
        for (const double fraction : {-0.01, 1.01, 30.0, std::numeric_limits<double>::quiet_NaN()})
            QCOMPARE(faultOf(saturationPressure(Celsius(15), fraction)), "no-fraction");
    }

    /// What it rests on is said with each figure, and Raoult's law only where it was used.
    void theSourceIsThatOfWhatWasComputed() {
        QVERIFY(words::saturationSource(0).find("Lemmon") != std::string_view::npos);
        QVERIFY(words::saturationSource(0).find("Raoult") == std::string_view::npos);
        QVERIFY(words::saturationSource(0.2).find("Raoult") != std::string_view::npos);
        QVERIFY(words::saturationSource(1).find("Lemmon") == std::string_view::npos);
    }
};

CROWNRING_TEST(PropaneTest)

}

#include "propane_test.moc"
