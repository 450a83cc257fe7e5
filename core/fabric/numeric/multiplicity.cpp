// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/numeric/multiplicity.h"

#include <algorithm>
#include <numeric>

namespace crownring {

namespace {

/// What the p-value that is the `rank`th smallest (from 0) of `count` is multiplied by.
double factor(Multiplicity method, std::size_t rank, std::size_t count) {
    const auto all = static_cast<double>(count);
    const auto place = static_cast<double>(rank);
    switch (method) {
    case Multiplicity::Bonferroni:
        return all;
    case Multiplicity::Holm:
        return all - place;
    case Multiplicity::BenjaminiHochberg:
        return all / (place + 1);
    case Multiplicity::BenjaminiYekutieli:
        break;
    }
    double harmonic = 0;
    for (std::size_t term = 1; term <= count; ++term)
        harmonic += 1 / static_cast<double>(term);
    return harmonic * all / (place + 1);
}

}

std::vector<double> adjusted(const std::vector<double>& pValues, Multiplicity method) {
    std::vector<std::size_t> order(pValues.size());
    std::iota(order.begin(), order.end(), 0);
    std::sort(order.begin(), order.end(), [&](auto left, auto right) { return pValues[left] < pValues[right]; });
    std::vector<double> scaled(pValues.size());
    for (std::size_t rank = 0; rank < order.size(); ++rank)
        scaled[rank] = std::min(1.0, factor(method, rank, order.size()) * pValues[order[rank]]);
    // A larger p-value is never adjusted to a smaller one: Holm steps down from the smallest, the false-discovery rates
    // up from the largest.
    if (method == Multiplicity::Holm)
        std::partial_sum(scaled.begin(), scaled.end(), scaled.begin(),
                         [](double a, double b) { return std::max(a, b); });
    else
        std::partial_sum(scaled.rbegin(), scaled.rend(), scaled.rbegin(),
                         [](double a, double b) { return std::min(a, b); });
    std::vector<double> result(pValues.size());
    for (std::size_t rank = 0; rank < order.size(); ++rank)
        result[order[rank]] = scaled[rank];
    return result;
}

}
