// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/visits/plan_choice.h"

#include <coin/Cbc_C_Interface.h>
#include <coin/Clp_C_Interface.h>

#include <algorithm>
#include <array>
#include <string>

namespace crownring {

struct PlanChoice::Model {
    std::size_t balloons;
    std::vector<double> least, most; ///< of each row: a plan a balloon, then places
    std::vector<double> costs;
    std::vector<std::size_t> ofBalloon;
    std::vector<CoinBigIndex> begins{0};
    std::vector<int> rows;
    std::vector<double> ones;
    Clp_Simplex* linear = Clp_newModel();

    Model(std::size_t count, std::span<const int> places) : balloons(count), least(count, 1), most(count, 1) {
        least.resize(count + places.size(), 0);
        most.insert(most.end(), places.begin(), places.end());
        Clp_setLogLevel(linear, 0);
        Clp_resize(linear, static_cast<int>(least.size()), 0);
        Clp_chgRowLower(linear, least.data());
        Clp_chgRowUpper(linear, most.data());
    }
    Model(const Model&) = delete;
    Model& operator=(const Model&) = delete;
    ~Model() { Clp_deleteModel(linear); }
};

PlanChoice::PlanChoice(std::size_t balloons, std::span<const int> places)
    : m_model(std::make_unique<Model>(balloons, places)) {}
PlanChoice::~PlanChoice() = default;
PlanChoice::PlanChoice(PlanChoice&&) noexcept = default;
PlanChoice& PlanChoice::operator=(PlanChoice&&) noexcept = default;

void PlanChoice::add(std::size_t balloon, double cost, std::span<const std::size_t> takes) {
    auto& its = *m_model;
    const auto first = its.rows.size();
    its.rows.push_back(static_cast<int>(balloon));
    for (const auto place : takes)
        its.rows.push_back(static_cast<int>(its.balloons + place));
    its.ones.resize(its.rows.size(), 1);
    its.begins.push_back(static_cast<CoinBigIndex>(its.rows.size()));
    its.costs.push_back(cost);
    its.ofBalloon.push_back(balloon);
    const double none = 0;
    const double all = 1;
    const std::array<CoinBigIndex, 2> starts{0, static_cast<CoinBigIndex>(its.rows.size() - first)};
    Clp_addColumns(its.linear, 1, &none, &all, &cost, starts.data(), its.rows.data() + first, its.ones.data() + first);
}

PlanChoice::Prices PlanChoice::prices() {
    auto* linear = m_model->linear;
    Clp_primal(linear, 0);
    Prices prices{Clp_objectiveValue(linear), {}, {}};
    const std::span<const double> rows(Clp_dualRowSolution(linear), m_model->least.size());
    prices.balloon.assign(rows.begin(), rows.begin() + static_cast<std::ptrdiff_t>(m_model->balloons));
    for (const auto price : rows.subspan(m_model->balloons))
        prices.place.push_back(std::max(-price, 0.0));
    return prices;
}

std::vector<std::size_t> PlanChoice::whole(double enough) const {
    const auto& its = *m_model;
    auto* model = Cbc_newModel();
    Cbc_setLogLevel(model, 0);
    const std::vector<double> none(its.costs.size(), 0);
    const std::vector<double> all(its.costs.size(), 1);
    Cbc_loadProblem(model, static_cast<int>(its.costs.size()), static_cast<int>(its.least.size()), its.begins.data(),
                    its.rows.data(), its.ones.data(), none.data(), all.data(), its.costs.data(), its.least.data(),
                    its.most.data());
    for (std::size_t plan = 0; plan < its.costs.size(); ++plan)
        Cbc_setInteger(model, static_cast<int>(plan));
    // Nodes and not seconds: the same answer on every machine.
    Cbc_setParameter(model, "allowableGap", std::to_string(enough).c_str());
    Cbc_setParameter(model, "maxNodes", "500");
    Cbc_setParameter(model, "logLevel", "0");
    Cbc_solve(model);
    std::vector<std::size_t> chosen;
    if (Cbc_getNumCols(model) > 0 && !Cbc_isProvenInfeasible(model)) {
        const std::span<const double> solution(Cbc_getColSolution(model), its.costs.size());
        chosen.assign(its.balloons, its.costs.size());
        for (std::size_t plan = 0; plan < its.costs.size(); ++plan)
            if (solution[plan] > 0.5)
                chosen[its.ofBalloon[plan]] = plan;
    }
    Cbc_deleteModel(model);
    return chosen;
}

}
