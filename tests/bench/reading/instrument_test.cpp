// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/reading/instrument.h"
#include "problem/faults/reading_fault.h"
#include "test_class.h"

#include <QtTest>

/// ML.A.402(b)(4): tools are calibrated where necessary. What a certificate covers: common practice, no source.
namespace instrument_test {

using namespace crownring;

namespace {

TesterCalibrated grabTester() {
    TesterCalibrated stated;
    stated.tester = TesterId("G-1");
    stated.measures = {"grab-strength", "tear-strength"};
    stated.unit = "N";
    stated.from = 50;
    stated.to = 500;
    return stated;
}

Measured read(const char* quantity, double value, const char* unit) {
    ReadingTaken reading;
    reading.quantity = quantity;
    reading.value = value;
    reading.unit = unit;
    return measuredFrom(reading).value();
}

InstrumentFit fit(const char* quantity, double value, const char* unit) {
    return fitOf(instrumentFrom(grabTester()), read(quantity, value, unit));
}

}

class InstrumentTest : public QObject {
    Q_OBJECT
private slots:
    void itMeasuresWhatItIsFor() {
        QCOMPARE(fit("grab-strength", 300, "N"), InstrumentFit::Fits);
        QCOMPARE(fit("air-permeability", 30, "mm/s"), InstrumentFit::OtherQuantity);
    }
    void andAsFarAsItsScaleWasCalibrated() {
        QCOMPARE(fit("grab-strength", 500, "N"), InstrumentFit::Fits);
        QCOMPARE(fit("grab-strength", 501, "N"), InstrumentFit::BeyondRange);
        QCOMPARE(fit("grab-strength", 40, "N"), InstrumentFit::BeyondRange);
        QCOMPARE(fit("grab-strength", 60, "daN"), InstrumentFit::BeyondRange);
    }
    void whatTheRecordDoesNotSayIsNotKnown() {
        TesterCalibrated silent;
        silent.tester = TesterId("F-1");
        QCOMPARE(fitOf(instrumentFrom(silent), read("grab-strength", 300, "N")), InstrumentFit::NotSaid);
        QVERIFY(instrumentFrom(silent).mayMeasure("air-permeability"));
    }
    void aStatementThatContradictsItselfIsToldAtItsKey() {
        QVERIFY(!misstated(grabTester()));
        const auto expect = [](const TesterCalibrated& stated, ReadingFault fault, const char* key) {
            const auto problem = misstated(stated);
            QVERIFY(problem);
            QVERIFY2(problem->fault == Fault(fault), key);
            QCOMPARE(problem->where.key, std::string(key));
        };
        auto turned = grabTester();
        turned.to = 20;
        expect(turned, ReadingFault::RangeTurnedRound, "from");
        auto other = grabTester();
        other.measures.push_back("air-permeability");
        expect(other, ReadingFault::OtherDimension, "unit");
        auto unknown = grabTester();
        unknown.measures = {"colour"};
        expect(unknown, ReadingFault::NoQuantity, "measures");
        auto unitless = grabTester();
        unitless.unit.clear();
        expect(unitless, ReadingFault::RangeWithoutUnit, "unit");
        auto ofNothing = grabTester();
        ofNothing.measures.clear();
        expect(ofNothing, ReadingFault::RangeOfNothing, "measures");
    }
};

CROWNRING_TEST(InstrumentTest)

}

#include "instrument_test.moc"
