// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/figure.h"
#include "test_class.h"

#include <QtTest>
#include <rapidcheck.h>

#include <algorithm>

namespace figure_test {

using namespace crownring;

namespace {

Figure of(double value, const char* unit) { return {value, *unitNamed(unit)}; }

}

class FigureTest : public QObject {
    Q_OBJECT
private slots:
    // 30 lbf are 133.4466484578 N (NIST SP 811, from memory).
    void figuresOfOneDimensionCompareInWhateverUnit() {
        QVERIFY(of(30, "lbf") < of(133.5, "N"));
        QVERIFY(of(133.4, "N") < of(30, "lbf"));
        QVERIFY(of(1, "kPa") == of(1000, "Pa"));
        QVERIFY(of(250, "degF") < of(122, "degC"));
        QCOMPARE(amountText(of(30, "lbf").as(*unitNamed("N"))), std::string("133.4 N"));
        QCOMPARE(of(60, "N") / of(120, "N"), 0.5);
    }
    void figuresOfTwoDimensionsDoNot() {
        QVERIFY(!(of(1, "N") < of(1000, "mm/s")) && !(of(1000, "mm/s") < of(1, "N")));
        QVERIFY(of(1, "N") != of(1, "mm/s"));
        QVERIFY(!reaches(of(1000, "N"), of(1, "mm/s")));
    }
    void anAmountIsOfItsOwnDimension() {
        QCOMPARE(of(1, "daN").amount<Newtons>(), std::optional(Newtons(10)));
        QVERIFY(!of(1, "daN").amount<Pascals>());
        QCOMPARE(of(32, "degF").amount<Celsius>(), std::optional(Celsius(0)));
        QCOMPARE(of(2, "kPa").amount<Pascals>(), std::optional(Pascals(2000)));
    }
    void theDigitsOfAConversionDoNotDecide() {
        QVERIFY(reaches(of(133.4466484578, "N"), of(30, "lbf")));
        QVERIFY(!reaches(of(133.44, "N"), of(30, "lbf")));
        QVERIFY(rc::check("a figure reaches itself in any unit", [] {
            const auto dimension = static_cast<Dimension>(*rc::gen::inRange(0, dimensionCount));
            const auto units = unitsOf(dimension);
            const auto any = [&] { return units[*rc::gen::inRange<std::size_t>(0, units.size())]; };
            const auto& from = *std::ranges::find(units, any().symbol, &Unit::symbol);
            const auto& to = *std::ranges::find(units, any().symbol, &Unit::symbol);
            const Figure figure(*rc::gen::inRange(1, 100'000) / 8.0, from);
            RC_ASSERT(reaches(figure.as(to), figure));
            RC_ASSERT(reaches(figure, figure.as(to)));
            RC_ASSERT(!reaches(Figure(figure.value() * 0.999, from), figure));
        }));
    }
};

CROWNRING_TEST(FigureTest)

}

#include "figure_test.moc"
