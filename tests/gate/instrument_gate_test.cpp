// SPDX-License-Identifier: GPL-3.0-or-later
#include "problem/faults/reading_fault.h"
#include "said.h"
#include "signing_attempt.h"
#include "test_class.h"

#include <QtTest>
#include <nlohmann/json.hpp>

/// An instrument is accepted for what it measures (ML.A.402(b)(4), read): all of it is invented.
namespace instrument_gate_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

const char* const grabTester =
    R"({"entry":"tester.calibrated","on":"2026-01-01","tester":"G-1","until":"2026-12-31","what":"grab tester","measures":["grab-strength"],"unit":"N","from":50,"to":500,"station":"North"})";
const char* const airTester =
    R"({"entry":"tester.calibrated","on":"2026-01-01","tester":"A-1","until":"2026-12-31","what":"air tester","measures":["air-permeability"]})";

std::string pullWith(const char* tester, double load = 300, const char* on = "2026-06-01") {
    return nlohmann::json{{"entry", "reading.taken"},    {"id", "p"},     {"on", on},        {"item", "E1"},
                          {"quantity", "grab-strength"}, {"unit", "N"},   {"gore", 3},       {"row", 16},
                          {"direction", "warp"},         {"value", load}, {"tester", tester}}
        .dump();
}

void expectFault(Shop& shop, const std::string& lines, ReadingFault fault, const char* key) {
    const auto problems = problemsOf(shop.record(), lines);
    QCOMPARE(problems.size(), std::size_t{1});
    QVERIFY2(problems.front().fault == Fault(fault), qPrintable(words::line(problems.front())));
    QCOMPARE(problems.front().where.key, std::string(key));
    QVERIFY2(isSaid(problems.front()), qPrintable(words::line(problems.front())));
}

const char* const correctedToAirTester =
    R"({"entry":"entry.corrected","on":"2026-06-02","replaces":"p","with":{"tester":"A-1"},"note":"it was"})";
const char* const inUnitsOfLength =
    R"({"entry":"tester.calibrated","on":"2026-01-01","tester":"X","until":"2026-12-31","measures":["grab-strength"],"unit":"mm","to":3})";
const char* const forceGaugeIsOfAir =
    R"({"entry":"tester.calibrated","on":"2026-02-01","tester":"F-1","until":"2026-12-31","measures":["air-permeability"]})";

}

class InstrumentGateTest : public QObject {
    Q_OBJECT
private slots:
    void anAirTesterPullsNoFabric() {
        Shop shop;
        shop.say(airTester);
        expectFault(shop, pullWith("A-1"), ReadingFault::MeasuresOther, "tester");
    }
    void noFigureBeyondItsScale() {
        Shop shop;
        shop.say(grabTester);
        expectFault(shop, pullWith("G-1", 640), ReadingFault::BeyondRange, "tester");
        QVERIFY(problemsOf(shop.record(), pullWith("G-1")).empty());
    }
    void norOnADayThatNoCalibrationCovers() {
        Shop shop;
        shop.say(grabTester);
        expectFault(shop, pullWith("G-1", 300, "2027-02-01"), ReadingFault::OutOfCalibration, "tester");
    }
    void theCalibrationMayComeInTheSameBatch() {
        Shop shop;
        QVERIFY(problemsOf(shop.record(), pullWith("G-1") + "\n" + grabTester).empty());
    }
    /// As all were before they could say.
    void oneThatSaysNothingIsAccepted() {
        Shop shop;
        QVERIFY(problemsOf(shop.record(), pullWith("F-1")).empty());
    }
    void norIsOneAskedThatTheRecordDoesNotKnow() {
        Shop shop;
        QVERIFY(problemsOf(shop.record(), pullWith("unheard-of")).empty());
    }
    void aCorrectionIsAskedTheSame() {
        Shop shop;
        shop.say(std::string(grabTester) + "\n" + airTester + "\n" + pullWith("G-1"));
        const auto problems = problemsOf(shop.record(), correctedToAirTester);
        QCOMPARE(problems.size(), std::size_t{1});
        QCOMPARE(problems.front().fault, Fault(ReadingFault::MeasuresOther));
    }
    void aCalibrationThatContradictsItself() {
        Shop shop;
        expectFault(shop, inUnitsOfLength, ReadingFault::OtherDimension, "unit");
    }
    /// The reading came first, what the instrument measures came to light later: then the signature asks.
    void theSignatureAsksAgain() {
        Shop shop;
        shop.ready(Visit::PartMlInspection);
        shop.say(forceGaugeIsOfAir);
        expectRefused(shop, Shop::signing(), "tester", "ML.A.402(b)(4)");
    }
};

CROWNRING_TEST(InstrumentGateTest, QCoreApplication)

}

#include "instrument_gate_test.moc"
