// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Of each balloon's plans one, so that no station has more balloons in a week than it takes, at least cost: as a
/// linear programme that says what a place is worth (Clp), and in whole plans (CBC, from Debian: both are COIN-OR's).

#include <cstddef>
#include <memory>
#include <span>
#include <vector>

namespace crownring {

class PlanChoice {
public:
    /// @param places of each week at a station how many balloons it takes
    PlanChoice(std::size_t balloons, std::span<const int> places);
    ~PlanChoice();
    PlanChoice(PlanChoice&&) noexcept;
    PlanChoice& operator=(PlanChoice&&) noexcept;

    /// @param takes places, each once
    void add(std::size_t balloon, double cost, std::span<const std::size_t> takes);

    /// What parts of plans would cost at least; what a balloon costs by it, and a place (0 or more: what one more would
    /// save). @pre every balloon has a plan, and with some choice all places suffice
    struct Prices {
        double cost = 0;
        std::vector<double> balloon;
        std::vector<double> place;
    };
    [[nodiscard]] Prices prices();
    /// By balloon a plan, by its place in the order added: of those there are a choice that costs no more than
    /// `enough` above the cheapest.
    [[nodiscard]] std::vector<std::size_t> whole(double enough) const;

private:
    struct Model;
    std::unique_ptr<Model> m_model;
};

}
