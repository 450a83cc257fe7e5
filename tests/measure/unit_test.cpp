// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/amount.h"
#include "measure/compiles.h"
#include "measure/unit.h"
#include "test_class.h"

#include <QtTest>
#include <rapidcheck.h>

#include <cmath>
#include <set>
#include <type_traits>

namespace unit_test {

using namespace crownring;
using namespace crownring::test;

static_assert(Adds<Newtons, Newtons> && !Adds<Newtons, Millimetres> && !Adds<Newtons, double>);
static_assert(Adds<Celsius, Kelvins> && !Adds<Celsius, Celsius> && !Orders<Celsius, Kelvins>);
static_assert(std::is_same_v<decltype(Celsius(127) - Celsius(121)), Kelvins>);
static_assert(!Orders<MillimetresPerSecond, Pascals> && !std::is_convertible_v<double, Pascals>);

namespace {

constexpr std::array<Dimension, dimensionCount> dimensions{Dimension::Force,
                                                           Dimension::AirVelocity,
                                                           Dimension::Pressure,
                                                           Dimension::Temperature,
                                                           Dimension::TemperatureDifference,
                                                           Dimension::Length,
                                                           Dimension::Area,
                                                           Dimension::Mass,
                                                           Dimension::Speed,
                                                           Dimension::Torque,
                                                           Dimension::Voltage,
                                                           Dimension::Age,
                                                           Dimension::Duration,
                                                           Dimension::Share,
                                                           Dimension::Number};

/// NaN when either is no unit of one dimension.
double converted(double value, const char* from, const char* to) {
    for (const auto dimension : dimensions) {
        const auto* a = unitNamed(from, dimension);
        const auto* b = unitNamed(to, dimension);
        if (a && b)
            return convert(value, *a, *b);
    }
    return std::nan("");
}

/// Equal to the last figure that the source prints.
bool agrees(double found, double printed, double lastFigure) { return std::abs(found - printed) <= lastFigure / 2; }

}

class UnitTest : public QObject {
    Q_OBJECT
private slots:
    void factorsAreThoseOfTheStandards_data() {
        QTest::addColumn<double>("value");
        QTest::addColumn<QByteArray>("from");
        QTest::addColumn<QByteArray>("to");
        QTest::addColumn<double>("printed");
        QTest::addColumn<double>("lastFigure");
        const auto row = [](double value, const char* from, double printed, const char* to, double lastFigure) {
            QTest::addRow("%g %s in %s", value, from, to)
                << value << QByteArray(from) << QByteArray(to) << printed << lastFigure;
        };
        // Air permeability through fabric: arithmetic on the definition of the foot (0.3048 m), exact.
        row(1, "cfm/ft2", 5.08, "mm/s", 1e-9);
        row(1, "cfm/ft2", 0.508, "cm3/cm2/s", 1e-9);
        row(1, "cfm/ft2", 5.08, "l/m2/s", 1e-9);
        row(1, "cfm/ft2", 3.048, "l/dm2/min", 1e-9);
        row(1, "cfm/ft2", 18.288, "m3/m2/h", 1e-9);
        row(1, "mm/s", 0.19685, "cfm/ft2", 1e-5);
        row(1, "mm/s", 0.6, "l/dm2/min", 1e-9);
        row(1, "mm/s", 3.6, "m3/m2/h", 1e-9);
        row(1, "l/dm2/min", 1.66667, "mm/s", 1e-5);
        row(1, "l/dm2/min", 0.328084, "cfm/ft2", 1e-6);
        // NIST SP 811, appendix B.8: pound-force, kilogram-force, psi, conventional inch and millimetre of water, foot
        // pound-force, inch pound-force, square inch, pound. From memory.
        row(1, "lbf", 4.448222, "N", 1e-6);
        row(1, "kgf", 9.80665, "N", 1e-9);
        row(1, "psi", 6.894757, "kPa", 1e-6);
        row(1, "inH2O", 249.0889, "Pa", 1e-4);
        row(1, "mmH2O", 9.80665, "Pa", 1e-9);
        row(1, "lbf.ft", 1.355818, "N.m", 1e-6);
        row(1, "lbf.in", 0.1129848, "N.m", 1e-7);
        row(1, "in2", 6.4516, "cm2", 1e-9);
        row(1, "ft2", 929.0304, "cm2", 1e-9);
        row(1, "lb", 0.45359237, "kg", 1e-12);
        row(1, "bar", 100, "kPa", 1e-9);
        row(1, "mbar", 100, "Pa", 1e-9);
        row(1, "ft", 304.8, "mm", 1e-9);
        row(100, "ft/min", 0.508, "m/s", 1e-9);
        // The pull that is commonly asked of fabric, 30 lbf, and pressures and temperatures of its tests: arithmetic.
        row(30, "lbf", 133.447, "N", 1e-3);
        row(30, "lbf", 13.6078, "kgf", 1e-4);
        row(30, "lbf", 13.345, "daN", 1e-3);
        row(0.5, "inH2O", 124.54, "Pa", 1e-2);
        row(10, "inH2O", 2490.9, "Pa", 1e-1);
        row(250, "degF", 121.11, "degC", 1e-2);
        row(275, "degF", 135.00, "degC", 1e-2);
        row(300, "degF", 148.89, "degC", 1e-2);
        row(100, "degC", 212, "degF", 1e-9);
        row(110, "degC", 230, "degF", 1e-9);
        row(120, "degC", 248, "degF", 1e-9);
        row(127, "degC", 260.6, "degF", 1e-1);
        row(0, "degC", 273.15, "K", 1e-9);
        row(-40, "degC", -40, "degF", 1e-9);
        row(375, "psi", 2585.534, "kPa", 1e-3);
        // Whole parts of one another.
        row(1, "m", 100, "cm", 1e-9);
        row(1, "m", 1000, "mm", 1e-9);
        row(12, "in", 1, "ft", 1e-9);
        row(1, "m2", 10'000, "cm2", 1e-9);
        row(100, "mm2", 1, "cm2", 1e-9);
        row(1000, "g", 1, "kg", 1e-9);
        row(1, "daN", 10, "N", 1e-9);
        row(18, "month", 1.5, "year", 1e-9);
    }
    void factorsAreThoseOfTheStandards() {
        QFETCH(double, value);
        QFETCH(QByteArray, from);
        QFETCH(QByteArray, to);
        QFETCH(double, printed);
        QFETCH(double, lastFigure);
        const auto found = converted(value, from, to);
        QVERIFY2(agrees(found, printed, lastFigure), qPrintable(QString::number(found, 'g', 12)));
    }

    void anErrorOfNineDegreesFahrenheitIsFiveKelvins() {
        const auto unit = [](const char* text) { return *unitNamed(text, Dimension::TemperatureDifference); };
        QVERIFY(agrees(convert(9, unit("degF"), unit("K")), 5, 1e-12));
        QCOMPARE(convert(5, unit("degC"), unit("K")), 5.0);
    }

    void whatPeopleWriteIsUnderstood_data() {
        QTest::addColumn<QString>("symbol");
        QTest::addColumn<int>("dimension");
        const auto row = [](const char* text, const char* symbol, Dimension dimension) {
            QTest::newRow(text) << QString(symbol) << static_cast<int>(dimension);
        };
        row("n", "N", Dimension::Force);
        row("kp", "kgf", Dimension::Force);
        row("lbs", "lbf", Dimension::Force);
        row("lb", "lbf", Dimension::Force);
        row("kg", "kgf", Dimension::Force);
        row("L/m²/s", "l/m2/s", Dimension::AirVelocity);
        row("l/(m² · s)", "l/m2/s", Dimension::AirVelocity);
        row("L/dm2/min", "l/dm2/min", Dimension::AirVelocity);
        row("l/(dm²·min)", "l/dm2/min", Dimension::AirVelocity);
        row("ft3/min/ft2", "cfm/ft2", Dimension::AirVelocity);
        row("CFM/ft²", "cfm/ft2", Dimension::AirVelocity);
        row("C.F.M. per sq. ft.", "cfm/ft2", Dimension::AirVelocity);
        row("cm³/cm²/s", "cm3/cm2/s", Dimension::AirVelocity);
        row("m3/(m2*h)", "m3/m2/h", Dimension::AirVelocity);
        row("hPa", "mbar", Dimension::Pressure);
        row("PSI", "psi", Dimension::Pressure);
        row("in H2O", "inH2O", Dimension::Pressure);
        row("inH₂O", "inH2O", Dimension::Pressure);
        row("°C", "degC", Dimension::Temperature);
        row("F", "degF", Dimension::Temperature);
        row("°F", "degF", Dimension::TemperatureDifference);
        row("N·m", "N.m", Dimension::Torque);
        row("%", "percent", Dimension::Share);
        row("years", "year", Dimension::Age);
    }
    void whatPeopleWriteIsUnderstood() {
        QFETCH(QString, symbol);
        QFETCH(int, dimension);
        const auto* unit = unitNamed(QTest::currentDataTag(), static_cast<Dimension>(dimension));
        QVERIFY(unit);
        QCOMPARE(QString::fromUtf8(unit->symbol.data(), static_cast<int>(unit->symbol.size())), symbol);
    }

    void aPoundIsAMassUntilAForceIsAskedFor() {
        QVERIFY(unitNamed("lb")->dimension == Dimension::Mass);
        QVERIFY(unitNamed("lb", Dimension::Force)->dimension == Dimension::Force);
        QVERIFY(unitNamed("degC")->dimension == Dimension::Temperature);
    }

    void whatIsNoUnitIsNone() {
        for (const auto* text : {"stone", "MPa", "furlong", "N/", "mm/s/s", "degrees", "lbm", "m3", "l/m2", "ft3/min"})
            QVERIFY2(!unitNamed(text), text);
        QVERIFY(!unitNamed("N", Dimension::Pressure));
        QVERIFY(!unitNamed("kgf", Dimension::Mass));
        QVERIFY(!unitNamed("K", Dimension::Force));
    }

    void everyDimensionHasABaseAndNoSymbolTwice() {
        std::size_t all = 0;
        for (const auto dimension : dimensions) {
            const auto units = unitsOf(dimension);
            QVERIFY(!units.empty());
            QCOMPARE(units.front().scale, 1.0);
            QCOMPARE(units.front().offset, 0.0);
            QVERIFY(dimensionFrom(termOf(dimension).name) == dimension);
            std::set<std::string_view> symbols;
            for (const auto& unit : units) {
                QVERIFY(unit.dimension == dimension);
                QVERIFY(symbols.insert(unit.symbol).second);
                QVERIFY(unitNamed(unit.symbol, dimension) == &unit);
                QVERIFY(unitNamed(unit.shown, dimension) == &unit);
                all++;
            }
        }
        QVERIFY(all > 40);
    }

    void whatIsConvertedComesBack() {
        QVERIFY(rc::check("any two units of one dimension", [] {
            const auto units = unitsOf(*rc::gen::elementOf(dimensions));
            const auto& from = units[*rc::gen::inRange<std::size_t>(0, units.size())];
            const auto& to = units[*rc::gen::inRange<std::size_t>(0, units.size())];
            const auto value = *rc::gen::inRange(-1'000'000, 1'000'000) / 1000.0;
            const auto back = convert(convert(value, from, to), to, from);
            RC_ASSERT(std::abs(back - value) <= 1e-9 * (1 + std::abs(value) + std::abs(to.offset) / from.scale));
        }));
    }

    void aUnitToItselfIsTheVeryNumber() {
        for (const auto dimension : dimensions)
            for (const auto& unit : unitsOf(dimension))
                QCOMPARE(convert(0.1 + 0.2, unit, unit), 0.1 + 0.2);
    }

    void noTextWhateverBringsItDown() {
        QVERIFY(rc::check("any text", [](const std::string& text) {
            const auto* unit = unitNamed(text);
            const bool isOneOfOurs = !unit || unitNamed(unit->symbol, unit->dimension) == unit;
            RC_ASSERT(isOneOfOurs);
        }));
    }

    void figuresAreWrittenToBeRead() {
        QCOMPARE(figureText(133.4466), std::string("133.4"));
        QCOMPARE(figureText(2490.889), std::string("2491"));
        QCOMPARE(figureText(30), std::string("30"));
        QCOMPARE(figureText(5.08), std::string("5.08"));
        QCOMPARE(figureText(0.05), std::string("0.05"));
        QCOMPARE(figureText(0), std::string("0"));
        QCOMPARE(figureText(-0.00001), std::string("0"));
        QCOMPARE(figureText(-12.5), std::string("-12.5"));
        QCOMPARE(amountText(121.111, *unitNamed("degC")), std::string("121.1 °C"));
        QCOMPARE(amountText(4, *unitNamed("count")), std::string("4"));
    }
};

CROWNRING_TEST(UnitTest)

}

#include "unit_test.moc"
