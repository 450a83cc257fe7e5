// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/visits/fleet_plan.h"

#include "forecast/visits/plan_choice.h"
#include "forecast/visits/visit_plan.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <functional>
#include <span>
#include <thread>
#include <utility>

namespace crownring {

namespace {

/// Of what the visits cost, without what being late counts for: how far the bound may be below what parts of plans
/// cost.
constexpr double nearEnough = 5e-4;
constexpr double wholeEnough = 1e-4;
constexpr int mostRounds = 200;
constexpr int mostStuck = 2; ///< rounds in which rough searches make it no cheaper
constexpr int mostTurns = 4; ///< of each balloon, once all have a plan
/// How far prices stay with those that gave the best bound: else they leap, as long as there are few plans.
constexpr double steadiness = 0.6;

/// A plan of one balloon, with the places that it takes.
struct Column {
    VisitPlan plan;
    double weighed = 0;
    std::vector<std::size_t> takes;

    [[nodiscard]] double at(std::span<const double> prices) const {
        double cost = weighed;
        for (const auto place : takes)
            cost += prices[place];
        return cost;
    }
};

/// Work that is the same in any order, on all cores.
void onAllCores(std::size_t count, const std::function<void(std::size_t)>& work) {
    std::atomic<std::size_t> next = 0;
    const auto some = [&] {
        for (auto nth = next++; nth < count; nth = next++)
            work(nth);
    };
    std::vector<std::jthread> others;
    for (std::size_t core = 1; core < std::min<std::size_t>(std::thread::hardware_concurrency(), count); ++core)
        others.emplace_back(some);
    some();
}

class FleetPlanning {
public:
    FleetPlanning(const FleetQuestion& question, const std::stop_token& stop)
        : m_question(question), m_stop(stop), m_places(placesOf(question)),
          m_choice(question.balloons.size(), m_places), m_columns(question.balloons.size()) {
        for (const auto& balloon : question.balloons)
            m_searches.emplace_back(balloon);
    }

    std::optional<FleetPlan> plan() {
        if (m_question.balloons.empty())
            return FleetPlan{};
        if (!begin())
            return std::nullopt;
        generate();
        if (m_stop.stop_requested())
            return std::nullopt;
        FleetPlan plan;
        double weighed = 0;
        for (std::size_t balloon = 0; const auto& column : wholePlan()) {
            plan.plans.push_back(column.plan);
            plan.cost += column.plan.cost;
            plan.late += column.plan.late;
            weighed += column.plan.weighed(m_question.balloons[balloon++]);
        }
        plan.bound = m_bound;
        plan.gap =
            weighed - m_bound <= 1e-6 * std::max(weighed, 1.0) ? 0 : (weighed - m_bound) / std::max(plan.cost, 1e-9);
        return plan;
    }

private:
    using Choice = std::vector<Column>; ///< by balloon
    using Effort = VisitSearch::Effort;

    static std::vector<int> placesOf(const FleetQuestion& question) {
        std::vector<int> places;
        for (const auto& station : question.atOnce)
            places.insert(places.end(), station.begin(), station.end());
        return places;
    }
    [[nodiscard]] std::size_t placeOf(std::size_t station, int week) const {
        return station * m_question.atOnce.front().size() + static_cast<std::size_t>(week);
    }
    [[nodiscard]] Column columnOf(std::size_t balloon, VisitPlan plan) const {
        Column column{std::move(plan), 0, {}};
        column.weighed = column.plan.weighed(m_question.balloons[balloon]);
        for (const auto& visit : column.plan.visits)
            column.takes.push_back(placeOf(visit.station, visit.week));
        return column;
    }
    void add(std::size_t balloon, Column column) {
        m_choice.add(balloon, column.weighed, column.takes);
        m_order.emplace_back(balloon, m_columns[balloon].size());
        m_columns[balloon].push_back(std::move(column));
    }

    /// The cheapest of each balloon as if it were alone; plans that fit together whatever they cost, those without a
    /// visit that is not pinned; and from these one balloon after the other as it is cheapest beside the others.
    bool begin() {
        std::vector<int> taken(m_places.size(), 0);
        Choice least;
        for (std::size_t balloon = 0; balloon < m_searches.size(); ++balloon) {
            auto pinned = m_question.balloons[balloon];
            std::erase_if(pinned.stops, [&](const Stop& stop) {
                return std::ranges::find(pinned.pins, stop.week) == pinned.pins.end();
            });
            auto plan = cheapestPlan(pinned);
            if (!plan)
                return false;
            least.push_back(columnOf(balloon, std::move(*plan)));
            for (const auto place : least.back().takes)
                if (++taken[place] > m_places[place])
                    return false;
        }
        std::vector<VisitSearch::Found> alone(m_searches.size());
        onAllCores(m_searches.size(), [&](std::size_t balloon) {
            alone[balloon] = m_searches[balloon].cheapest({}, unreached, Effort::Rough);
        });
        for (std::size_t balloon = 0; balloon < m_searches.size(); ++balloon) {
            m_bound += alone[balloon].bound;
            m_money += alone[balloon].plan ? alone[balloon].plan->cost : 0;
            if (alone[balloon].plan)
                add(balloon, columnOf(balloon, std::move(*alone[balloon].plan)));
            add(balloon, least[balloon]);
        }
        const std::vector<double> free(m_places.size(), 0);
        for (std::size_t balloon = 0; auto& column : inTurn(std::move(least), free, 1))
            add(balloon++, std::move(column));
        return true;
    }

    /// One balloon after the other is planned anew in what the others leave of the places.
    [[nodiscard]] Choice inTurn(Choice choice, std::span<const double> prices, int turns) {
        std::vector<int> left = m_places;
        for (const auto& column : choice)
            for (const auto place : column.takes)
                --left[place];
        for (int turn = 0; turn < turns; ++turn) {
            bool isBetter = false;
            for (std::size_t balloon = 0; balloon < m_searches.size() && !m_stop.stop_requested(); ++balloon) {
                auto& its = choice[balloon];
                for (const auto place : its.takes)
                    ++left[place];
                std::vector<double> costs;
                for (const auto& stop : m_question.balloons[balloon].stops) {
                    const auto place = placeOf(stop.station, stop.week);
                    costs.push_back(left[place] > 0 ? stop.cost + prices[place] : unreached);
                }
                const double before = its.at(prices);
                if (auto found = m_searches[balloon]
                                     .cheapest(costs, before - 1e-7 * std::max(1.0, before), Effort::Rough)
                                     .plan) {
                    its = columnOf(balloon, std::move(*found));
                    isBetter = true;
                }
                for (const auto place : its.takes)
                    --left[place];
            }
            if (!isBetter)
                break;
        }
        return choice;
    }

    void generate() {
        std::vector<double> steady(m_places.size(), 0);
        double calm = steadiness;
        double before = unreached;
        int stuck = 0;
        bool isLast = false;
        for (int round = 0; round < mostRounds && !m_stop.stop_requested(); ++round) {
            const auto prices = m_choice.prices();
            stuck = before - prices.cost <= enough(nearEnough) ? stuck + 1 : 0;
            before = prices.cost;
            const auto effort = stuck >= mostStuck || isLast ? Effort::Exact : Effort::Rough;
            const double bound = m_bound;
            bool isNew = false;
            for (double stay = calm; !isNew && stay >= 0; stay = stay > 0 ? std::max(stay - 0.3, 0.0) : -1) {
                std::vector<double> asked;
                for (std::size_t place = 0; place < m_places.size(); ++place)
                    asked.push_back(stay * steady[place] + (1 - stay) * prices.place[place]);
                isNew = ask(asked, steady, effort);
                if (prices.cost - m_bound <= enough(nearEnough))
                    return;
            }
            if (!isNew && effort == Effort::Exact)
                return;
            isLast = !isNew;
            // Where the bound only follows what the prices were calmed by, they are calmed less.
            const bool follows = m_bound - bound > 0.3 * (prices.cost - bound);
            calm = std::clamp(calm + (follows ? -0.2 : 0.2), 0.0, steadiness);
        }
    }
    [[nodiscard]] double enough(double part) const { return part * m_money; }

    /// Asks each balloon for a plan that is cheaper at these prices than those there are; whether one has one.
    bool ask(const std::vector<double>& prices, std::vector<double>& steady, Effort effort) {
        std::vector<std::optional<Column>> cheaper(m_searches.size());
        std::vector<double> least(m_searches.size());
        onAllCores(m_searches.size(), [&](std::size_t balloon) {
            if (m_stop.stop_requested())
                return;
            std::vector<double> costs;
            for (const auto& stop : m_question.balloons[balloon].stops)
                costs.push_back(stop.cost + prices[placeOf(stop.station, stop.week)]);
            double before = unreached;
            for (const auto& column : m_columns[balloon])
                before = std::min(before, column.at(prices));
            auto found = m_searches[balloon].cheapest(costs, before - 1e-7 * std::max(1.0, std::abs(before)), effort);
            least[balloon] = std::min(found.bound, before);
            if (found.plan)
                cheaper[balloon] = columnOf(balloon, std::move(*found.plan));
        });
        double bound = 0;
        for (std::size_t place = 0; place < m_places.size(); ++place)
            bound -= prices[place] * m_places[place];
        bool isNew = false;
        for (std::size_t balloon = 0; balloon < m_searches.size(); ++balloon) {
            bound += least[balloon];
            if (!cheaper[balloon])
                continue;
            add(balloon, std::move(*cheaper[balloon]));
            isNew = true;
        }
        if (bound > m_bound) {
            m_bound = bound;
            steady = prices;
        }
        return isNew;
    }

    Choice wholePlan() {
        Choice choice;
        const auto chosen = m_choice.whole(enough(wholeEnough));
        for (std::size_t balloon = 0; balloon < m_searches.size(); ++balloon)
            choice.push_back(chosen.empty() ? m_columns[balloon][1]
                                            : m_columns[balloon][m_order[chosen[balloon]].second]);
        const std::vector<double> free(m_places.size(), 0);
        return inTurn(std::move(choice), free, mostTurns);
    }

    const FleetQuestion& m_question;
    const std::stop_token& m_stop;
    std::vector<int> m_places;
    PlanChoice m_choice;
    std::vector<VisitSearch> m_searches;
    std::vector<std::vector<Column>> m_columns;               ///< by balloon
    std::vector<std::pair<std::size_t, std::size_t>> m_order; ///< of all columns: balloon, place in its own
    double m_bound = 0;
    double m_money = 0; ///< what the visits cost if each balloon were alone
};

}

std::optional<FleetPlan> cheapestPlans(const FleetQuestion& question, const std::stop_token& stop) {
    return FleetPlanning(question, stop).plan();
}

}
