// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/numeric/convergence.h"

#include "fabric/numeric/quantile.h"

#include <boost/math/special_functions/erf.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>

namespace crownring {

namespace {

struct Moments {
    double mean = 0;
    double variance = 0;
};

Moments momentsOf(std::span<const double> values) {
    const auto count = static_cast<double>(values.size());
    const double mean = std::accumulate(values.begin(), values.end(), 0.0) / count;
    double squares = 0;
    for (const double value : values)
        squares += (value - mean) * (value - mean);
    return {mean, squares / (count - 1)};
}

/// Halves of chains, so that a drift within a chain shows as well; a middle draw of an odd number is left out.
std::vector<std::span<const double>> halvesOf(std::span<const double> draws, std::size_t chains) {
    const auto length = draws.size() / chains;
    const auto half = length / 2;
    std::vector<std::span<const double>> halves;
    for (std::size_t chain = 0; chain < chains; ++chain) {
        halves.push_back(draws.subspan(chain * length, half));
        halves.push_back(draws.subspan((chain + 1) * length - half, half));
    }
    return halves;
}

struct Variances {
    double within = 0;
    double all = 0; ///< of the target, overestimated while chains differ
};

Variances variancesOf(const std::vector<std::span<const double>>& chains) {
    std::vector<double> means;
    double within = 0;
    for (const auto chain : chains) {
        const auto moments = momentsOf(chain);
        means.push_back(moments.mean);
        within += moments.variance / static_cast<double>(chains.size());
    }
    const auto length = static_cast<double>(chains.front().size());
    return {within, within * (length - 1) / length + momentsOf(means).variance};
}

/// Autocovariance at a lag, the mean over all chains, with the length as divisor.
double autocovariance(const std::vector<std::span<const double>>& chains, const std::vector<double>& means,
                      std::size_t lag) {
    double sum = 0;
    for (std::size_t c = 0; c < chains.size(); ++c)
        for (std::size_t k = lag; k < chains[c].size(); ++k)
            sum += (chains[c][k] - means[c]) * (chains[c][k - lag] - means[c]);
    return sum / static_cast<double>(chains.size() * chains.front().size());
}

std::vector<double> mapped(std::span<const double> draws, auto change) {
    std::vector<double> changed(draws.size());
    std::transform(draws.begin(), draws.end(), changed.begin(), change);
    return changed;
}

}

double splitRHat(std::span<const double> draws, std::size_t chains) {
    const auto variances = variancesOf(halvesOf(draws, chains));
    return std::sqrt(variances.all / variances.within);
}

double rankRHat(std::span<const double> draws, std::size_t chains) {
    const double median = quantileOf(draws, 0.5);
    const auto folded = mapped(draws, [&](double draw) { return std::abs(draw - median); });
    return std::max(splitRHat(normalScores(draws), chains), splitRHat(normalScores(folded), chains));
}

/// Geyer's initial monotone sequence of sums of two neighbouring autocorrelations (section 3.2 of the paper above).
double effectiveDraws(std::span<const double> draws, std::size_t chains) {
    const auto halves = halvesOf(draws, chains);
    std::vector<double> means;
    for (const auto half : halves)
        means.push_back(momentsOf(half).mean);
    const auto variances = variancesOf(halves);
    const auto correlation = [&](std::size_t lag) {
        return 1 - (variances.within - autocovariance(halves, means, lag)) / variances.all;
    };
    double sum = 0;
    double least = 2;
    for (std::size_t lag = 0; lag + 1 < halves.front().size(); lag += 2) {
        const double pair = (lag == 0 ? 1 : correlation(lag)) + correlation(lag + 1);
        if (!(pair > 0))
            break;
        least = std::min(least, pair);
        sum += least;
    }
    const auto count = static_cast<double>(halves.size() * halves.front().size());
    const double perDraw = std::max(2 * sum - 1, 1 / std::log10(count));
    return count / perDraw;
}

double effectiveDrawsOfQuantile(std::span<const double> draws, std::size_t chains, double p) {
    const double quantile = quantileOf(draws, p);
    return effectiveDraws(mapped(draws, [&](double draw) { return draw <= quantile ? 1.0 : 0.0; }), chains);
}

std::vector<double> normalScores(std::span<const double> draws) {
    std::vector<std::size_t> order(draws.size());
    std::iota(order.begin(), order.end(), 0);
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return draws[a] < draws[b]; });
    std::vector<double> scores(draws.size());
    for (std::size_t from = 0; from < order.size();) {
        auto to = from + 1;
        while (to < order.size() && draws[order[to]] == draws[order[from]])
            ++to;
        const double rank = static_cast<double>(from + to + 1) / 2; // counted from 1, shared by ties
        const double share = (rank - 0.375) / (static_cast<double>(draws.size()) + 0.25);
        for (; from < to; ++from)
            scores[order[from]] = -std::numbers::sqrt2 * boost::math::erfc_inv(2 * share);
    }
    return scores;
}

}
