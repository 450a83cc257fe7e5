// SPDX-License-Identifier: GPL-3.0-or-later

/// crownringctl propane: the keys of its answer, and what it refuses.

#include "ctl/answer.h"
#include "test_class.h"

#include <QtTest>

#include <cmath>

namespace propane_call_test {

using namespace crownring;
using namespace crownring::testing;

class PropaneCallTest : public QObject {
    Q_OBJECT

    static Answer propane(const QStringList& arguments) {
        return answerOf(QStringLiteral(CROWNRINGCTL), QStringList{"propane"} + arguments);
    }

private slots:
    /// 474.5 kPa at 0 °C (see tests/parts/propane_test); a gauge counts from the standard atmosphere.
    void aColdMorningsPressureIsToldWithItsSource() {
        const auto answer = propane({"--celsius", "0", "--json"});
        QCOMPARE(answer.code, 0);
        const auto document = answer.document();
        QCOMPARE(document.size(), std::size_t{3});
        QVERIFY(std::abs(document["kpa_absolute"].get<double>() - 474.5) < 0.1);
        QVERIFY(std::abs(document["kpa_gauge"].get<double>() - (474.5 - 101.325)) < 0.1);
        QVERIFY(document["source"].get<std::string>().find("Lemmon") != std::string::npos);
    }

    void degreesBelowZeroAndACommaAreRead() {
        const auto frost = propane({"--celsius", "-20", "--json"});
        QVERIFY(std::abs(frost.document()["kpa_absolute"].get<double>() - 244.5) < 0.1);
        QCOMPARE(propane({"--celsius=-20,0", "--json"}).out, frost.out);
    }

    void butaneLowersIt() {
        const auto mixed = propane({"--celsius", "0", "--butane", "0.3", "--json"}).document();
        QVERIFY(mixed["kpa_absolute"].get<double>() < 400);
        QVERIFY(mixed["source"].get<std::string>().find("Raoult") != std::string::npos);
    }

    void whatIsNoLiquidIsRefusedWithAWayOut() {
        for (const auto& bad :
             {QStringList{"--celsius", "-190"}, QStringList{"--celsius", "97"},
              QStringList{"--celsius", "10", "--butane", "30"}, QStringList{"--celsius", "warm"}, QStringList{}}) {
            const auto answer = propane(bad);
            QCOMPARE(answer.code, 2);
            QVERIFY(answer.out.isEmpty());
            QVERIFY(!answer.err.isEmpty());
        }
        QVERIFY(propane({"--celsius", "10", "--butane", "30"}).err.contains("30 % are 0.3"));
    }
};

CROWNRING_TEST(PropaneCallTest)

}

#include "propane_call_test.moc"
