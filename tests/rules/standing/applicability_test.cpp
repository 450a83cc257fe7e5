// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/programme/serial_order.h"
#include "rules/shed.h"
#include "test_class.h"

namespace applicability_test {

using namespace crownring;
using namespace crownring::shed;

namespace {

Requirement bindingOn(const std::string& keys) {
    return rule(keys + R"(, "limits": [{"clock": "months", "every": 12}])");
}

}

/// Which items a requirement binds, and by how the balloon is operated.
class ApplicabilityTest : public QObject {
    Q_OBJECT
private slots:
    void serialsCompareInNaturalOrder_data() {
        QTest::addColumn<QString>("a");
        QTest::addColumn<QString>("b");
        QTest::addColumn<int>("order");
        // Common practice, no source; the order is settled in the design.
        QTest::newRow("numbers, not letters") << "9"
                                              << "10" << -1;
        QTest::newRow("equal") << "A-100"
                               << "A-100" << 0;
        QTest::newRow("leading zeros mean nothing") << "A-007"
                                                    << "A-7" << 0;
        QTest::newRow("all zeros are zero") << "000"
                                            << "0" << 0;
        QTest::newRow("letters compare as bytes") << "B-1"
                                                  << "A-2" << 1;
        QTest::newRow("each run of digits") << "77-9-2"
                                            << "77-10-1" << -1;
        QTest::newRow("a longer one comes after") << "100"
                                                  << "100A" << -1;
        QTest::newRow("longer than any integer") << "99999999999999999999998"
                                                 << "99999999999999999999999" << -1;
        QTest::newRow("empty first") << ""
                                     << "1" << -1;
    }
    void serialsCompareInNaturalOrder() {
        QFETCH(QString, a);
        QFETCH(QString, b);
        QFETCH(int, order);
        const auto sign = [](int value) { return (value > 0) - (value < 0); };
        QCOMPARE(sign(compareSerials(a.toStdString(), b.toStdString())), order);
        QCOMPARE(sign(compareSerials(b.toStdString(), a.toStdString())), -order);
    }

    void kindsTypesAndSerialsAllHold_data() {
        QTest::addColumn<QString>("keys");
        QTest::addColumn<bool>("bound");
        // The item: an envelope of type T-77, serial number 100.
        QTest::newRow("its kind") << R"("kinds": ["basket", "envelope"])" << true;
        QTest::newRow("another kind") << R"("kinds": ["basket"])" << false;
        QTest::newRow("no kind: an act only, without a row") << R"("kinds": [])" << false;
        QTest::newRow("its type") << R"("types": ["T-90", "T-77"])" << true;
        QTest::newRow("another type") << R"("types": ["T-90"])" << false;
        QTest::newRow("inside the range, both ends inclusive")
            << R"("serials": [{"from": "100", "to": "100"}])" << true;
        QTest::newRow("below the range") << R"("serials": [{"from": "101"}])" << false;
        QTest::newRow("above the range") << R"("serials": [{"to": "99"}])" << false;
        QTest::newRow("an open end") << R"("serials": [{"from": "99"}])" << true;
        QTest::newRow("one of several ranges") << R"("serials": [{"to": "20"}, {"from": "90", "to": "120"}])" << true;
        QTest::newRow("type but not serial") << R"("types": ["T-77"], "serials": [{"to": "99"}])" << false;
        QTest::newRow("serial but not type") << R"("types": ["T-90"], "serials": [{"to": "100"}])" << false;
    }
    void kindsTypesAndSerialsAllHold() {
        QFETCH(QString, keys);
        QFETCH(bool, bound);
        QCOMPARE(binds(bindingOn(keys.toStdString()), Item()), bound);
    }

    void whereTypeOrSerialIsMissingTheRowIsUnproven_data() {
        QTest::addColumn<QString>("keys");
        QTest::addColumn<int>("because");
        QTest::newRow("type") << R"("types": ["T-77"])" << static_cast<int>(Because::TypeMissing);
        QTest::newRow("serial") << R"("serials": [{"to": "99"}])" << static_cast<int>(Because::SerialMissing);
    }
    void whereTypeOrSerialIsMissingTheRowIsUnproven() {
        QFETCH(QString, keys);
        QFETCH(int, because);
        const auto requirement = bindingOn(keys.toStdString());
        Item item = Item().done("r", "2024-01-10");
        item.facts().type.reset();
        item.facts().serial.reset();
        QVERIFY(binds(requirement, item));
        const auto state = on("2024-01-11", requirement, item);
        COMPARE_STANDING(state.standing, "unproven");
        QCOMPARE(static_cast<int>(state.because), because);
        QVERIFY(!state.governs);
        QVERIFY(!dueOf(state.limits.at(0)));
    }
    void whereItDoesNotMatterNothingIsMissing() {
        Item item = Item().done("r", "2024-01-10");
        item.facts().type.reset();
        item.facts().serial.reset();
        COMPARE_STANDING(on("2024-01-11", bindingOn(R"("kinds": ["envelope"])"), item).standing, "clear");
    }
    void aTypeThatDiffersUnbindsWhateverTheSerial() {
        Item item;
        item.facts().serial.reset();
        QVERIFY(!binds(bindingOn(R"("types": ["T-90"], "serials": [{"to": "99"}])"), item));
    }

    void theOperationDecides_data() {
        QTest::addColumn<QString>("flownFor");
        QTest::addColumn<bool>("required");
        // FAA Chief Counsel on 91.409(b): it "depends on how the aircraft is operated".
        QTest::newRow("for hire") << "for-hire" << true;
        QTest::newRow("instruction") << "instruction" << true;
        QTest::newRow("for pleasure only") << "pleasure" << false;
        QTest::newRow("nothing said, or in the pool") << "" << false;
    }
    void theOperationDecides() {
        QFETCH(QString, flownFor);
        QFETCH(bool, required);
        const auto requirement = bindingOn(R"("operations": ["for-hire", "instruction"])");
        Item item = Item().done("r", "2020-01-01");
        if (!flownFor.isEmpty())
            item.flownFor({flownFor.toStdString()});
        const auto state = on("2024-01-01", requirement, item);
        QCOMPARE(state.because == Because::NotRequired, !required);
        COMPARE_STANDING(state.standing, "lapsed"); // computed as usual, so that a change of operation is no surprise
    }
};

CROWNRING_TEST(ApplicabilityTest)

}

#include "applicability_test.moc"
