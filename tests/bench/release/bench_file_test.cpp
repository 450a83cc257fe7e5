// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/release/bench_file.h"
#include "said.h"
#include "test_class.h"

#include <QtTest>

namespace bench_file_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

void read(BenchFile& file, const char* item, double value, const char* unit) {
    Said<ReadingTaken> said;
    said.body.item = ItemId(item);
    said.body.quantity = "tell-tale";
    said.body.value = value;
    said.body.unit = unit;
    file.inspection.readings.push_back(std::move(said));
}

StatedLimit stated(std::optional<double> least, std::optional<double> proof) {
    LimitStated limit;
    limit.quantity = "grab-strength";
    limit.unit = "N";
    limit.least = least;
    limit.proof = proof;
    return limitFrom(limit).value();
}

}

class BenchFileTest : public QObject {
    Q_OBJECT
private slots:
    void theHighestTellTaleIsTheHottestInWhateverUnit() {
        BenchFile file;
        read(file, "E1", 121, "degC");
        read(file, "E2", 230, "degF"); // 110 degC
        QCOMPARE(spoken(highestTemperature(file).value()), std::string("121 °C"));
        read(file, "E3", 257, "degF"); // 125 degC
        QCOMPARE(spoken(highestTemperature(file).value()), std::string("257 °F"));
    }
    /// What is to be held and what is to be reached are both asked; how far a reading is from them is told of the
    /// harder.
    void theHarderOfTwoBoundsIsTheBound() {
        QCOMPARE(stated(100, {}).needed()->value(), 100.0);
        QCOMPARE(stated({}, 130).needed()->value(), 130.0);
        QCOMPARE(stated(100, 130).needed()->value(), 130.0);
        QCOMPARE(stated(140, 130).needed()->value(), 140.0);
        Measured reading;
        reading.quantity = "grab-strength";
        reading.value = Figure(130, *unitNamed("N"));
        QCOMPARE(stated(100, 130).shareOf(reading), std::optional(1.0));
        QCOMPARE(judge(reading, std::array{stated(100, 130)}).judgement, Judgement::Passes);
    }
};

CROWNRING_TEST(BenchFileTest)

}

#include "bench_file_test.moc"
