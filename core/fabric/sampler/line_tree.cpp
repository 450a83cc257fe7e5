// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/sampler/line_tree.h"

#include <algorithm>
#include <limits>

namespace crownring {

namespace {

constexpr double anySlope = -std::numeric_limits<double>::infinity();

LineVariance ofSets(const Spreads& spreads) {
    return {spreads.setIntercept * spreads.setIntercept, spreads.setSlope * spreads.setSlope};
}

LineVariance ofLots(const Spreads& spreads) {
    return {spreads.lotIntercept * spreads.lotIntercept, spreads.lotSlope * spreads.lotSlope};
}

LineVariance varianceOf(const FabricPrior& prior) {
    return {prior.intercept.sd * prior.intercept.sd, prior.slope.sd * prior.slope.sd};
}

Line middleOf(const FabricPrior& prior) { return {prior.intercept.mean, prior.slope.mean}; }

double drawnBolt(Draws& draws, const Line& lot, const LineVariance& about, const LineInformation& tested) {
    return drawnLine(draws, lot, about, tested, anySlope).intercept;
}

}

void gatherTests(const FleetColumns& fleet, const std::vector<double>& ages, const std::vector<double>& latent,
                 const std::vector<double>& latentCoupons, double scatter, TestedLines& tested) {
    const double precision = 1 / (scatter * scatter);
    tested.sets.resize(fleet.sets());
    for (std::size_t set = 0; set < fleet.sets(); ++set) {
        double sumT = 0, sumTT = 0, sumY = 0, sumTY = 0;
        for (auto r = fleet.firstOfSet[set]; r < fleet.firstOfSet[set + 1]; ++r) {
            sumT += ages[r];
            sumTT += ages[r] * ages[r];
            sumY += latent[r];
            sumTY += ages[r] * latent[r];
        }
        const auto count = static_cast<double>(fleet.firstOfSet[set + 1] - fleet.firstOfSet[set]);
        tested.sets[set] = {count * precision, -sumT * precision,  sumTT * precision,
                            sumY * precision,  -sumTY * precision, 0};
    }
    tested.bolts.resize(fleet.coupons.size());
    for (std::size_t c = 0; c < fleet.coupons.size(); ++c)
        tested.bolts[c] = {precision, 0, 0, latentCoupons[c] * precision, 0, 0};
}

LineTree::LineTree(const FleetColumns& fleet, const AgeingPrior& prior) : m_fleet(fleet), m_prior(prior) {
    m_throughSets.resize(fleet.sets());
    m_proposed.fabrics.resize(fleet.fabrics);
    m_proposed.lots.resize(fleet.lots());
    m_proposed.sets.resize(fleet.sets());
    m_proposed.bolts.resize(fleet.coupons.size());
}

double LineTree::gather(const TestedLines& tested, const Spreads& spreads) {
    for (std::size_t set = 0; set < m_fleet.sets(); ++set)
        m_throughSets[set] = seenThrough(tested.sets[set], ofSets(spreads));
    gatherAbove(tested, spreads);
    double sum = 0;
    for (std::size_t fabric = 0; fabric < m_fleet.fabrics; ++fabric) {
        const auto& prior = m_prior.fabrics[fabric];
        sum += lnAt(seenThrough(m_ofFabrics[fabric], varianceOf(prior)), middleOf(prior));
    }
    return sum;
}

void LineTree::gatherAbove(const TestedLines& tested, const Spreads& spreads) {
    m_ofLots.assign(m_fleet.lots(), {});
    m_ofFabrics.assign(m_fleet.fabrics, {});
    for (std::size_t set = 0; set < m_fleet.sets(); ++set)
        m_ofLots[m_fleet.lotOfSet[set]] += m_throughSets[set];
    for (std::size_t c = 0; c < m_fleet.coupons.size(); ++c)
        m_ofLots[m_fleet.lotOfCoupon[c]] += seenThrough(tested.bolts[c], ofSets(spreads));
    for (std::size_t lot = 0; lot < m_fleet.lots(); ++lot)
        m_ofFabrics[m_fleet.fabricOfLot[lot]] += seenThrough(m_ofLots[lot], ofLots(spreads));
}

bool LineTree::propose(Draws& draws, const TestedLines& tested, const Spreads& spreads) {
    m_within.assign(m_fleet.fabrics, 1);
    for (std::size_t fabric = 0; fabric < m_fleet.fabrics; ++fabric) {
        const auto& prior = m_prior.fabrics[fabric];
        m_proposed.fabrics[fabric] =
            drawnLine(draws, middleOf(prior), varianceOf(prior), m_ofFabrics[fabric], anySlope);
    }
    for (std::size_t lot = 0; lot < m_fleet.lots(); ++lot) {
        const auto& fabric = m_proposed.fabrics[m_fleet.fabricOfLot[lot]];
        m_proposed.lots[lot] = drawnLine(draws, fabric, ofLots(spreads), m_ofLots[lot], anySlope);
    }
    const auto about = ofSets(spreads);
    for (std::size_t c = 0; c < m_fleet.coupons.size(); ++c)
        m_proposed.bolts[c] = drawnBolt(draws, m_proposed.lots[m_fleet.lotOfCoupon[c]], about, tested.bolts[c]);
    for (std::size_t set = 0; set < m_fleet.sets(); ++set) {
        const auto lot = m_fleet.lotOfSet[set];
        m_proposed.sets[set] = drawnLine(draws, m_proposed.lots[lot], about, tested.sets[set], anySlope);
        if (m_proposed.sets[set].slope <= 0)
            m_within[m_fleet.fabricOfLot[lot]] = 0;
    }
    return std::all_of(m_within.begin(), m_within.end(), [](char within) { return within != 0; });
}

void LineTree::take(AgeingState& state) const {
    state.fabrics = m_proposed.fabrics;
    state.lots = m_proposed.lots;
    state.sets = m_proposed.sets;
    state.bolts = m_proposed.bolts;
}

void LineTree::draw(Draws& draws, const TestedLines& tested, AgeingState& state) {
    gather(tested, state.spreads);
    if (propose(draws, tested, state.spreads)) {
        take(state);
        return;
    }
    takeFabrics(state);
    drawSets(draws, tested, state);
    drawAboveSets(draws, tested, state);
}

/// Whether a proposal is within the cut does not depend on where the chain stands, so taking those that are leaves the
/// conditional density as it is.
void LineTree::takeFabrics(AgeingState& state) const {
    for (std::size_t fabric = 0; fabric < m_fleet.fabrics; ++fabric)
        if (m_within[fabric] != 0)
            state.fabrics[fabric] = m_proposed.fabrics[fabric];
    for (std::size_t lot = 0; lot < m_fleet.lots(); ++lot)
        if (isWithin(lot))
            state.lots[lot] = m_proposed.lots[lot];
    for (std::size_t c = 0; c < m_fleet.coupons.size(); ++c)
        if (isWithin(m_fleet.lotOfCoupon[c]))
            state.bolts[c] = m_proposed.bolts[c];
    for (std::size_t set = 0; set < m_fleet.sets(); ++set)
        if (isWithin(m_fleet.lotOfSet[set]))
            state.sets[set] = m_proposed.sets[set];
}

void LineTree::drawSets(Draws& draws, const TestedLines& tested, AgeingState& state) const {
    for (std::size_t set = 0; set < m_fleet.sets(); ++set) {
        const auto lot = m_fleet.lotOfSet[set];
        if (!isWithin(lot))
            state.sets[set] = drawnLine(draws, state.lots[lot], ofSets(state.spreads), tested.sets[set], 0);
    }
}

void LineTree::drawAboveSets(Draws& draws, const TestedLines& tested, AgeingState& state) {
    const auto about = ofSets(state.spreads);
    for (std::size_t set = 0; set < m_fleet.sets(); ++set)
        m_throughSets[set] = informationOf(state.sets[set], about);
    gatherAbove(tested, state.spreads);
    for (std::size_t fabric = 0; fabric < m_fleet.fabrics; ++fabric) {
        const auto& prior = m_prior.fabrics[fabric];
        if (m_within[fabric] == 0)
            state.fabrics[fabric] = drawnLine(draws, middleOf(prior), varianceOf(prior), m_ofFabrics[fabric], anySlope);
    }
    for (std::size_t lot = 0; lot < m_fleet.lots(); ++lot)
        if (!isWithin(lot))
            state.lots[lot] = drawnLine(draws, state.fabrics[m_fleet.fabricOfLot[lot]], ofLots(state.spreads),
                                        m_ofLots[lot], anySlope);
    for (std::size_t c = 0; c < m_fleet.coupons.size(); ++c) {
        const auto lot = m_fleet.lotOfCoupon[c];
        if (!isWithin(lot))
            state.bolts[c] = drawnBolt(draws, state.lots[lot], about, tested.bolts[c]);
    }
}

}
