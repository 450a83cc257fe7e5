// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/sampler/tree_walk.h"

namespace crownring {

namespace {

struct SpreadOf {
    double Spreads::*now;
    double SpreadPriors::*scale;
};

constexpr std::array<SpreadOf, 4> spreads{{{&Spreads::lotIntercept, &SpreadPriors::lotIntercept},
                                           {&Spreads::lotSlope, &SpreadPriors::lotSlope},
                                           {&Spreads::setIntercept, &SpreadPriors::setIntercept},
                                           {&Spreads::setSlope, &SpreadPriors::setSlope}}};

RandomWalk<1> walkOfSpread() { return RandomWalk<1>(RandomWalk<1>::Vector(0.5)); }

double lnPrior(const AgeingPrior& prior, const AgeingShape& shape) {
    return lnNormal(shape.gamma, prior.gamma.mean, prior.gamma.sd) +
           lnNormal(std::log(shape.phi), prior.lnPhi.mean, prior.lnPhi.sd);
}

}

TreeWalk::TreeWalk(const FleetColumns& fleet, const AgeingPrior& prior, bool phiFree)
    : m_fleet(fleet), m_prior(prior), m_phiFree(phiFree),
      m_shape(RandomWalk<2>::Vector(0.1, 0.1)), m_spreads{walkOfSpread(), walkOfSpread(), walkOfSpread(),
                                                          walkOfSpread()} {}

void TreeWalk::walk(Draws& draws, const std::vector<double>& latent, const std::vector<double>& latentCoupons,
                    bool learning, AgeingState& state, std::vector<double>& ages, TestedLines& tested, LineTree& tree) {
    m_lnDensity = tree.gather(tested, state.spreads);
    walkShape(draws, latent, latentCoupons, learning, state, ages, tested, tree);
    for (std::size_t which = 0; which < spreads.size(); ++which)
        walkSpread(draws, which, learning, state, tested, tree);
}

void TreeWalk::walkShape(Draws& draws, const std::vector<double>& latent, const std::vector<double>& latentCoupons,
                         bool learning, AgeingState& state, std::vector<double>& ages, TestedLines& tested,
                         LineTree& tree) {
    const auto by = m_shape.step(draws);
    const AgeingShape proposed{state.shape.gamma + by[0],
                               m_phiFree ? state.shape.phi * std::exp(by[1]) : state.shape.phi};
    agesOf(m_fleet, proposed, m_ages);
    gatherTests(m_fleet, m_ages, latent, latentCoupons, state.spreads.scatter, m_tested);
    const double lnDensity = tree.gather(m_tested, state.spreads);
    const double chance =
        acceptance(lnDensity - m_lnDensity + lnPrior(m_prior, proposed) - lnPrior(m_prior, state.shape));
    if (draws.uniform() < chance && tree.propose(draws, m_tested, state.spreads)) {
        tree.take(state);
        state.shape = proposed;
        m_lnDensity = lnDensity;
        std::swap(ages, m_ages);
        std::swap(tested, m_tested);
    }
    if (learning)
        m_shape.learn({state.shape.gamma, std::log(state.shape.phi)}, chance);
}

void TreeWalk::walkSpread(Draws& draws, std::size_t which, bool learning, AgeingState& state, const TestedLines& tested,
                          LineTree& tree) {
    auto proposed = state.spreads;
    auto& spread = proposed.*spreads[which].now;
    spread *= std::exp(m_spreads[which].step(draws)[0]);
    const double scale = m_prior.spreads.*spreads[which].scale;
    const double before = state.spreads.*spreads[which].now;
    const double lnDensity = tree.gather(tested, proposed);
    const double chance =
        acceptance(lnDensity - m_lnDensity + lnHalfCauchy(spread, scale) - lnHalfCauchy(before, scale));
    if (draws.uniform() < chance && tree.propose(draws, tested, proposed)) {
        tree.take(state);
        state.spreads = proposed;
        m_lnDensity = lnDensity;
    }
    if (learning)
        m_spreads[which].learn(RandomWalk<1>::Vector(std::log(state.spreads.*spreads[which].now)), chance);
}

}
