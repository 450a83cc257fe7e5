// SPDX-License-Identifier: GPL-3.0-or-later
#include "answers/fabric/forecast.h"
#include "answers/fabric/lots.h"
#include "answers/fabric/made_fabric_record.h"
#include "answers/fabric/score.h"
#include "fabric/numeric/draws.h"
#include "store/scratch.h"
#include "test_class.h"

#include <QtTest>

#include <algorithm>
#include <cmath>

namespace fabric_forecast_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

FabricFit fitted(const std::shared_ptr<const FabricRecord>& record) { return fitOf(record).value().value(); }

}

class FabricForecastTest : public QObject {
    Q_OBJECT
private slots:
    void theEndIsWhereItWasPut() {
        // ln(100/30) / 0.2 = 6.02: the crown is at its limit after 602 h.
        const auto fit = fitted(made({}, 1));
        Ahead ahead;
        ahead.on = day("2026-06-01");
        ahead.pace.fill(10);
        const auto forecast = forecastOf(fit, 3, ahead);
        const auto& outlook = forecast.sets[forecast.weakest].outlook;
        QVERIFY(outlook.end == LifeEnd::InSight && outlook.life.isWhole() && outlook.strength.isWhole());
        QVERIFY2(std::abs(outlook.life.middle->value() - 602) < 45,
                 qPrintable(QString::number(outlook.life.middle->value())));
        QVERIFY(*outlook.life.low > Hours(500) && *outlook.life.high < Hours(760));
        QVERIFY(std::abs(*outlook.strength.middle - 100 * std::exp(-0.8)) < 3);
        // Ten hours a month: 602 - 400 = 202 h are flown in twenty months.
        const auto on = ahead.dayAfter(*outlook.life.middle - Hours(400));
        QVERIFY(on && std::abs(daysBetween(day("2028-02-01"), *on).value()) < 150);
        QCOMPARE(forecast.pulls.size(), std::size_t{4});
        // A pull to break tells more than one that holds at the limit, which tells next to nothing (statistics of the
        // model: a bound far below the strength is no news).
        QVERIFY(forecast.pulls[3].worth.bandThen < forecast.pulls[0].worth.bandThen);
        QVERIFY(forecast.pulls[0].worth.bandThen > 0.9 * forecast.pulls[0].worth.bandNow);
    }
    /// ML.A.901: the review of papers falls due sooner here, and pulls no fabric.
    void theNextTestIsThatOfTheFabric() {
        Scratch scratch;
        posted(
            *scratch.record,
            R"({"entry":"item.entered","on":"2024-01-01","item":"E1","kind":"envelope","type":"T-77","made":"2020-05"}
{"entry":"balloon.entered","on":"2024-01-01","balloon":"QE-ONE"}
{"entry":"item.fitted","on":"2024-01-01","balloon":"QE-ONE","item":"E1"}
{"entry":"programme.adopted","on":"2024-01-01","programme":"part-ml-hot-air","balloons":["QE-ONE"]}
{"entry":"requirement.done","on":"2024-02-01","item":"E1","requirement":"ml.arc-review"}
{"entry":"requirement.done","on":"2024-06-10","item":"E1","requirement":"ml.inspection"}
{"entry":"flight.logged","on":"2024-07-10","balloon":"QE-ONE","minutes":1200})");
        const auto ahead = aheadOf(*scratch.record, ItemId("E1"), day("2024-08-15")).value();
        QCOMPARE(ahead.day, day("2025-06-10"));
        QVERIFY(ahead.hours > Hours(0) &&
                ahead.hours <= Hours(80)); // a hundred hours less the twenty that were flown since
    }
    void lowerPanelsLastLonger() {
        const auto fit = fitted(made({}, 2));
        const auto crown = panelForecast(fit, 0, 10, Hours(150));
        const auto mouth = panelForecast(fit, 0, 1, Hours(150));
        QVERIFY(crown.value.middle < mouth.value.middle);
        QVERIFY(panelForecast(fit, 0, 10, Hours(0)).value.middle > crown.value.middle);
    }
    void permeabilityIsToldTurnedBack() {
        auto record = made({}, 3);
        record->channel.quantity = "air-permeability";
        record->channel.rises = true;
        // What fell from 100 to 30 is told as what rose from 0.01 to 1/30 of the unit.
        for (auto& envelope : record->envelopes)
            envelope.limit = record->channel.figure(1.0 / 30);
        const auto fit = fitted(record);
        const auto panel = panelForecast(fit, 0, 10, Hours(0));
        QVERIFY(panel.value.low < panel.value.middle && panel.value.middle < panel.value.high);
        QVERIFY(std::abs(panel.value.middle - std::exp(0.8) / 100) < 0.001);
        QVERIFY(panelForecast(fit, 0, 10, Hours(100)).value.middle > panel.value.middle);
    }
    void aFitIsCarriedOnForNewReadingsOfOneSet() {
        const auto whole = made({}, 4);
        const auto fit = fitted(whole);
        // Another day, the same readings: the same draws.
        auto later = std::make_shared<FabricRecord>(*whole);
        later->on = day("2026-07-01");
        const auto same = refitted(fit, later);
        QVERIFY(same && same->posterior.phi == fit.posterior.phi);
        // One more reading, in the middle of the fleet.
        auto more = std::make_shared<FabricRecord>(*whole);
        const auto at = static_cast<std::ptrdiff_t>(5 * 8 + 8);
        more->fleet.readings.insert(more->fleet.readings.begin() + at,
                                    {5, 420, 1, 0, {Seen::Exactly, std::log(42.0), 0}});
        more->readings.insert(
            more->readings.begin() + at,
            {EntryId("new"), day("2026-05-30"), {1, 10}, Figure(42, *unitNamed("N")), false, Judgement::Passes});
        const auto carried = refitted(fit, more);
        QVERIFY(carried);
        const auto anew = fitted(more);
        const auto life = [&](const FabricFit& of) {
            return bandOf(livesOf(of.posterior, 5, std::log(30.0), {420, 0, 0}));
        };
        QVERIFY2(std::abs(life(*carried).middle / life(anew).middle - 1) < 0.03,
                 qPrintable(QStringLiteral("%1 %2").arg(life(*carried).middle).arg(life(anew).middle)));
        // A corrected reading is another fleet.
        auto corrected = std::make_shared<FabricRecord>(*whole);
        corrected->fleet.readings[3].observed.low += 0.1;
        QVERIFY(!refitted(fit, corrected));
        auto fewer = std::make_shared<FabricRecord>(before(*whole, day("2026-05-01")));
        QVERIFY(fewer->readings.size() < whole->readings.size());
        QVERIFY(!refitted(fit, fewer));
    }
    void itStopsWhenAsked() {
        std::stop_source stop;
        stop.request_stop();
        QVERIFY(!fitOf(made({}, 5), 1, stop.get_token()).value().has_value());
        QVERIFY(!pastScore(*made({}, 5), 1, stop.get_token()).value().has_value());
    }
    void aFastLotStandsOutAndGoodOnesDoNot() {
        Made making;
        making.envelopes = 24;
        making.fastLot = 2;
        making.fastBy = 1.7;
        const auto fit = fitted(made(making, 6));
        const auto all = lotsOf(fit);
        QCOMPARE(all.size(), std::size_t{1});
        QVERIFY(all[0].smallestDetectableRatio && *all[0].smallestDetectableRatio < 1.7);
        const auto& first = all[0].lots.front();
        QCOMPARE(fit.record->lots[first.lot], std::string("L2"));
        QVERIFY(first.standing == LotStanding::Watch || first.standing == LotStanding::Alarm);
        QVERIFY(first.pace && first.pace->ratio.low > 1.3);
        for (std::size_t at = 1; at < all[0].lots.size(); ++at)
            QCOMPARE(all[0].lots[at].standing, LotStanding::AsOthers);
        QCOMPARE(first.envelopes, std::size_t{4});
        QCOMPARE(first.readings, std::size_t{32});
    }
    void panelsOfUnknownLotsAreNoLot() {
        auto record = made({}, 7);
        record->lots[0].clear();
        record->lots[1].clear();
        QVERIFY(!lotsOf(fitted(record))[0].smallestDetectableRatio); // four lots are left
    }
    void theScoreIsOfWhatWasKnownBefore() {
        // Faster, so that some tests of the last years fail.
        Made making;
        making.slope = 0.29;
        const auto score = pastScore(*made(making, 8)).value().value();
        QVERIFY(score.count > 40 && score.came > 3);
        QVERIFY2(score.brier < score.baseRate,
                 qPrintable(QStringLiteral("%1 %2").arg(score.brier).arg(score.baseRate)));
        const auto none = pastScore(before(*made(making, 8), day("2000-01-01"))).value().value();
        QCOMPARE(none.count, std::size_t{0});
    }
};

CROWNRING_TEST(FabricForecastTest, QCoreApplication)

}

#include "fabric_forecast_test.moc"
