// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/outlook/lot_test.h"

#include "fabric/numeric/multiplicity.h"

#include <boost/math/distributions/students_t.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

namespace crownring {

namespace {

constexpr double detectedShare = 0.8;

WeightedMean meanGiven(const std::vector<double>& values, const std::vector<double>& variances, double between) {
    double weights = 0;
    double sum = 0;
    for (std::size_t at = 0; at < values.size(); ++at) {
        const double weight = 1 / (variances[at] + between);
        weights += weight;
        sum += weight * values[at];
    }
    return {sum / weights, 1 / weights, between};
}

/// Where the others hardly age no ratio says how much faster a lot does.
double ratioOf(double slope, double others) {
    return others > 0 ? slope / others : slope > 0 ? std::numeric_limits<double>::infinity() : 1;
}

LotVerdict againstOthers(const std::vector<LotSlope>& lots, std::size_t lot) {
    std::vector<double> values;
    std::vector<double> variances;
    for (std::size_t other = 0; other < lots.size(); ++other)
        if (other != lot) {
            values.push_back(lots[other].slope);
            variances.push_back(lots[other].standardError * lots[other].standardError);
        }
    const auto others = pauleMandel(values, variances);
    const auto count = static_cast<double>(lots.size());
    const boost::math::students_t student(count - 2);
    const double error =
        std::sqrt(others.between + lots[lot].standardError * lots[lot].standardError + others.variance);
    LotVerdict verdict;
    verdict.others = others.mean;
    verdict.spreadOfOthers = std::sqrt(others.between);
    verdict.deviation = (lots[lot].slope - others.mean) / error;
    verdict.p = cdf(complement(student, verdict.deviation));
    verdict.ratio = ratioOf(lots[lot].slope, others.mean);
    // Holm's alarm for the one bad lot among good ones is at the level shared by all.
    const double needed = quantile(complement(student, alarmLevel / count)) + quantile(student, detectedShare);
    verdict.detectableRatio = std::max(leastRatio, ratioOf(others.mean + needed * error, others.mean));
    return verdict;
}

LotStanding standingOf(const LotSlope& lot, const LotVerdict& verdict, double watched, double alarmed) {
    if (lot.sets < leastSets || lot.failures < leastFailures)
        return LotStanding::TooLittle;
    if (verdict.ratio < leastRatio || watched > watchLevel)
        return LotStanding::AsOthers;
    return alarmed <= alarmLevel ? LotStanding::Alarm : LotStanding::Watch;
}

}

WeightedMean pauleMandel(const std::vector<double>& values, const std::vector<double>& variances) {
    const auto excess = [&](double between) {
        const double mean = meanGiven(values, variances, between).mean;
        double sum = 1 - static_cast<double>(values.size());
        for (std::size_t at = 0; at < values.size(); ++at)
            sum += (values[at] - mean) * (values[at] - mean) / (variances[at] + between);
        return sum;
    };
    if (excess(0) <= 0)
        return meanGiven(values, variances, 0);
    // No value is farther from the mean than the range, so that at its square times their number the sum is small
    // enough.
    const auto [least, most] = std::minmax_element(values.begin(), values.end());
    const double range = *most - *least;
    std::uintmax_t tries = 100;
    const auto [low, high] =
        boost::math::tools::toms748_solve(excess, 0.0, static_cast<double>(values.size()) * range * range,
                                          boost::math::tools::eps_tolerance<double>(45), tries);
    return meanGiven(values, variances, (low + high) / 2);
}

std::optional<LotComparison> compareLots(const std::vector<LotSlope>& lots) {
    if (lots.size() < leastLots)
        return {};
    LotComparison comparison;
    std::vector<double> pValues;
    for (std::size_t lot = 0; lot < lots.size(); ++lot) {
        comparison.lots.push_back(againstOthers(lots, lot));
        pValues.push_back(comparison.lots.back().p);
    }
    const auto watched = adjusted(pValues, Multiplicity::BenjaminiHochberg);
    const auto alarmed = adjusted(pValues, Multiplicity::Holm);
    for (std::size_t lot = 0; lot < lots.size(); ++lot)
        comparison.lots[lot].standing = standingOf(lots[lot], comparison.lots[lot], watched[lot], alarmed[lot]);
    comparison.smallestDetectableRatio =
        std::min_element(comparison.lots.begin(), comparison.lots.end(), [](const auto& left, const auto& right) {
            return left.detectableRatio < right.detectableRatio;
        })->detectableRatio;
    return comparison;
}

LotStanding confirmed(LotStanding before, LotStanding now, bool hasNewReadings) {
    return now == LotStanding::Alarm && !(before == LotStanding::Alarm && hasNewReadings) ? LotStanding::Watch : now;
}

}
