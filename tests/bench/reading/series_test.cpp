// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/series.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>
#include <rapidcheck.h>

#include <cmath>
#include <limits>
#include <set>

namespace series_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

template <class AmountOf>
std::optional<AmountOf> amount(const std::optional<double>& number) {
    return number ? std::optional(AmountOf(*number)) : std::nullopt;
}

ReadingTaken pull(double value, std::string unit, std::optional<double> jaw = 25) {
    ReadingTaken reading;
    reading.item = ItemId("E1");
    reading.quantity = "grab-strength";
    reading.value = value;
    reading.unit = std::move(unit);
    reading.conditions.jaw = amount<Millimetres>(jaw);
    return reading;
}

ReadingTaken air(double value, std::string unit, std::optional<double> pressure, std::optional<double> area = {}) {
    ReadingTaken reading;
    reading.quantity = "air-permeability";
    reading.value = value;
    reading.unit = std::move(unit);
    reading.conditions.pressure = amount<Pascals>(pressure);
    reading.conditions.area = amount<SquareCentimetres>(area);
    return reading;
}

ReadingTaken plain(std::string quantity, double value, std::string unit) {
    ReadingTaken reading;
    reading.quantity = std::move(quantity);
    reading.value = value;
    reading.unit = std::move(unit);
    return reading;
}

bool near(double a, double b, double within) { return std::abs(a - b) <= within; }

/// The key that a refused reading is refused at; "" when it is taken.
std::string refusedAt(const ReadingTaken& reading) {
    const auto measured = measuredFrom(reading);
    if (measured)
        return {};
    const auto& error = measured.error();
    return error.code() == Code::BadQuantity && isSaid(error) ? error.where.key : "?";
}

}

class SeriesTest : public QObject {
    Q_OBJECT
private slots:
    void everyQuantityHasAUnitAndARange() {
        std::set<std::string_view> slugs;
        for (const auto& quantity : allQuantities()) {
            QVERIFY(slugs.insert(quantity.slug).second);
            QVERIFY(!spoken(termOf(quantity)).empty());
            QVERIFY(spoken(termOf(quantity)) != quantity.slug);
            QVERIFY(quantityNamed(quantity.slug) == &quantity);
            QVERIFY(unitNamed(quantity.unit, quantity.dimension));
            QVERIFY(quantity.lowest < quantity.highest);
            QCOMPARE(quantity.traits.isSigned, quantity.lowest < 0);
        }
        QVERIFY(!quantityNamed("happiness"));
        QVERIFY(!quantityNamed(""));
    }

    // 30 lbf = 133.447 N, 1 cfm/ft2 = 5.08 mm/s, 275 degF = 135.0 degC: NIST SP 811 (from memory) and arithmetic.
    void aReadingIsHeldInItsQuantitysUnit() {
        QVERIFY(near(measuredFrom(pull(30, "lbf"))->value.value(), 133.447, 0.0005));
        QVERIFY(near(measuredFrom(pull(13.6078, "kg"))->value.value(), 133.447, 0.0005));
        QVERIFY(near(measuredFrom(air(2, "cfm/ft2", 125))->value.value(), 10.16, 1e-9));
        QVERIFY(near(measuredFrom(plain("tell-tale", 275, "degF"))->value.value(), 135, 1e-9));
        QVERIFY(near(measuredFrom(plain("burner-pressure", 100, "psi"))->value.value(), 689.4757, 0.0001));
        QVERIFY(near(measuredFrom(plain("altimeter-error", -100, "ft"))->value.value(), -30.48, 1e-9));
        QVERIFY(near(measuredFrom(plain("envelope-thermometer-error", 9, "degF"))->value.value(), 5, 1e-9));
    }

    void aStepKeepsBothItsEnds() {
        auto reading = plain("tell-tale", 260, "degF");
        reading.below = 270;
        const auto measured = measuredFrom(reading);
        QVERIFY(near(measured->value.value(), 126.67, 0.005) && near(measured->below->value(), 132.22, 0.005));
    }

    void whatIsNoReadingIsRefusedWithItsKey() {
        QCOMPARE(refusedAt(pull(200, "N")), std::string());
        QCOMPARE(refusedAt(plain("happiness", 3, "count")), std::string("quantity"));
        QCOMPARE(refusedAt(pull(200, "stone")), std::string("unit"));
        QCOMPARE(refusedAt(pull(200, "kPa")), std::string("unit"));
        QCOMPARE(refusedAt(air(10, "N", 100)), std::string("unit"));
        QCOMPARE(refusedAt(pull(-1, "N")), std::string("value"));
        QCOMPARE(refusedAt(pull(std::nan(""), "N")), std::string("value"));
        QCOMPARE(refusedAt(pull(std::numeric_limits<double>::infinity(), "N")), std::string("value"));
        QCOMPARE(refusedAt(plain("tell-tale", -300, "degC")), std::string("value"));
        QCOMPARE(refusedAt(plain("broken-strands", 1.5, "count")), std::string("value"));
        QCOMPARE(refusedAt(pull(200, "N", 0)), std::string("jaw_mm"));
        QCOMPARE(refusedAt(air(10, "mm/s", -100)), std::string("pressure_pa"));
        QCOMPARE(refusedAt(air(10, "mm/s", 100, 0)), std::string("area_cm2"));
    }

    void whatIsNoPartOfAQuantityIsRefused() {
        auto reading = air(10, "mm/s", 100);
        reading.conditions.jaw = Millimetres(25);
        QCOMPARE(refusedAt(reading), std::string("jaw_mm"));
        reading = air(10, "mm/s", 100);
        reading.conditions.direction = "warp";
        QCOMPARE(refusedAt(reading), std::string("direction"));
        reading.conditions = {};
        reading.held = true;
        QCOMPARE(refusedAt(reading), std::string("held_at"));
        reading = pull(150, "N");
        reading.conditions.pressure = Pascals(100);
        QCOMPARE(refusedAt(reading), std::string("pressure_pa"));
        reading = pull(150, "N");
        reading.below = 160;
        QCOMPARE(refusedAt(reading), std::string("below"));
        reading = pull(150, "N");
        reading.conditions.direction = "bias";
        QCOMPARE(refusedAt(reading), std::string("direction"));
        reading = plain("tell-tale", 127, "degC");
        reading.below = 127;
        QCOMPARE(refusedAt(reading), std::string("below"));
    }

    void aRefusalNamesBothDimensionsAndTheUnitsThatServe() {
        const auto error = measuredFrom(pull(200, "kPa")).error();
        QVERIFY(spokenMessage(error).find("pressure") != std::string::npos &&
                spokenMessage(error).find("force") != std::string::npos);
        QCOMPARE(spokenMend(error), std::string("write it in N, daN, kgf or lbf"));
    }

    // ISO 9237 (100 Pa for apparel, 200 Pa for industrial fabrics; 20 cm2), ASTM D737 (125 Pa, 38.3 cm2): from memory.
    void anotherPressureOrAreaIsAnotherSeries() {
        const auto iso = *measuredFrom(air(10, "mm/s", 100, 20));
        const auto astm = *measuredFrom(air(10, "mm/s", 125, 38.3));
        QVERIFY(comparable(iso, iso));
        const auto refused = comparable(iso, astm);
        QVERIFY(!refused);
        QCOMPARE(refused.error().code(), Code::BadQuantity);
        QCOMPARE(spokenMessage(refused.error()),
                 std::string("air permeability at 100 Pa on 20 cm² is not comparable with air "
                             "permeability at 125 Pa on 38.3 cm²"));
        QVERIFY(!comparable(iso, *measuredFrom(air(10, "mm/s", 100, 38.3))));
        QVERIFY(!comparable(iso, *measuredFrom(air(10, "mm/s", 100))));
        QVERIFY(!comparable(*measuredFrom(air(10, "mm/s", 200)), *measuredFrom(air(10, "mm/s", 2491))));
    }

    void unitsAreNoOtherSeries() {
        QVERIFY(comparable(*measuredFrom(air(10, "mm/s", 100)), *measuredFrom(air(2, "cfm/ft2", 100))));
        QVERIFY(comparable(*measuredFrom(pull(30, "lbf")), *measuredFrom(pull(200, "N"))));
    }

    // ASTM D5034 gives its jaws as 25 mm (1 in), ASTM D737 its pressure as 125 Pa (0.5 in of water): from memory.
    void whatTheStandardsCallTheSameIsTheSame() {
        QVERIFY(comparable(*measuredFrom(pull(200, "N", 25)), *measuredFrom(pull(200, "N", 25.4))));
        QVERIFY(comparable(*measuredFrom(air(10, "mm/s", 125)), *measuredFrom(air(10, "mm/s", 124.54))));
        QVERIFY(comparable(*measuredFrom(air(10, "mm/s", 2491)), *measuredFrom(air(10, "mm/s", 2490.9))));
        QVERIFY(!comparable(*measuredFrom(pull(200, "N", 25)), *measuredFrom(pull(200, "N", 45))));
        QVERIFY(!comparable(*measuredFrom(pull(200, "N", 25)), *measuredFrom(pull(200, "N", {}))));
    }

    void aPermeabilityWithoutItsPressureComparesWithNothing() {
        const auto unstated = *measuredFrom(air(10, "mm/s", {}));
        const auto refused = comparable(unstated, unstated);
        QVERIFY(!refused);
        QCOMPARE(refused.error().where.key, std::string("pressure_pa"));
    }

    // Grab is more than strip of the same width, because neighbouring yarns help (from memory).
    void grabAndStripAreTwoQuantities() {
        auto strip = pull(200, "N");
        strip.quantity = "strip-strength";
        QVERIFY(!comparable(*measuredFrom(pull(200, "N")), *measuredFrom(strip)));
    }

    void warpAndWeftAreOneSeries() {
        auto warp = pull(200, "N");
        auto weft = pull(180, "N");
        warp.conditions.direction = "warp";
        weft.conditions.direction = "weft";
        QVERIFY(comparable(*measuredFrom(warp), *measuredFrom(weft)));
    }

    void comparingIsFairAndTransitive() {
        const auto anyAir = [] {
            const auto pressure = *rc::gen::element(98.0, 100.0, 101.9, 102.1, 104.0, 124.5, 125.0, 127.0);
            const auto area = *rc::gen::element(0.0, 5.0, 20.0, 38.0, 38.3, 38.7, 50.0, 100.0);
            return *measuredFrom(air(10, "mm/s", pressure, area > 0 ? std::optional(area) : std::nullopt));
        };
        QVERIFY(rc::check("any three", [&] {
            const auto a = anyAir();
            const auto b = anyAir();
            const auto c = anyAir();
            RC_ASSERT(comparable(a, b).has_value() == comparable(b, a).has_value());
            if (comparable(a, b) && comparable(b, c))
                RC_ASSERT(comparable(a, c).has_value());
        }));
    }
};

CROWNRING_TEST(SeriesTest)

}

#include "series_test.moc"
