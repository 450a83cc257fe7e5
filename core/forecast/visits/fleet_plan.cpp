// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/visits/fleet_plan.h"

#include "forecast/visits/plan_choice.h"
#include "forecast/visits/visit_plan.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace crownring {

namespace {

constexpr double nearEnough = 1e-3; ///< of the cost: the bound is no further below what parts of plans cost
constexpr double wholeEnough = 1e-3;
constexpr int mostRounds = 200;

class FleetPlanning {
public:
    explicit FleetPlanning(const FleetQuestion& question)
        : m_question(question), m_choice(question.balloons.size(), placesOf(question)) {
        for (const auto& balloon : question.balloons)
            m_searches.emplace_back(balloon);
    }

    std::optional<FleetPlan> plan() {
        if (m_question.balloons.empty())
            return FleetPlan{};
        if (!begin())
            return std::nullopt;
        generate();
        FleetPlan plan = wholePlan();
        plan.bound = m_bound;
        double weighed = 0;
        for (std::size_t balloon = 0; balloon < plan.plans.size(); ++balloon)
            weighed += plan.plans[balloon].weighed(m_question.balloons[balloon]);
        plan.gap =
            weighed - m_bound <= 1e-6 * std::max(weighed, 1.0) ? 0 : (weighed - m_bound) / std::max(plan.cost, 1e-9);
        return plan;
    }

private:
    static std::vector<int> placesOf(const FleetQuestion& question) {
        std::vector<int> places;
        for (const auto& station : question.atOnce)
            places.insert(places.end(), station.begin(), station.end());
        return places;
    }
    [[nodiscard]] std::size_t placeOf(std::size_t station, int week) const {
        return station * m_question.atOnce.front().size() + static_cast<std::size_t>(week);
    }

    void add(std::size_t balloon, VisitPlan plan) {
        std::vector<std::size_t> takes;
        for (const auto& visit : plan.visits)
            takes.push_back(placeOf(visit.station, visit.week));
        m_choice.add(balloon, plan.weighed(m_question.balloons[balloon]), takes);
        m_plans.push_back(std::move(plan));
    }

    /// Plans that fit together whatever they cost, those without a visit that is not pinned; and the cheapest of each
    /// balloon as if it were alone.
    bool begin() {
        std::vector<int> taken(placesOf(m_question).size(), 0);
        for (std::size_t balloon = 0; balloon < m_searches.size(); ++balloon) {
            auto pinned = m_question.balloons[balloon];
            std::erase_if(pinned.stops, [&](const Stop& stop) {
                return std::ranges::find(pinned.pins, stop.week) == pinned.pins.end();
            });
            auto least = cheapestPlan(pinned);
            auto alone = m_searches[balloon].cheapest();
            if (!least)
                return false;
            for (const auto& visit : least->visits) {
                const auto place = placeOf(visit.station, visit.week);
                if (++taken[place] > m_question.atOnce[visit.station][static_cast<std::size_t>(visit.week)])
                    return false;
            }
            m_bound += alone.bound;
            add(balloon, alone.plan ? std::move(*alone.plan) : *least);
            add(balloon, std::move(*least));
        }
        return true;
    }

    void generate() {
        for (int round = 0; round < mostRounds; ++round) {
            const auto prices = m_choice.prices();
            double bound = 0;
            for (std::size_t place = 0, station = 0; station < m_question.atOnce.size(); ++station)
                for (const auto atOnce : m_question.atOnce[station])
                    bound -= prices.place[place++] * atOnce;
            bool isNew = false;
            for (std::size_t balloon = 0; balloon < m_searches.size(); ++balloon) {
                std::vector<double> costs;
                for (const auto& stop : m_question.balloons[balloon].stops)
                    costs.push_back(stop.cost + prices.place[placeOf(stop.station, stop.week)]);
                const double before = prices.balloon[balloon];
                const double below = before - 1e-7 * std::max(1.0, std::abs(before));
                auto cheaper = m_searches[balloon].cheapest(costs, below);
                bound += std::min(cheaper.bound, before);
                if (!cheaper.plan)
                    continue;
                add(balloon, std::move(*cheaper.plan));
                isNew = true;
            }
            m_bound = std::max(m_bound, bound);
            if (!isNew || prices.cost - m_bound <= nearEnough * std::abs(prices.cost))
                return;
        }
    }

    FleetPlan wholePlan() {
        FleetPlan plan;
        const auto chosen = m_choice.whole(wholeEnough);
        for (std::size_t balloon = 0; balloon < m_searches.size(); ++balloon) {
            plan.plans.push_back(m_plans[chosen.empty() ? 2 * balloon + 1 : chosen[balloon]]);
            plan.cost += plan.plans.back().cost;
            plan.late += plan.plans.back().late;
        }
        return plan;
    }

    const FleetQuestion& m_question;
    PlanChoice m_choice;
    std::vector<VisitSearch> m_searches;
    std::vector<VisitPlan> m_plans; ///< in the order in which they were added
    double m_bound = 0;
};

}

std::optional<FleetPlan> cheapestPlans(const FleetQuestion& question) { return FleetPlanning(question).plan(); }

}
