// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Weights of draws: what a draw counts once something more is known (importance sampling).

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <vector>

namespace crownring {

/// Weights that sum to 1; equal ones where none of them is a number above 0.
[[nodiscard]] inline std::vector<double> weightsOf(const std::vector<double>& lnWeights) {
    const double most = *std::max_element(lnWeights.begin(), lnWeights.end());
    std::vector<double> weights(lnWeights.size(), 1 / static_cast<double>(lnWeights.size()));
    if (!std::isfinite(most))
        return weights;
    double sum = 0;
    for (std::size_t k = 0; k < weights.size(); ++k)
        sum += weights[k] = std::exp(lnWeights[k] - most);
    for (double& weight : weights)
        weight /= sum;
    return weights;
}

/// How many equally weighted draws these are worth (Kong 1992): 1 / sum of squares, for weights that sum to 1.
[[nodiscard]] inline double worthOf(const std::vector<double>& weights) {
    double squares = 0;
    for (const double weight : weights)
        squares += weight * weight;
    return 1 / squares;
}

/// As many draws as there are weights, each as often as its weight says but for less than one: systematic resampling
/// (Kitagawa 1996, Journal of Computational and Graphical Statistics 5:1-25) from a start within [0, 1).
[[nodiscard]] inline std::vector<std::size_t> pickedByWeight(const std::vector<double>& weights, double start) {
    std::vector<std::size_t> picked;
    double sum = 0;
    for (std::size_t k = 0; k < weights.size(); ++k) {
        sum += weights[k] * static_cast<double>(weights.size());
        while (static_cast<double>(picked.size()) + start < sum && picked.size() < weights.size())
            picked.push_back(k);
    }
    while (picked.size() < weights.size())
        picked.push_back(weights.size() - 1);
    return picked;
}

}
