// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A random walk of the shape and of one factor for all slopes, with the full strengths integrated out: the full
/// strengths of held tests remember the line that they were drawn about, and would let all slopes creep only.

#include "fabric/likelihood/ageing_state.h"
#include "fabric/likelihood/fleet_columns.h"
#include "fabric/numeric/random_walk.h"
#include "fabric/sampler/ageing_prior.h"

#include <vector>

namespace crownring {

class CommonMove {
public:
    /// With `phiFree` false phi stays where it is.
    CommonMove(const FleetColumns& fleet, const AgeingPrior& prior, bool phiFree);

    /// `ages` are those of the state's shape, and follow it.
    void walk(Draws& draws, bool learning, AgeingState& state, std::vector<double>& ages);

private:
    using Vector = RandomWalk<3>::Vector;

    [[nodiscard]] Vector positionOf(const AgeingState& state) const;
    [[nodiscard]] AgeingState moved(const AgeingState& state, const Vector& by) const;
    [[nodiscard]] double lnPrior(const AgeingState& state) const;

    const FleetColumns& m_fleet;
    const AgeingPrior& m_prior;
    bool m_phiFree;
    RandomWalk<3> m_walk;
    std::vector<double> m_ages;
};

}
