// SPDX-License-Identifier: GPL-3.0-or-later

/// The visits of one balloon, against every plan there is. All figures are made up.

#include "fabric/numeric/draws.h"
#include "forecast/visits/visit_plan.h"
#include "test_class.h"

#include <QElapsedTimer>
#include <QtTest>

#include <algorithm>
#include <cmath>
#include <limits>

namespace visit_plan_test {

using namespace crownring;

namespace {

constexpr double never = std::numeric_limits<double>::infinity();

VisitTask task(int latest, int every, int weeks, double weekWasted = 0, double cost = 0, int window = 0) {
    return {latest, std::vector<int>(static_cast<std::size_t>(weeks), every), window, cost, weekWasted};
}

/// Every set of tasks in every week.
double leastOfAll(const VisitQuestion& question, int week, const std::vector<int>& latest) {
    if (week == static_cast<int>(question.weeks.size()))
        return 0;
    double least = never;
    const auto& visit = question.weeks[static_cast<std::size_t>(week)];
    for (unsigned done = 0; done < 1U << latest.size(); ++done) {
        if (done != 0 && !visit)
            break;
        double cost = done == 0 ? 0 : *visit;
        auto after = latest;
        bool holds = true;
        for (std::size_t each = 0; each < latest.size(); ++each) {
            const bool isDone = (done >> each & 1U) != 0;
            for (const auto& pin : question.pins)
                holds = holds && (pin.week != week || pin.task != each || isDone);
            if (isDone) {
                const auto& its = question.tasks[each];
                const int lasts = its.lasts[static_cast<std::size_t>(week)];
                cost += its.cost + its.weekWasted * (latest[each] - week);
                const bool keeps = its.window > 0 && latest[each] - week <= its.window;
                after[each] = keeps ? latest[each] + lasts : week + lasts;
            } else if (latest[each] <= week) {
                holds = false;
            }
        }
        if (holds)
            least = std::min(least, cost + leastOfAll(question, week + 1, after));
    }
    return least;
}

double leastOfAll(const VisitQuestion& question) {
    std::vector<int> latest;
    for (const auto& each : question.tasks)
        latest.push_back(each.latest);
    return leastOfAll(question, 0, latest);
}

/// What the plan says that it costs, and that nothing in it is late, told by going through it.
double costOf(const VisitPlan& plan, const VisitQuestion& question) {
    std::vector<int> latest;
    for (const auto& each : question.tasks)
        latest.push_back(each.latest);
    double cost = 0;
    for (const auto& visit : plan.visits) {
        cost += question.weeks.at(static_cast<std::size_t>(visit.week)).value();
        for (const auto each : visit.covers) {
            if (visit.week > latest[each])
                return never;
            cost += costOfDoing(question.tasks[each], visit.week, latest[each]);
            latest[each] = latestAfter(question.tasks[each], visit.week, latest[each]);
        }
    }
    const auto weeks = static_cast<int>(question.weeks.size());
    return std::ranges::all_of(latest, [&](int each) { return each >= weeks; }) ? cost : never;
}

VisitQuestion randomQuestion(Draws& draws, bool withPin) {
    const auto below = [&](int end) { return static_cast<int>(draws.uniform() * end); };
    VisitQuestion question;
    const int tasks = 1 + below(3);
    const int weeks = tasks == 3 ? 4 + below(2) : 5 + below(3);
    for (int week = 0; week < weeks; ++week)
        question.weeks.push_back(below(4) == 0 ? std::optional<double>() : std::optional<double>(1 + below(12)));
    for (int each = 0; each < tasks; ++each) {
        VisitTask made{below(weeks + 1), {}, below(3), static_cast<double>(below(5)), below(7) / 2.0};
        for (int week = 0; week < weeks; ++week)
            made.lasts.push_back(1 + below(weeks));
        question.tasks.push_back(made);
    }
    if (withPin)
        question.pins.push_back({static_cast<std::size_t>(below(tasks)), below(weeks)});
    return question;
}

}

class VisitPlanTest : public QObject {
    Q_OBJECT

private slots:
    /// The example at the head of visit_plan.h.
    void twoThingsAreDoneInOneVisitWhereThatIsCheaper() {
        const VisitQuestion question{
            std::vector<std::optional<double>>(52, 400.0), {task(9, 52, 52, 5), task(30, 104, 52, 5)}, {}};
        const auto plan = cheapestPlan(question).value();
        QCOMPARE(plan.cost, 505.0);
        QVERIFY((plan.visits == std::vector<PlannedVisit>{{9, {0, 1}, 505}}));
        QCOMPARE(planWhenDue(question)->cost, 800.0);
    }
    void lifeThrownAwayMayCostMoreThanAVisit() {
        const VisitQuestion question{
            std::vector<std::optional<double>>(52, 400.0), {task(9, 52, 52, 5), task(30, 104, 52, 25)}, {}};
        QCOMPARE(cheapestPlan(question)->visits.size(), std::size_t{2});
        QCOMPARE(cheapestPlan(question)->cost, 800.0);
    }
    void nothingIsPlannedWhereTheStationIsClosed() {
        VisitQuestion question{std::vector<std::optional<double>>(20, 100.0), {task(9, 52, 20, 1)}, {}};
        for (std::size_t week = 5; week < 15; ++week)
            question.weeks[week].reset();
        const auto plan = cheapestPlan(question).value();
        QCOMPARE(plan.visits.front().week, 4);
        QCOMPARE(plan.cost, 105.0);
        question.tasks.front().latest = 3;
        for (std::size_t week = 0; week < 5; ++week)
            question.weeks[week].reset();
        QVERIFY(!cheapestPlan(question) && !planWhenDue(question));
    }
    /// A review within 90 days keeps its pattern: done early it loses nothing.
    void withinItsWindowNothingIsLost() {
        const VisitQuestion question{
            std::vector<std::optional<double>>(60, 100.0), {task(10, 20, 60, 0, 10, 13), task(5, 60, 60, 1)}, {}};
        const auto plan = cheapestPlan(question).value();
        QCOMPARE(plan.visits.front(), (PlannedVisit{5, {0, 1}, 110}));
        QCOMPARE(latestAfter(question.tasks[0], 5, 10), 30);
        QCOMPARE(latestAfter(question.tasks[1], 5, 10), 65);
    }
    void whereNothingIsDueNothingIsPlanned() {
        const VisitQuestion question{std::vector<std::optional<double>>(10, 100.0), {task(10, 5, 10)}, {}};
        QVERIFY(cheapestPlan(question)->visits.empty());
        QCOMPARE(cheapestPlan(VisitQuestion{question.weeks, {}, {}})->cost, 0.0);
    }
    void whatIsPinnedIsDoneThen() {
        VisitQuestion question{std::vector<std::optional<double>>(20, 100.0), {task(9, 52, 20, 1)}, {}};
        question.pins.push_back({0, 6});
        const auto plan = cheapestPlan(question).value();
        QCOMPARE(plan.visits, (std::vector<PlannedVisit>{{6, {0}, 103}}));
        question.pins.front().week = 12; // too late for the limit, so it is done before, and again
        QCOMPARE(cheapestPlan(question)->visits.size(), std::size_t{2});
        question.weeks[12].reset();
        QVERIFY(!cheapestPlan(question));
    }

    /// The goal: equal to exhaustive search on 500 random small cases.
    void itIsTheCheapestOfAll() {
        Draws draws(20261130);
        int feasible = 0;
        for (int nth = 0; nth < 500; ++nth) {
            const auto question = randomQuestion(draws, nth % 3 == 0);
            const auto plan = cheapestPlan(question);
            const double least = leastOfAll(question);
            QCOMPARE(plan.has_value(), least < never);
            if (!plan)
                continue;
            ++feasible;
            QVERIFY2(std::abs(plan->cost - least) < 1e-9, qPrintable(QString::number(nth)));
            QVERIFY(std::abs(costOf(*plan, question) - plan->cost) < 1e-9);
        }
        QVERIFY(feasible > 200);
    }
    void aPinNeverMakesItCheaperNorDoesDoingEachThingWhenItIsDue() {
        Draws draws(7);
        for (int nth = 0; nth < 300; ++nth) {
            auto question = randomQuestion(draws, true);
            const auto pinned = cheapestPlan(question);
            question.pins.clear();
            const auto free = cheapestPlan(question);
            QVERIFY(!pinned || (free && free->cost <= pinned->cost + 1e-9));
            const auto whenDue = planWhenDue(question);
            QVERIFY(!whenDue || (free && free->cost <= whenDue->cost + 1e-9));
            if (whenDue)
                QVERIFY(std::abs(costOf(*whenDue, question) - whenDue->cost) < 1e-9);
        }
    }

    /// Two years of a balloon with what is usual on one.
    void twoYearsOfABalloonAreQuick() {
        VisitQuestion question{std::vector<std::optional<double>>(104, 350.0),
                               {task(12, 52, 104, 4, 300), task(20, 52, 104, 2, 150, 13), task(31, 26, 104, 3, 120),
                                task(45, 52, 104, 5, 200), task(80, 260, 104, 1, 90), task(60, 520, 104, 1, 60)},
                               {}};
        for (std::size_t week = 18; week < 36; ++week)
            question.weeks[week].reset(); // the season
        QElapsedTimer timer;
        timer.start();
        const auto plan = cheapestPlan(question).value();
        QVERIFY(plan.cost < planWhenDue(question)->cost);
        QVERIFY(std::abs(costOf(plan, question) - plan.cost) < 1e-9);
        QVERIFY2(timer.elapsed() < 20'000, qPrintable(QString::number(timer.elapsed()))); // under the sanitizers
    }
};

CROWNRING_TEST(VisitPlanTest)

}

#include "visit_plan_test.moc"
