// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/bench_file.h"
#include "test_class.h"

#include <QtTest>

/// Parachute, turning vents and mouth have panels of their own: common practice of manufacturers' instructions, no
/// source.
namespace zone_test {

using namespace crownring;

namespace {

const Unit& newtons() { return *unitNamed("N", Dimension::Force); }

StatedLimit least(double load, std::optional<Zone> zone = {}, std::optional<int> places = {}) {
    StatedLimit limit;
    limit.type = TypeName("T-77");
    limit.kind = ItemKind::Envelope;
    limit.quantity = "grab-strength";
    limit.least = Figure(load, newtons());
    limit.zone = zone;
    limit.places = places;
    return limit;
}

ReadingTaken pull(double load, Zone zone = Zone::Envelope, int gore = 3, std::optional<int> row = 16) {
    ReadingTaken reading;
    reading.item = ItemId("E1");
    reading.quantity = "grab-strength";
    reading.value = load;
    reading.unit = "N";
    reading.place = {gore, row, zone};
    return reading;
}

Judgement judged(const ReadingTaken& reading, const std::vector<StatedLimit>& limits) {
    return stateOf(reading, limits).judgement;
}

/// An envelope with these readings, and what its manual states.
BenchFile bench(const std::vector<ReadingTaken>& readings, std::vector<StatedLimit> limits) {
    BenchFile file;
    file.items.emplace_back();
    file.items.back().id = ItemId("E1");
    file.items.back().kind = ItemKind::Envelope;
    file.items.back().type = "T-77";
    file.limits = std::move(limits);
    for (const auto& reading : readings) {
        file.inspection.readings.emplace_back();
        file.inspection.readings.back().body = reading;
    }
    return file;
}

constexpr auto body = Zone::Envelope;
constexpr auto parachute = Zone::Parachute;
constexpr auto mouth = Zone::Mouth;

}

class ZoneTest : public QObject {
    Q_OBJECT
private slots:
    void aZoneIsHeldAgainstItsOwnLimit() {
        const std::vector limits{least(133.4), least(80, parachute)};
        QCOMPARE(judged(pull(100), limits), Judgement::Fails);
        QCOMPARE(judged(pull(100, parachute), limits), Judgement::Passes);
        QCOMPARE(judged(pull(70, parachute), limits), Judgement::Fails);
    }
    /// Nothing is stated for the mouth: what holds of the envelope holds there too, rather than nothing.
    void whereNoneIsStatedThatOfNoZoneHolds() {
        const std::vector limits{least(133.4), least(80, parachute)};
        QCOMPARE(judged(pull(100, mouth), limits), Judgement::Fails);
    }
    void oneOfTheBodyAloneSaysNothingOfTheVents() {
        QCOMPARE(judged(pull(100, parachute), {least(133.4, body)}), Judgement::NoLimit);
        QCOMPARE(judged(pull(100), {least(133.4, body)}), Judgement::Fails);
    }
    void aReadingInAVentAnswersNoneOfTheBodyAtTheSameGoreAndRow() {
        QVERIFY(!takesThePlaceOf(pull(200, parachute), pull(100)));
        QVERIFY(takesThePlaceOf(pull(200), pull(100)));
        QVERIFY(takesThePlaceOf(pull(200, parachute, 3, {}), pull(60, parachute, 3, {})));
        QVERIFY(!takesThePlaceOf(pull(200, body, 3, {}), pull(60, body, 3, {})));
    }
    void eachZoneIsCountedForItself() {
        const AskedReading asked{"grab-strength", false, true};
        const auto file = bench({pull(200), pull(200, parachute), pull(200, parachute, 4), pull(200, mouth)},
                                {least(133.4, {}, 2), least(80, parachute, 2)});
        const auto counts = limitCounts(file, file.items.front(), asked);
        QCOMPARE(counts.size(), std::size_t{2});
        QCOMPARE(counts[0].taken, 1); // of the body
        QVERIFY(!counts[0].enough());
        QCOMPARE(counts[1].taken, 2);
        QVERIFY(counts[1].enough());
    }
    /// Seconds are of the instrument: never converted, and more of them is better.
    void aTimedLeakIsAQuantityOfItsOwn() {
        const auto* quantity = quantityNamed("permeability-time");
        QVERIFY(quantity && quantity->good == Good::Higher && quantity->traits.placed && quantity->traits.tester);
        QVERIFY(unitFor(*quantity, "s"));
        for (const char* other : {"min", "mm/s", "l/m2/s", "Pa"})
            QVERIFY2(!unitFor(*quantity, other), other);
        QVERIFY(!unitFor(*quantityNamed("air-permeability"), "s"));
        StatedLimit limit = least(0);
        limit.quantity = "permeability-time";
        limit.least = Figure(15, unitOf(*quantity));
        auto leak = pull(14);
        leak.quantity = "permeability-time";
        leak.unit = "s";
        QCOMPARE(judged(leak, {limit}), Judgement::Fails);
        leak.value = 300;
        QCOMPARE(judged(leak, {limit}), Judgement::Passes);
        leak.quantity = "air-permeability";
        QCOMPARE(judged(leak, {limit}), Judgement::Incomparable);
    }
};

CROWNRING_TEST(ZoneTest)

}

#include "zone_test.moc"
