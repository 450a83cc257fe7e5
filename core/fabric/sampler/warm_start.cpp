// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/sampler/warm_start.h"

#include "fabric/likelihood/effective_age.h"
#include "fabric/numeric/weights.h"
#include "fabric/sampler/line_information.h"
#include "fabric/sampler/test_likelihood.h"

#include <cmath>

namespace crownring {

namespace {

constexpr int moves = 5;

/// One set's readings at the ages of one draw.
class ReadingsOfSet {
public:
    ReadingsOfSet(const FleetColumns& fleet, std::size_t set)
        : m_fleet(fleet), m_from(fleet.firstOfSet[set]), m_to(fleet.firstOfSet[set + 1]), m_ages(m_to - m_from) {}

    void age(const AgeingShape& shape) {
        for (auto r = m_from; r < m_to; ++r)
            m_ages[r - m_from] = agePivot * std::exp(shape.phi * (m_fleet.lnAge[r] - shape.gamma * m_fleet.depth[r]));
    }

    /// ln likelihood of the last `count` of them.
    [[nodiscard]] double lnLikelihoodOfLast(std::size_t count, const Line& line, double scatter) const {
        double sum = 0;
        for (auto r = m_to - count; r < m_to; ++r)
            sum += lnLikelihood(m_fleet.observed[r], line.intercept - line.slope * m_ages[r - m_from], scatter);
        return sum;
    }

    /// What full strengths drawn about this line say of the line.
    [[nodiscard]] LineInformation informationAbout(const Line& line, double scatter, Draws& draws) const {
        const double precision = 1 / (scatter * scatter);
        LineInformation sum;
        for (auto r = m_from; r < m_to; ++r) {
            const double age = m_ages[r - m_from];
            const double full = drawnStrength(draws, m_fleet.observed[r], line.intercept - line.slope * age, scatter);
            sum += {precision, -age * precision, age * age * precision, full * precision, -age * full * precision, 0};
        }
        return sum;
    }

private:
    const FleetColumns& m_fleet;
    std::size_t m_from;
    std::size_t m_to;
    std::vector<double> m_ages;
};

Line lineAt(const LineColumns& columns, std::size_t draw) { return {columns.intercept[draw], columns.slope[draw]}; }

AgeingShape shapeAt(const Posterior& posterior, std::size_t draw) {
    return {posterior.gamma[draw], posterior.phi[draw]};
}

void moveSet(Posterior& posterior, const FleetColumns& fleet, std::size_t set, ReadingsOfSet& readings, Draws& draws) {
    const auto& lots = posterior.lots[fleet.lotOfSet[set]];
    for (std::size_t draw = 0; draw < posterior.draws(); ++draw) {
        const double intercepts = posterior.setIntercept[draw];
        const double slopes = posterior.setSlope[draw];
        readings.age(shapeAt(posterior, draw));
        auto line = lineAt(posterior.sets[set], draw);
        for (int move = 0; move < moves; ++move)
            line = drawnLine(draws, lineAt(lots, draw), {intercepts * intercepts, slopes * slopes},
                             readings.informationAbout(line, posterior.scatter[draw], draws), 0);
        posterior.sets[set].intercept[draw] = line.intercept;
        posterior.sets[set].slope[draw] = line.slope;
    }
}

}

WarmFit warmFit(const Posterior& before, const FleetColumns& fleet, std::size_t set, std::size_t fresh,
                std::uint64_t seed) {
    Draws draws(seed);
    ReadingsOfSet readings(fleet, set);
    std::vector<double> lnWeights(before.draws());
    for (std::size_t draw = 0; draw < before.draws(); ++draw) {
        readings.age(shapeAt(before, draw));
        lnWeights[draw] = readings.lnLikelihoodOfLast(fresh, lineAt(before.sets[set], draw), before.scatter[draw]);
    }
    const auto weights = weightsOf(lnWeights);
    WarmFit fit{pickedDraws(before, pickedByWeight(weights, draws.uniform())), worthOf(weights)};
    moveSet(fit.posterior, fleet, set, readings, draws);
    return fit;
}

}
