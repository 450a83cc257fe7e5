// SPDX-License-Identifier: GPL-3.0-or-later

/// Types and words for parts that are written otherwise than a directive writes them. Common practice, no source.

#include "parts/directives.h"
#include "parts/near_name.h"
#include "test_class.h"

#include <QtTest>

namespace near_name_test {

using namespace crownring;

class NearNameTest : public QObject {
    Q_OBJECT

private slots:
    void aTypeThatLooksTheSameIsNearlyIt() {
        for (const char* written : {"PV\u20132", "\u0420V-2", "PV-02", "PV\u22122", "PV-1, PV-2", "PV-2 (mod A)"})
            QVERIFY2(isNearlyType(written, "PV-2"), written);
        for (const char* written :
             {"T\u2013burner", "T-burner, T-other", "T-other; T-burner", "T-bruner", "T burner mk 2"})
            QVERIFY2(isNearlyType(written, "T-burner"), written);
        QVERIFY(isNearlyType("T-burner", "T-burner, T-other")); // the directive has the list
    }
    void whatDiffersInAFigureOrALetterIsAnotherType() {
        QVERIFY(!isNearlyType("X-1", "X-2"));
        QVERIFY(!isNearlyType("PV-20", "PV-2"));
        QVERIFY(!isNearlyType("Twin C", "Twin B"));
        QVERIFY(!isNearlyType("Kite-105", "Kite-90"));
        QVERIFY(!isNearlyType("T-other", "T-burner"));
    }
    void aWordForAPartIsNearlyAnother() {
        QVERIFY(isNearlyPart("pilotvalve", "pilot-valve") && isNearlyPart("pilot-valves", "pilot-valve"));
        QVERIFY(!isNearlyPart("relief-valve", "pilot-valve") && !isNearlyPart("valve", "pilot-valve"));
    }
    void nearlyIsUnknownAndNeverNo() {
        const ThingAsked asked{"pilot-valve", {"PV-2"}, {}};
        const auto told = [&](const char* name, const char* type) {
            return isAsked(asked, {name, type, {}, {}, true, false});
        };
        QVERIFY(told("pilot-valve", "PV2").applies == Truth::Yes);
        for (const auto& found : {told("pilotvalve", "PV-2"), told("pilot-valve", "PV-02")})
            QVERIFY(found.applies == Truth::Unknown && found.why == WhyBound::NearlyAlike);
        QVERIFY(told("pilotvalve", "PV-1").applies == Truth::No); // of another type, whatever it is called
        QVERIFY(told("hose", "PV-2").applies == Truth::No);
    }
    void theKindOfAnItemIsNoSlipOfThePen() {
        QVERIFY(isAsked({"gasket", {}, {}}, {"basket", {}, {}, {}, true, true}).applies == Truth::No);
        QVERIFY(isAsked({"gasket", {}, {}}, {"gaskets", {}, {}, {}, true, false}).applies == Truth::Unknown);
    }
};

CROWNRING_TEST(NearNameTest)

}

#include "near_name_test.moc"
