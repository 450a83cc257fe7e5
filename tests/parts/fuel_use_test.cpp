// SPDX-License-Identifier: GPL-3.0-or-later

/// Whether a balloon burns more than it did. No source has such a test: what is asked here is that it says what it
/// claims, and that it is seldom wrong where nothing changed.

#include "parts/fuel_use.h"
#include "test_class.h"

#include <QtTest>

#include <cmath>
#include <random>
#include <vector>

namespace fuel_use_test {

using namespace crownring;

namespace {

FuelFlight flight(double rate, double outside = 10, double load = 320) {
    return {Hours(1.5), 1.5 * rate, Celsius(outside), Kilograms(load)};
}

/// 34 to 37 kg an hour.
std::vector<FuelFlight> twelveBefore() {
    std::vector<FuelFlight> flights;
    for (int at = 0; at < 12; ++at)
        flights.push_back(flight(34 + at % 4, 8 + at % 5, 300 + 10 * (at % 5)));
    return flights;
}

std::vector<FuelFlight> with(std::vector<FuelFlight> flights, std::initializer_list<FuelFlight> more) {
    flights.insert(flights.end(), more);
    return flights;
}

/// In so many of a hundred histories without a rise one is called.
double falsePerHundred(double scatter) {
    constexpr int histories = 1000;
    std::mt19937 chance(2026);
    std::normal_distribution<double> off(0, scatter);
    int called = 0;
    for (int at = 0; at < histories; ++at) {
        std::vector<FuelFlight> flights;
        for (int i = 0; i < 18; ++i)
            flights.push_back(flight(36 * std::exp(off(chance))));
        called += fuelRise(flights)->isRaised();
    }
    return 100.0 * called / histories;
}

}

class FuelUseTest : public QObject {
    Q_OBJECT

private slots:
    void threeFlightsThatBurnMoreThanTwelveBefore() {
        const auto rise = fuelRise(with(twelveBefore(), {flight(41), flight(43), flight(42)}));
        QVERIFY(rise && rise->isRaised());
        QCOMPARE(rise->alike, std::size_t{12});
        QVERIFY2(std::abs(rise->share.middle - 0.184) < 0.01, qPrintable(QString::number(rise->share.middle)));
        QVERIFY(rise->share.low > 0.10 && rise->share.high < 0.28);
        QVERIFY(std::abs(rise->lately - std::cbrt(41.0 * 42 * 43)) < 1e-9);
    }
    void asMuchAsBeforeIsNoRise() {
        const auto rise = fuelRise(with(twelveBefore(), {flight(37), flight(36), flight(34)}));
        QVERIFY(rise && !rise->isRaised());
    }
    /// Surely more, and by little: not worth a look.
    void lessThanATenthIsNone() {
        std::vector<FuelFlight> even(12, flight(35));
        const auto rise = fuelRise(with(even, {flight(37), flight(37), flight(37)}));
        QVERIFY(rise && rise->share.low > 0 && !rise->isRaised());
        QVERIFY(std::abs(rise->share.middle - (37.0 / 35 - 1)) < 1e-12);
        QVERIFY(std::abs(rise->share.high - rise->share.low) < 1e-12); // they agree wholly
    }
    void aWarmDayIsNotHeldAgainstColdOnes() {
        const auto hot = flight(52, 28);
        const auto rise = fuelRise(with(twelveBefore(), {hot, hot, hot}));
        QVERIFY(!rise && rise.error() == NoFuelRise::TooFewAlike);
    }
    void norAFullBasketAgainstALightOne() {
        const auto full = flight(52, 10, 520);
        const auto rise = fuelRise(with(twelveBefore(), {full, full, full}));
        QVERIFY(!rise && rise.error() == NoFuelRise::TooFewAlike);
    }
    void aFlightThatDoesNotSayIsLikeNone() {
        auto unsaid = flight(42);
        unsaid.load.reset();
        const auto rise = fuelRise(with(twelveBefore(), {flight(42), unsaid, flight(42)}));
        QVERIFY(!rise && rise.error() == NoFuelRise::TooFewAlike);
    }
    void fewFlightsSayNothing() {
        const std::vector<FuelFlight> few(7, flight(35));
        QVERIFY(!fuelRise(few) && fuelRise(few).error() == NoFuelRise::TooFewFlights);
    }
    /// Its interval would call 2.5 in a hundred; the tenth that is asked for takes most of those away.
    void itSeldomCallsARiseWhereThereIsNone() {
        QVERIFY2(falsePerHundred(0.05) < 1, qPrintable(QString::number(falsePerHundred(0.05))));
        QVERIFY2(falsePerHundred(0.15) < 5, qPrintable(QString::number(falsePerHundred(0.15))));
    }
};

CROWNRING_TEST(FuelUseTest)

}

#include "fuel_use_test.moc"
