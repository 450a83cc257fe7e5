// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/sampler/posterior.h"

namespace crownring {

namespace {

/// Calls `visit` with every column of a posterior.
template <class Visit>
void eachColumn(Posterior& posterior, Visit visit) {
    for (auto* level : {&posterior.fabrics, &posterior.lots, &posterior.sets})
        for (auto& line : *level) {
            visit(line.intercept);
            visit(line.slope);
        }
    for (auto* column : {&posterior.lotIntercept, &posterior.lotSlope, &posterior.setIntercept, &posterior.setSlope,
                         &posterior.scatter, &posterior.gamma, &posterior.phi})
        visit(*column);
}

void keepLines(const std::vector<Line>& lines, std::size_t draw, std::vector<LineColumns>& columns) {
    for (std::size_t k = 0; k < lines.size(); ++k) {
        columns[k].intercept[draw] = lines[k].intercept;
        columns[k].slope[draw] = lines[k].slope;
    }
}

}

Posterior emptyPosterior(const AgeingState& like, std::size_t chains, std::size_t drawsOfChain) {
    Posterior posterior;
    posterior.chains = chains;
    posterior.drawsOfChain = drawsOfChain;
    posterior.fabrics.resize(like.fabrics.size());
    posterior.lots.resize(like.lots.size());
    posterior.sets.resize(like.sets.size());
    eachColumn(posterior, [&](DrawColumn& column) { column.resize(posterior.draws()); });
    return posterior;
}

void keepDraw(const AgeingState& state, std::size_t draw, Posterior& posterior) {
    keepLines(state.fabrics, draw, posterior.fabrics);
    keepLines(state.lots, draw, posterior.lots);
    keepLines(state.sets, draw, posterior.sets);
    posterior.lotIntercept[draw] = state.spreads.lotIntercept;
    posterior.lotSlope[draw] = state.spreads.lotSlope;
    posterior.setIntercept[draw] = state.spreads.setIntercept;
    posterior.setSlope[draw] = state.spreads.setSlope;
    posterior.scatter[draw] = state.spreads.scatter;
    posterior.gamma[draw] = state.shape.gamma;
    posterior.phi[draw] = state.shape.phi;
}

Posterior pickedDraws(const Posterior& posterior, const std::vector<std::size_t>& draws) {
    auto picked = posterior;
    picked.chains = 1;
    picked.drawsOfChain = draws.size();
    DrawColumn from;
    eachColumn(picked, [&](DrawColumn& column) {
        from.swap(column);
        column.resize(draws.size());
        for (std::size_t k = 0; k < draws.size(); ++k)
            column[k] = from[draws[k]];
    });
    return picked;
}

}
