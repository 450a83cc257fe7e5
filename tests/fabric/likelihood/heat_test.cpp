// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/likelihood/heat.h"
#include "fabric/reference_fleet.h"
#include "test_class.h"

#include <QtTest>

namespace heat_test {

using namespace crownring;

namespace {

Overheating overheating(double hours, double celsius, double minutes) {
    return {Hours(hours), Celsius(celsius), Hours(minutes / 60)};
}

}

class HeatTest : public QObject {
    Q_OBJECT
private slots:
    void theReferenceCase() {
        std::map<std::string, double> found;
        for (const int energy : {60, 80, 93, 100, 120, 134})
            for (const int celsius : {80, 110, 120, 130, 140, 150})
                found["AF_Ea" + std::to_string(energy) + "_T" + std::to_string(celsius) + "_ref100"] =
                    heatFactor(energy, Celsius(celsius));
        const auto events = std::vector{overheating(10, 125, 15), overheating(20, 140, 6)};
        found["dose_h_Ea100_2events"] = heatDose(events, Hours(30)).value();
        QCOMPARE(reference::mismatches("32_arrhenius", found), QString());
    }

    void onlyWhatHappenedBeforeCounts() {
        const auto events = std::vector{overheating(10, 100, 60), overheating(20, 100, 30)};
        QCOMPARE(heatDose(events, Hours(10)), Hours(0));
        QCOMPARE(heatDose(events, Hours(15)), Hours(1));
        QCOMPARE(heatDose(events, Hours(25)), Hours(1.5));
        QCOMPARE(heatDose({}, Hours(25)), Hours(0));
    }

    // The doses beside the readings of case 37 were computed elsewhere, from its table of events.
    void dosesOfTheReferenceFleet() {
        const auto table = reference::table("37_fleet_events.csv");
        std::map<std::size_t, std::vector<Overheating>> events;
        for (std::size_t row = 0; row < table.at("env").size(); ++row)
            events[static_cast<std::size_t>(table.at("env")[row]) - 1].push_back(
                overheating(table.at("hours")[row], table.at("Tmax")[row], table.at("minutes")[row]));
        double largest = 0;
        for (const auto& reading : reference::fleet().readings) {
            QVERIFY(std::abs(heatDose(events[reading.set], Hours(reading.hours)).value() - reading.dose) < 1e-9);
            largest = std::max(largest, reading.dose);
        }
        QVERIFY(largest > 1);
    }
};

CROWNRING_TEST(HeatTest)

}

#include "heat_test.moc"
