// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Random walks of the shape and of the four spreads of lots and sets with all lines integrated out: given the lines
/// these hardly move, since a small spread holds its lines together and they hold it small. Each proposal brings new
/// lines, drawn from the tree, and is refused where they are outside the cut (van Dyk and Park 2008, Journal of the
/// American Statistical Association 103:790-796).

#include "fabric/numeric/random_walk.h"
#include "fabric/sampler/line_tree.h"

#include <array>

namespace crownring {

class TreeWalk {
public:
    /// With `phiFree` false phi stays where it is.
    TreeWalk(const FleetColumns& fleet, const AgeingPrior& prior, bool phiFree);

    /// Walks given the full strengths; `ages` and `tested` are those of the state, and follow it.
    void walk(Draws& draws, const std::vector<double>& latent, const std::vector<double>& latentCoupons, bool learning,
              AgeingState& state, std::vector<double>& ages, TestedLines& tested, LineTree& tree);

private:
    void walkShape(Draws& draws, const std::vector<double>& latent, const std::vector<double>& latentCoupons,
                   bool learning, AgeingState& state, std::vector<double>& ages, TestedLines& tested, LineTree& tree);
    void walkSpread(Draws& draws, std::size_t which, bool learning, AgeingState& state, const TestedLines& tested,
                    LineTree& tree);

    const FleetColumns& m_fleet;
    const AgeingPrior& m_prior;
    bool m_phiFree;
    double m_lnDensity = 0; ///< of the state, as `LineTree::gather` gives it
    RandomWalk<2> m_shape;
    std::array<RandomWalk<1>, 4> m_spreads;
    std::vector<double> m_ages;
    TestedLines m_tested;
};

}
