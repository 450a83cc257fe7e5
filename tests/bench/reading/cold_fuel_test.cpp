// SPDX-License-Identifier: GPL-3.0-or-later

/// What the fuel presses on a cold morning is no fault of the burner, and no pass. Saturation pressures of propane:
/// 406.0 kPa at -5 °C, 836.6 kPa at 20 °C, absolute (Lemmon, McLinden and Wagner 2009; see tests/parts/propane_test).

#include "bench/reading/verdict.h"
#include "said.h"
#include "test_class.h"
#include "words/sentence.h"

#include <QtTest>

namespace cold_fuel_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

StatedLimit fourToTen() {
    LimitStated limit;
    limit.type = TypeName("T-90");
    limit.kind = ItemKind::Burner;
    limit.quantity = "burner-pressure";
    limit.unit = "bar";
    limit.least = 4;
    limit.most = 10;
    limit.source = "invented for tests";
    return *limitFrom(limit);
}

Judged judged(double bar, std::optional<double> celsius) {
    ReadingTaken reading;
    reading.item = ItemId("BRN-1");
    reading.quantity = "burner-pressure";
    reading.value = bar;
    reading.unit = "bar";
    if (celsius)
        reading.circumstances.temperature = Celsius(*celsius);
    static const std::vector limits{fourToTen()};
    return judge(*measuredFrom(reading), limits);
}

}

class ColdFuelTest : public QObject {
    Q_OBJECT

private slots:
    /// By gauge propane presses 305 kPa at -5 °C: nothing reaches the 400 that are stated.
    void aColdMorningShowsNeitherFaultNorPass() {
        const auto cold = judged(2.8, -5);
        QCOMPARE(cold.judgement, Judgement::Incomparable);
        const auto why = words::said(Argument(cold.reason));
        QVERIFY2(why.contains(QStringLiteral("3.0")) && why.contains(QStringLiteral("warmer fuel")), qPrintable(why));
    }
    void onAWarmDayItIsAFault() { QCOMPARE(judged(2.8, 20).judgement, Judgement::Fails); }
    /// Who does not say how warm the fuel was, has not shown that it was cold.
    void whatIsNotSaidExcusesNothing() { QCOMPARE(judged(2.8, std::nullopt).judgement, Judgement::Fails); }
    void whatIsReachedAllTheSamePasses() { QCOMPARE(judged(4.1, -5).judgement, Judgement::Passes); }
    /// Pressed up with nitrogen beyond what is stated.
    void tooMuchIsTooMuchAtAnyTemperature() { QCOMPARE(judged(11, -5).judgement, Judgement::Fails); }
    /// By gauge it presses the 400 from 1.8 °C on.
    void fromWhereTheFuelReachesItTheLimitSpeaks() {
        QCOMPARE(judged(3.9, 3).judgement, Judgement::Fails);
        QCOMPARE(judged(3.9, 0).judgement, Judgement::Incomparable);
    }
};

CROWNRING_TEST(ColdFuelTest, QCoreApplication)

}

#include "cold_fuel_test.moc"
