// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fabric/likelihood/ageing_state.h"
#include "fabric/likelihood/fleet_columns.h"
#include "fabric/numeric/random_walk.h"

#include <vector>

namespace crownring {

/// A random walk of each set's own line with the full strengths of its tests integrated out. Where all that is known is
/// that tests held, full strengths say more than the tests did, and a line drawn from them moves in small steps only.
class SetWalk {
public:
    explicit SetWalk(const FleetColumns& fleet);

    /// `ages` are those of the state's shape.
    void walk(Draws& draws, const std::vector<double>& ages, bool learning, AgeingState& state);

private:
    const FleetColumns& m_fleet;
    std::vector<RandomWalk<2>> m_walks; ///< one for each set
};

}
