// SPDX-License-Identifier: GPL-3.0-or-later

/// What somebody states overrides what the log says.

#include "forecast/flown_logs.h"
#include "test_class.h"

#include <QtTest>

#include <array>
#include <cmath>

namespace plan_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

const UseLog& log() {
    static const auto flown = flownLog("2021-01-01", "2025-12-31", everyFourthDay);
    return flown;
}

UseAhead planned(std::span<const StatedPlan> plans) { return aheadOf(log(), patternOf({log()}), plans); }

double julyHours(const UseAhead& ahead) {
    return hours(ahead.between(dayOf("2026-07-01"), dayOf("2026-07-31"), UseClock::Minutes));
}

}

class PlanTest : public QObject {
    Q_OBJECT

private slots:
    void inAPauseNothingIsFlown() {
        const std::array plans{StatedPlan{dayOf("2026-07-01"), dayOf("2026-07-31"), 0, {}}};
        const auto ahead = planned(plans);
        QCOMPARE(julyHours(ahead), 0.0);
        QCOMPARE(ahead.between(dayOf("2026-07-01"), dayOf("2026-07-31"), UseClock::Minutes).quantile(0.9), 0.0);
        const auto usual = planned({});
        QCOMPARE(hours(ahead.between(dayOf("2026-08-01"), dayOf("2026-08-31"), UseClock::Minutes)),
                 hours(usual.between(dayOf("2026-08-01"), dayOf("2026-08-31"), UseClock::Minutes)));
    }
    void aShareOfTheUsualPaceIsThat() {
        const std::array plans{StatedPlan{dayOf("2026-07-01"), dayOf("2026-07-31"), 2, {}}};
        QVERIFY(std::abs(julyHours(planned(plans)) / julyHours(planned({})) - 2) < 1e-9);
    }
    /// A festival of ten flights a week for a week, in a month that has 24 other days.
    void soManyFlightsAWeekAreThose() {
        const std::array plans{StatedPlan{dayOf("2026-07-06"), dayOf("2026-07-12"), {}, 10}};
        const double usual = julyHours(planned({}));
        QVERIFY(std::abs(julyHours(planned(plans)) - (usual * 24 / 31 + 10)) < 0.01);
    }
    /// A plan states how much will be flown: how its owner's habits change from year to year widens it no more.
    void whatIsPlannedIsBetterKnownThanWhatIsUsual() {
        const auto unsteady = flownLog("2021-01-01", "2025-12-31", [](CivilDate day) {
            return everyFourthDay(day) * (day.year() % 2 == 0 ? 1 : 3);
        });
        const auto fleet = patternOf({unsteady});
        const auto year = [](const UseAhead& ahead) { return ahead.upTo(dayOf("2026-12-31"), UseClock::Minutes); };
        const auto usual = year(aheadOf(unsteady, fleet));
        const std::array plans{StatedPlan{dayOf("2026-01-01"), dayOf("2026-12-31"), {}, usual.mean() / 60 * 7 / 365}};
        const auto told = year(aheadOf(unsteady, fleet, plans));
        QVERIFY(std::abs(told.mean() - usual.mean()) < 1);
        QVERIFY(told.quantile(0.9) - told.quantile(0.1) < 0.8 * (usual.quantile(0.9) - usual.quantile(0.1)));
    }
    /// Two hours on a Saturday of a month of which the rest is as usual, and a little above them is all but unsure.
    void aFlightThatIsPlannedIsFlownOnItsDayAndNothingElseIs() {
        const auto saturday = dayOf("2026-07-04");
        const std::array plans{StatedPlan{saturday, saturday, {}, {}, Usage{Minutes(120), Landings(2), Inflations(1)}}};
        const auto ahead = planned(plans);
        const auto onTheDay = [&](UseClock clock) { return ahead.between(saturday, saturday, clock); };
        QCOMPARE(onTheDay(UseClock::Minutes).quantile(0.1), 120.0);
        QCOMPARE(onTheDay(UseClock::Minutes).quantile(0.9), 120.0);
        QCOMPARE(onTheDay(UseClock::Landings).mean(), 2.0);
        QCOMPARE(onTheDay(UseClock::Minutes).chanceOfNone(), 0.0);
        QVERIFY(std::abs(julyHours(ahead) - (julyHours(planned({})) * 30 / 31 + 2)) < 0.01);
        // What leaves just these two hours is used up that day, whatever else is flown, and not for certain before.
        QVERIFY(ahead.reached(UseClock::Minutes, 120, 0.999) <= saturday);
    }
    void theLaterOfTwoPlansHolds() {
        const std::array plans{StatedPlan{dayOf("2026-06-01"), dayOf("2026-08-31"), 0, {}},
                               StatedPlan{dayOf("2026-07-01"), dayOf("2026-07-31"), 1, {}}};
        const auto ahead = planned(plans);
        QVERIFY(std::abs(julyHours(ahead) - julyHours(planned({}))) < 1e-9);
        QCOMPARE(hours(ahead.between(dayOf("2026-06-01"), dayOf("2026-06-30"), UseClock::Minutes)), 0.0);
    }
    /// Sold on the first of March: what is left is never used up.
    void whatIsSoldUsesNothingUp() {
        const std::array plans{StatedPlan{dayOf("2026-03-01"), CivilDate::last(), 0, {}}};
        const auto ahead = planned(plans);
        QVERIFY(!ahead.reached(UseClock::Minutes, 6000, 0.5));
        QVERIFY(ahead.reached(UseClock::Minutes, 300, 0.5) < dayOf("2026-03-01"));
    }
};

CROWNRING_TEST(PlanTest)

}

#include "plan_test.moc"
