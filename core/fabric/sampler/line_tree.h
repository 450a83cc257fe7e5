// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The lines of fabrics, lots, sets and coupons given the full strengths of all tests, the shape and the spreads: a
/// tree of normal densities, in which what the tests say goes up and draws come down.
///
/// The prior is the product of these densities, cut where the slope of any set is not above 0.

#include "fabric/likelihood/ageing_state.h"
#include "fabric/likelihood/fleet_columns.h"
#include "fabric/numeric/draws.h"
#include "fabric/sampler/ageing_prior.h"
#include "fabric/sampler/line_information.h"

#include <vector>

namespace crownring {

/// What the tests of each set, and each coupon, say of their line.
struct TestedLines {
    std::vector<LineInformation> sets;
    std::vector<LineInformation> bolts; ///< of the intercept alone
};

/// Sums over the full strengths `latent` (and those of coupons) at their ages.
void gatherTests(const FleetColumns& fleet, const std::vector<double>& ages, const std::vector<double>& latent,
                 const std::vector<double>& latentCoupons, double scatter, TestedLines& tested);

class LineTree {
public:
    LineTree(const FleetColumns& fleet, const AgeingPrior& prior);

    /// ln density of the full strengths with all lines integrated out, as if nothing were cut and up to a constant.
    double gather(const TestedLines& tested, const Spreads& spreads);

    /// Draws all lines of what was gathered last; whether they are within the cut.
    bool propose(Draws& draws, const TestedLines& tested, const Spreads& spreads);

    /// Puts the lines proposed last into a state.
    void take(AgeingState& state) const;

    /// Draws the lines of a state anew. A fabric's are drawn at once, so that no level drags on another; where that
    /// lands outside the cut, its sets given its lots, and then lots and fabric given the sets.
    void draw(Draws& draws, const TestedLines& tested, AgeingState& state);

private:
    void gatherAbove(const TestedLines& tested, const Spreads& spreads);
    void takeFabrics(AgeingState& state) const;
    void drawSets(Draws& draws, const TestedLines& tested, AgeingState& state) const;
    void drawAboveSets(Draws& draws, const TestedLines& tested, AgeingState& state);

    [[nodiscard]] bool isWithin(std::size_t lot) const { return m_within[m_fleet.fabricOfLot[lot]] != 0; }

    const FleetColumns& m_fleet;
    const AgeingPrior& m_prior;
    std::vector<LineInformation> m_throughSets;
    std::vector<LineInformation> m_ofLots;
    std::vector<LineInformation> m_ofFabrics;
    std::vector<char> m_within; ///< by fabric: whether all slopes of its sets, as proposed, are above 0
    AgeingState m_proposed;
};

}
