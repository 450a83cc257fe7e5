// SPDX-License-Identifier: GPL-3.0-or-later

/// Wear by least squares, against R's lm (cases 41 of tests/reference).

#include "parts/wear.h"
#include "reference_cases.h"
#include "test_class.h"

#include <QtTest>
#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

namespace wear_test {

using namespace crownring;

namespace {

std::vector<WearReading> readingsOf(const std::string& name) {
    const auto table = reference::table(name + ".csv");
    std::vector<WearReading> readings;
    for (std::size_t row = 0; row < table.at("hours").size(); ++row)
        readings.push_back({Hours(table.at("hours")[row]), table.at("value")[row]});
    return readings;
}

std::map<std::string, double> foundFor(const std::string& name, double limit, Wears way) {
    const auto trend = wearTrend(readingsOf(name)).value();
    std::map<std::string, double> found{{"intercept", trend.intercept},
                                        {"slope", trend.slope.middle},
                                        {"slope_low", trend.slope.low},
                                        {"slope_high", trend.slope.high},
                                        {"scatter", trend.scatter}};
    if (const auto met = limitMet(trend, limit, way)) {
        found["met_low"] = met->low.value();
        found["met"] = met->middle.value();
        found["met_high"] = met->high.value();
    }
    return found;
}

std::vector<WearReading> worn(std::initializer_list<std::pair<double, double>> readings) {
    std::vector<WearReading> all;
    for (const auto& [hours, value] : readings)
        all.push_back({Hours(hours), value});
    return all;
}

constexpr double least = 12;

}

class WearTest : public QObject {
    Q_OBJECT

private slots:
    /// Slope, interval and time to the limit to 1e-8.
    void aTrendIsThatOfR_data() {
        QTest::addColumn<QString>("name");
        QTest::addColumn<double>("limit");
        QTest::addColumn<bool>("up");
        QTest::newRow("a runner, six readings") << "41a_wear_runner" << 12.0 << false;
        QTest::newRow("three readings, the least") << "41b_wear_three" << 5.0 << false;
        QTest::newRow("broken wicker, which grows") << "41c_wear_wicker" << 120.0 << true;
        QTest::newRow("scatter larger than wear") << "41d_wear_scatter" << 9.0 << false;
    }
    void aTrendIsThatOfR() {
        QFETCH(const QString, name);
        QFETCH(const double, limit);
        QFETCH(const bool, up);
        QCOMPARE(reference::mismatches(name.toStdString(),
                                       foundFor(name.toStdString(), limit, up ? Wears::Up : Wears::Down)),
                 QString());
    }

    void fewerThanThreeReadingsGiveNoForecast() {
        QCOMPARE(wearTrend({}).error(), NoForecast::TooFewReadings);
        QCOMPARE(wearTrend(worn({{0, 20}, {100, 19}})).error(), NoForecast::TooFewReadings);
        QVERIFY(wearTrend(worn({{0, 20}, {100, 19}, {200, 18.1}})));
    }

    void readingsOfOneDayGiveNoForecast() {
        QCOMPARE(wearTrend(worn({{100, 20}, {100, 19.5}, {100, 19.8}})).error(), NoForecast::SameHours);
    }

    void whatMayNotWearAtAllIsToldSo() {
        const auto trend = wearTrend(readingsOf("41d_wear_scatter")).value();
        QVERIFY(trend.slope.low < 0 && trend.slope.high > 0);
        QCOMPARE(limitMet(trend, 9, Wears::Down).error(), NoForecast::MayNever);
        QCOMPARE(limitMet(wearTrend(worn({{0, 15}, {50, 15}, {100, 15}})).value(), least, Wears::Down).error(),
                 NoForecast::MayNever);
    }

    /// A runner does not grow: the readings are of two runners, or of two places.
    void whatGetsBetterMeetsNoLimit() {
        const auto trend = wearTrend(worn({{0, 15}, {50, 16.1}, {100, 17}, {150, 17.9}})).value();
        QCOMPARE(limitMet(trend, least, Wears::Down).error(), NoForecast::WearsAway);
        QVERIFY(limitMet(trend, 40, Wears::Up));
    }

    void evenWearIsMetOnTheHour() {
        const auto met = limitMet(wearTrend(worn({{0, 20}, {100, 18}, {200, 16}})).value(), least, Wears::Down).value();
        QVERIFY(std::abs(met.middle.value() - 400) < 1e-9);
        QVERIFY(met.low <= met.middle && met.middle <= met.high);
    }

    /// The example at the head of parts/wear.h.
    void theExampleIsRight() {
        const auto trend = wearTrend(worn({{0, 20.0}, {100, 18.9}, {200, 18.1}, {300, 16.8}})).value();
        const auto met = limitMet(trend, least, Wears::Down).value();
        const auto hundredth = [](double value) { return std::round(value * 10'000) / 100; };
        QCOMPARE(hundredth(trend.slope.middle), -1.04);
        QCOMPARE(hundredth(trend.slope.low), -1.32);
        QCOMPARE(hundredth(trend.slope.high), -0.76);
        QCOMPARE(std::lround(met.middle.value()), 770L);
        QCOMPARE(std::lround(met.low.value()), 636L);
        QCOMPARE(std::lround(met.high.value()), 1000L);
    }

    /// The limit lies on the edge of the line's band at both ends, whatever was read (its definition).
    void theEndsLieOnTheBandOfTheLine() {
        const bool holds = rc::check("the ends lie on the band of the line", [] {
            const auto count = *rc::gen::inRange(3, 12);
            std::vector<WearReading> readings;
            for (int i = 0; i < count; ++i)
                readings.push_back(
                    {Hours(i * 25.0 + *rc::gen::inRange(0, 20)), 30 - i + *rc::gen::inRange(0, 100) / 50.0});
            const auto trend = wearTrend(readings).value();
            const auto met = limitMet(trend, least, Wears::Down);
            RC_PRE(met.has_value());
            for (const auto end : {met->low, met->high}) {
                const double fromMean = end.value() - trend.meanHours;
                const double half =
                    trend.student * trend.scatter * std::sqrt(1.0 / count + fromMean * fromMean / trend.spread);
                RC_ASSERT(std::abs(std::abs(trend.at(end) - least) - half) < 1e-6);
            }
        });
        QVERIFY(holds);
    }

    void theOrderOfReadingsDoesNotMatter() {
        auto readings = readingsOf("41c_wear_wicker");
        const auto before = wearTrend(readings).value();
        std::ranges::reverse(readings);
        QVERIFY(std::abs(wearTrend(readings).value().slope.low - before.slope.low) < 1e-12);
    }
};

CROWNRING_TEST(WearTest)

}

#include "wear_test.moc"
