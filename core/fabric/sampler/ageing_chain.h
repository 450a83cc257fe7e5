// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fabric/sampler/common_move.h"
#include "fabric/sampler/line_tree.h"
#include "fabric/sampler/set_walk.h"
#include "fabric/sampler/spread_walk.h"
#include "fabric/sampler/tree_walk.h"

namespace crownring {

/// One chain of Gibbs' sampler with data augmentation (Chib 1992, Journal of Econometrics 51:79-99): after enough
/// sweeps its states are draws from the posterior. It keeps references to the fleet and the prior.
class AgeingChain {
public:
    /// Starts from a draw of the prior, drawn in to where the arithmetic is safe, so that chains start apart.
    AgeingChain(const FleetColumns& fleet, const AgeingPrior& prior, bool phiFree, std::uint64_t seed,
                std::uint32_t number);

    /// While `learning` the widths of random walks are learnt, and the states are no draws yet.
    void sweep(bool learning);

    [[nodiscard]] const AgeingState& state() const { return m_state; }

private:
    void move(bool learning);
    void drawScatter();

    const FleetColumns& m_fleet;
    const AgeingPrior& m_prior;
    Draws m_draws;
    AgeingState m_state, m_before;
    std::vector<double> m_ages;
    std::vector<double> m_latent, m_latentCoupons;
    TestedLines m_tested;
    LineTree m_tree;
    TreeWalk m_walk;
    CommonMove m_common;
    SetWalk m_sets;
    SpreadWalk m_spreads;
};

}
