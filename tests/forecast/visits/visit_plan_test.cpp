// SPDX-License-Identifier: GPL-3.0-or-later

/// The visits of one balloon and of small fleets, against every plan there is. All figures are made up.

#include "forecast/visits/every_plan.h"
#include "forecast/visits/made_questions.h"
#include "forecast/visits/visit_plan.h"
#include "test_class.h"

#include <QtTest>

#include <cmath>
#include <map>

namespace visit_plan_test {

using namespace crownring;
using namespace crownring::testing;

namespace {

VisitQuestion everyWeekOpen(int weeks, double cost, std::vector<VisitTask> tasks) {
    VisitQuestion question{weeks, {}, std::move(tasks), 100'000, {}};
    for (int week = 0; week < weeks; ++week)
        question.stops.push_back({week, 0, cost});
    return question;
}
bool isNear(double a, double b) { return std::abs(a - b) < 1e-6; }

}

class VisitPlanTest : public QObject {
    Q_OBJECT

private slots:
    /// The example at the head of visit_plan.h.
    void twoThingsAreDoneInOneVisitWhereThatIsCheaper() {
        const auto question = everyWeekOpen(34, 400, {everyWeeks(9, 52, 34, 0), everyWeeks(30, 26, 34, 130)});
        const auto plan = cheapestPlan(question).value();
        QVERIFY(isNear(plan.cost, 505));
        QCOMPARE(plan.visits.size(), std::size_t{1});
        QCOMPARE(plan.visits.front().week, 9);
        QVERIFY(isNear(planWhenDue(question).cost, 800));
    }
    void lifeThrownAwayMayCostMoreThanAVisit() {
        const auto question = everyWeekOpen(34, 400, {everyWeeks(9, 52, 34, 0), everyWeeks(30, 26, 34, 1300)});
        QVERIFY(isNear(cheapestPlan(question)->cost, 800));
    }
    /// A review within 90 days keeps its pattern: done early it loses nothing.
    void withinItsWindowNothingIsLost() {
        const auto question = everyWeekOpen(40, 100, {keptWithin(13, 17, 52, 40, 500), everyWeeks(5, 52, 40, 60)});
        const auto plan = cheapestPlan(question).value();
        QVERIFY(isNear(plan.cost, 100));
        QCOMPARE(plan.visits.front().week, 5);
    }
    void whatIsLateIsLateByTheFewestWeeks() {
        auto question = everyWeekOpen(20, 100, {everyWeeks(3, 52, 20, 60)});
        std::erase_if(question.stops, [](const Stop& stop) { return stop.week < 8; });
        const auto plan = cheapestPlan(question).value();
        QCOMPARE(plan.visits.front().week, 8);
        QCOMPARE(plan.late, 5);
    }

    /// The goal: equal to exhaustive search on 500 random small cases.
    void itIsTheCheapestOfAll() {
        Draws draws(20261130);
        for (int nth = 0; nth < 500; ++nth) {
            auto question = smallQuestion(draws, {4, 1 + nth % 2, 1 + nth % 3});
            if (nth % 4 == 0 && !question.stops.empty())
                question.pins.push_back(question.stops.front().week);
            const auto plan = cheapestPlan(question);
            const auto least = leastOf(question);
            QCOMPARE(plan.has_value(), least.has_value());
            if (!plan)
                continue;
            const auto weighed = walked(*plan, question);
            QVERIFY2(weighed && isNear(*weighed, *least), qPrintable(QString::number(nth)));
        }
    }
    /// An annual of each of four items that counts for its 100-hour inspection: by themselves the latter would be
    /// bounded as if nobody paid for the annuals.
    void whatCountsForAnotherIsBoundedTogetherWithIt() {
        std::vector<VisitTask> tasks;
        for (int item = 0; item < 4; ++item) {
            tasks.push_back(everyWeeks(20 + 3 * item, 52, 90, 300));
            tasks.push_back(everyWeeks(9 + 4 * item, 22 + item, 90, 150));
            tasks[tasks.size() - 2].implies.push_back(tasks.size() - 1);
        }
        const auto question = everyWeekOpen(90, 500, std::move(tasks));
        const auto plan = cheapestPlan(question).value();
        QVERIFY(walked(plan, question));
        QVERIFY2(plan.bound >= 0.97 * plan.cost && plan.bound <= plan.cost + 1e-6,
                 qPrintable(QStringLiteral("%1 of %2").arg(plan.bound).arg(plan.cost)));
    }
    void aPinNeverMakesItCheaper() {
        Draws draws(7);
        for (int nth = 0; nth < 200; ++nth) {
            auto question = smallQuestion(draws, {6, 2, 3});
            const auto free = cheapestPlan(question);
            if (question.stops.empty())
                continue;
            question.pins.push_back(question.stops[question.stops.size() / 2].week);
            const auto pinned = cheapestPlan(question);
            QVERIFY(pinned && free->weighed(question) <= pinned->weighed(question) + 1e-6);
        }
    }
    void aSmallFleetIsTheCheapestOfAll() {
        Draws draws(2);
        for (int nth = 0; nth < 60; ++nth) {
            const auto fleet = smallFleet(draws, 2 + nth % 2, {3, 1 + nth % 2, 2});
            const auto plan = cheapestPlans(fleet).value();
            const double least = leastOf(fleet).value();
            double weighed = 0;
            for (std::size_t balloon = 0; balloon < fleet.balloons.size(); ++balloon)
                weighed += walked(plan.plans[balloon], fleet.balloons[balloon]).value();
            QVERIFY2(isNear(weighed, least), qPrintable(QString::number(nth)));
            QVERIFY(plan.bound <= least + 1e-4);
        }
    }
    void aFleetIsNotPlannedAnyMoreOnceThatIsStopped() {
        Draws draws(3);
        const auto fleet = largeFleet(draws, 4, 60, 2);
        std::stop_source stop;
        stop.request_stop();
        QVERIFY(!cheapestPlans(fleet, stop.get_token()));
    }
    /// No station takes more than it can, and the gap is within what the issue asks.
    void aFleetSharesItsStations() {
        Draws draws(3);
        const auto fleet = largeFleet(draws, 4, 60, 2);
        const auto plan = cheapestPlans(fleet).value();
        QVERIFY(plan.gap <= 0.01);
        std::map<std::pair<std::size_t, int>, int> taken;
        for (std::size_t balloon = 0; balloon < fleet.balloons.size(); ++balloon) {
            QVERIFY(walked(plan.plans[balloon], fleet.balloons[balloon]));
            for (const auto& visit : plan.plans[balloon].visits) {
                const int now = ++taken[std::pair(visit.station, visit.week)];
                QVERIFY(now <= fleet.atOnce[visit.station][static_cast<std::size_t>(visit.week)]);
            }
        }
    }
};

CROWNRING_TEST(VisitPlanTest)

}

#include "visit_plan_test.moc"
