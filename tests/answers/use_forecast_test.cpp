// SPDX-License-Identifier: GPL-3.0-or-later

/// What is foretold through a real record: whose flights an item's forecast rests on. Figures are invented: a flight of
/// an hour every fourth day, 91 h a year.

#include "answers/due.h"
#include "answers/forecast/projected.h"
#include "answers/forecast/use_forecast.h"
#include "store/scratch.h"
#include "test_class.h"

#include <QtTest>

#include <algorithm>
#include <cmath>

using namespace crownring;
using namespace crownring::testing;

namespace {

constexpr const char* fleetOfTwo = R"({"entry":"balloon.entered","on":"2022-01-01","balloon":"QE-ONE"}
{"entry":"balloon.entered","on":"2022-01-01","balloon":"QE-TWO"}
{"entry":"item.entered","on":"2022-01-01","item":"E1","kind":"envelope"}
{"entry":"item.entered","on":"2022-01-01","item":"E2","kind":"envelope"}
{"entry":"item.fitted","on":"2022-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"item.fitted","on":"2022-01-01","balloon":"QE-TWO","item":"E2"}
)";
constexpr const char* everyThousandHours =
    R"({"entry":"programme.adopted","on":"2022-01-01","programme":"p","everything":true,"document":{"programme":"p","revision":"1","title":"P","source":"invented","requirements":[{"id":"hours","title":"Hours","source":"invented","kinds":["envelope","cylinder"],"action":"inspect","starts_from":"entered","limits":[{"clock":"minutes","every":60000}]}]}})";

std::string flownEvery(const char* balloon, const char* first, const char* last, int every,
                       const std::string& more = {}) {
    std::string lines;
    int nth = 0;
    for (auto on = day(first); on <= day(last); on = addDays(on, every), ++nth)
        lines += R"({"entry":"flight.logged","on":")" + on.iso() + R"(","balloon":")" + balloon + R"(","minutes":60)" +
                 more + "}\n";
    return lines;
}

/// The first is flown every fourth day, the second every sixteenth.
void flyTwo(Record& record) {
    posted(record, fleetOfTwo);
    posted(record, everyThousandHours);
    posted(record,
           flownEvery("QE-ONE", "2022-01-03", "2025-12-31", 4) + flownEvery("QE-TWO", "2022-01-03", "2025-12-31", 16));
}

double hoursOfYear(Record& record, UseAsked asked, int year = 2026) {
    asked.from = *CivilDate::fromYearMonthDay(year, 1, 1);
    asked.to = *CivilDate::fromYearMonthDay(year, 12, 31);
    asked.known = addDays(asked.from, -1);
    const auto told = useForecast(record, asked).value();
    double minutes = 0;
    for (const auto& month : told.periods)
        minutes += month.use[0].p50;
    return minutes / 60;
}
UseAsked useOfItem(const char* item) {
    UseAsked asked;
    asked.item = ItemId(item);
    return asked;
}
UseAsked useOfBalloon(const char* balloon) {
    UseAsked asked;
    asked.balloon = Registration(balloon);
    return asked;
}
bool isNearly(double value, double wished, double by) { return std::abs(value - wished) < by; }

std::optional<DateBand> bandOfItem(Record& record, const char* item, const char* on, const Scope& scope = {}) {
    const auto list = due(record, scope, day(on)).value();
    const auto bands = projected(record, list, day(on)).value();
    for (std::size_t i = 0; i < bands.size(); ++i)
        if (list.rows[i].item->id.text() == item)
            return bands[i];
    return std::nullopt;
}

}

class UseForecastTest : public QObject {
    Q_OBJECT

private slots:
    void eachFliesOnAtItsOwnPace() {
        Scratch scratch;
        flyTwo(*scratch.record);
        QVERIFY(isNearly(hoursOfYear(*scratch.record, useOfBalloon("QE-ONE")), 91, 8));
        QVERIFY(isNearly(hoursOfYear(*scratch.record, useOfItem("E1")), 91, 8));
        QVERIFY(hoursOfYear(*scratch.record, useOfBalloon("QE-TWO")) < 30);
        QVERIFY(isNearly(hoursOfYear(*scratch.record, {}), 114, 12)); // both
    }

    /// Its own log is a month long; the balloon that it is on was flown for years.
    void aNewEnvelopeIsFlownAsItsBalloonIs() {
        Scratch scratch;
        auto& record = *scratch.record;
        flyTwo(record);
        posted(record, R"({"entry":"item.entered","on":"2025-12-15","item":"E3","kind":"envelope"}
{"entry":"item.entered","on":"2025-12-15","item":"E4","kind":"envelope"}
{"entry":"item.removed","on":"2025-12-15","balloon":"QE-ONE","item":"E1"}
{"entry":"item.fitted","on":"2025-12-15","balloon":"QE-ONE","item":"E3"}
{"entry":"item.removed","on":"2025-12-15","balloon":"QE-TWO","item":"E2"}
{"entry":"item.fitted","on":"2025-12-15","balloon":"QE-TWO","item":"E4"})");
        const double one = hoursOfYear(record, useOfItem("E3"));
        const double two = hoursOfYear(record, useOfItem("E4"));
        QVERIFY2(isNearly(one, 91, 25), qPrintable(QString::number(one)));
        QVERIFY2(two < 35, qPrintable(QString::number(two)));
    }

    /// Nothing is fitted; the kits say where it flew.
    void aPoolItemIsFlownAsItWasDrawn() {
        Scratch scratch;
        auto& record = *scratch.record;
        flyTwo(record);
        posted(record, R"({"entry":"item.entered","on":"2022-01-01","item":"C1","kind":"cylinder"})");
        posted(record, flownEvery("QE-TWO", "2022-01-10", "2025-12-31", 8, R"(,"kit":["C1"])"));
        QVERIFY(isNearly(hoursOfYear(record, useOfItem("C1")), 45.6, 7));
    }

    void aBalloonIsForetoldFromAllItsRegistrations() {
        Scratch scratch;
        auto& record = *scratch.record;
        flyTwo(record);
        posted(record, R"({"entry":"balloon.entered","on":"2025-12-30","balloon":"QE-NEW"}
{"entry":"balloon.renamed","on":"2025-12-30","balloon":"QE-ONE","to":"QE-NEW"})");
        QVERIFY(isNearly(hoursOfYear(record, useOfBalloon("QE-NEW")), 91, 8));
    }

    void whatLiesAheadOfTheDayAskedIsNotLookedAt() {
        Scratch scratch;
        auto& record = *scratch.record;
        flyTwo(record);
        const auto before = hoursOfYear(record, useOfBalloon("QE-ONE"), 2025);
        posted(record, flownEvery("QE-ONE", "2025-02-02", "2025-12-31", 1));
        QCOMPARE(hoursOfYear(record, useOfBalloon("QE-ONE"), 2025), before);
        QVERIFY(hoursOfYear(record, useOfBalloon("QE-ONE")) > 200);
    }

    /// 1,000 h every time; 365 h are flown, so 635 are left, seven years at that pace.
    void aRowFallsDueAtThePaceOfItsItem() {
        Scratch scratch;
        flyTwo(*scratch.record);
        const auto band = bandOfItem(*scratch.record, "E1", "2025-12-31").value();
        QVERIFY(day("2032-06-01") < *band.p50 && *band.p50 < day("2033-06-01"));
        QVERIFY(*band.p10 < *band.p50 && *band.p50 < *band.p90);
        QVERIFY(bandOfItem(*scratch.record, "E1", "2025-12-31", {Registration("QE-ONE"), {}}) == band);
        QVERIFY(bandOfItem(*scratch.record, "E1", "2025-12-31", {{}, {ItemId("E1")}}) == band);
    }
    void whatIsLaidUpHasNoDateByUse() {
        Scratch scratch;
        flyTwo(*scratch.record);
        posted(*scratch.record, R"({"entry":"item.state","on":"2025-12-31","item":"E1","state":"laid-up"})");
        const auto list = due(*scratch.record, {}, day("2025-12-31"), Outside::AsInService).value();
        const auto bands = projected(*scratch.record, list, day("2025-12-31")).value();
        for (std::size_t i = 0; i < bands.size(); ++i)
            QVERIFY(list.rows[i].item->id != ItemId("E1") || !bands[i]);
        UseAsked asked = useOfItem("E1");
        QCOMPARE(hoursOfYear(*scratch.record, asked), 0.0);
    }
    /// Asked of a day to come, nothing is due before it.
    void nothingIsDueBeforeTheDayAsked() {
        Scratch scratch;
        flyTwo(*scratch.record);
        const auto list = due(*scratch.record, {}, day("2040-01-01")).value();
        const auto bands = projected(*scratch.record, list, day("2025-12-31")).value();
        QVERIFY(!bands.empty());
        for (const auto& band : bands)
            QVERIFY(!band || !band->p10 || *band->p10 >= day("2040-01-01"));
    }
    void aRecordWithoutFlightsIsToldOf() {
        Scratch scratch;
        posted(*scratch.record, fleetOfTwo);
        posted(*scratch.record, everyThousandHours);
        QVERIFY(bandOfItem(*scratch.record, "E1", "2022-01-02"));
        QVERIFY(hoursOfYear(*scratch.record, {}) >= 0);
    }
};

CROWNRING_TEST(UseForecastTest, QCoreApplication)

#include "use_forecast_test.moc"
