// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/doubt.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

namespace doubt_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

std::optional<Doubt> doubtOf(const char* quantity, double figure, const char* unit, std::optional<double> below = {}) {
    ReadingTaken reading;
    reading.quantity = quantity;
    reading.value = figure;
    reading.unit = unit;
    reading.below = below;
    return doubt(*measuredFrom(reading), **unitFor(*quantityNamed(quantity), unit));
}

bool suggests(const std::optional<Doubt>& doubt, double value, const char* unit) {
    return doubt && std::any_of(doubt->likely.begin(), doubt->likely.end(), [&](const Figure& meant) {
               return std::abs(meant.value() - value) < 1e-6 * value && meant.unit().symbol == unit;
           });
}

}

// The plausible ranges are common practice, no source.
class DoubtTest : public QObject {
    Q_OBJECT
private slots:
    void whatIsPlausibleIsNotQuestioned() {
        for (const double newtons : {50.0, 133.4, 445.0, 1100.0, 1200.0})
            QVERIFY(!doubtOf("grab-strength", newtons, "N"));
        QVERIFY(!doubtOf("grab-strength", 30, "lbf"));
        QVERIFY(!doubtOf("air-permeability", 0, "mm/s"));
        QVERIFY(!doubtOf("tell-tale", 121, "degC", 127));
    }

    void aPointInTheWrongPlace() {
        const auto doubt = doubtOf("grab-strength", 1334, "N");
        QVERIFY(suggests(doubt, 133.4, "N"));
        QCOMPARE(doubt->likely.size(), std::size_t{1});
        QCOMPARE(spoken(doubt->question), std::string("grab strength: 1334 N is outside 50 to 1200 N. Is it 133.4 N?"));
        QVERIFY(suggests(doubtOf("grab-strength", 133'400, "N"), 133.4, "N"));
        QVERIFY(suggests(doubtOf("air-permeability", 12'500, "mm/s"), 1250, "mm/s"));
    }

    void aLoadHeldFarBeyondTheManualsIsAskedBack() {
        LimitStated stated;
        stated.type = TypeName("T");
        stated.kind = ItemKind::Envelope;
        stated.quantity = "grab-strength";
        stated.unit = "N";
        stated.proof = 133.4;
        stated.source = "Manual T";
        const std::vector limits{limitFrom(stated).value()};
        const auto asked = [&](double load, const char* unit, bool held = true) {
            ReadingTaken reading;
            reading.quantity = "grab-strength";
            reading.value = load;
            reading.unit = unit;
            reading.held = held;
            return farFromStated(*measuredFrom(reading), **unitFor(*quantityNamed("grab-strength"), unit), limits);
        };
        QVERIFY(!asked(133.4, "N"));
        QVERIFY(!asked(30, "lbf"));
        QVERIFY(asked(133.4, "lbf")); // 593 N: plausible, and another unit's digits
        QVERIFY(spoken(*asked(133.4, "lbf")).find("133.4 lbf") != std::string::npos);
        QVERIFY(!asked(593, "N", false)); // where it broke is no load that was chosen
    }

    void poundsWrittenAsNewtons() {
        const auto doubt = doubtOf("grab-strength", 30, "N");
        QVERIFY(suggests(doubt, 30, "lbf"));
        QVERIFY(suggests(doubt, 30, "kgf"));
        QVERIFY(spoken(doubt->question).ends_with("Is it 30 daN, 30 kgf or 30 lbf?"));
    }

    void degreesOfTheOtherScale() {
        QVERIFY(suggests(doubtOf("tell-tale", 250, "degC"), 250, "degF"));
        QVERIFY(suggests(doubtOf("tell-tale", 121, "degF"), 121, "degC"));
    }

    void psiWrittenAsBar() { QVERIFY(suggests(doubtOf("burner-pressure", 100, "bar"), 100, "psi")); }

    void noDotTurnedIsPlausible() {
        QVERIFY(!doubtOf("tell-tale", 0, "degC", 88));
        QVERIFY(doubtOf("tell-tale", 0, "degC", 20));
        QVERIFY(doubtOf("tell-tale", 200, "degC", 210));
    }

    void whatNothingExplainsIsStillOnlyAsked() {
        const auto doubt = doubtOf("broken-strands", 9'000'000, "count");
        QVERIFY(doubt && doubt->likely.empty());
        QVERIFY(spoken(doubt->question).ends_with("Is that so?"));
    }

    void everySlipWouldBePlausible() {
        QVERIFY(rc::check("any figure of any quantity in any unit", [] {
            const auto quantities = allQuantities();
            const auto& quantity = quantities[*rc::gen::inRange<std::size_t>(0, quantities.size())];
            const auto units = unitsOf(quantity.dimension);
            const auto& unit = units[*rc::gen::inRange<std::size_t>(0, units.size())];
            Measured reading;
            reading.quantity = quantity.slug;
            reading.value = Figure(*rc::gen::inRange(0, 1'000'000) / 10.0, unitOf(quantity));
            const auto found = doubt(reading, unit);
            const double value = reading.value.value();
            RC_ASSERT(found.has_value() == (value < quantity.lowest || value > quantity.highest));
            if (!found)
                return;
            RC_ASSERT(found->likely.size() <= 3U);
            for (const auto& meant : found->likely) {
                const auto own = convert(meant.value(), meant.unit(), unitOf(quantity));
                RC_ASSERT(own >= quantity.lowest && own <= quantity.highest);
            }
        }));
    }
};

CROWNRING_TEST(DoubtTest)

}

#include "doubt_test.moc"
