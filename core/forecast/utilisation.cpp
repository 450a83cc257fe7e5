// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/utilisation.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace crownring {

namespace {

double shrunk(const CountScatter& own, double fleet, double worth) {
    return own.freedom > 0 ? (fleet * worth + own.ratio() * own.freedom) / (worth + own.freedom) : fleet;
}

/// What a season long ago says counts for less.
constexpr double memoryOfSeason = 0.85; ///< a year

struct OwnSeason {
    ByMonth share;
    double shape;
};

OwnSeason seasonOf(const MonthlyUse& log, const FleetPattern& fleet, double dispersion) {
    ByMonth flown{}, expected{};
    const auto levels = yearlyLevels(log, fleet.season);
    const auto months = static_cast<double>(levels.size());
    for (std::size_t i = 0; i < levels.size(); ++i) {
        const double counts =
            std::pow(memoryOfSeason, (months - 1 - static_cast<double>(i)) / monthsOfYear) / dispersion;
        ofMonth(flown, log.months[i].month) += log.months[i].flights * counts;
        ofMonth(expected, log.months[i].month) += levels[i] * log.months[i].days * counts;
    }
    OwnSeason own{{}, seasonWorth};
    const double usual = seasonWorth / monthsOfYear;
    for (std::size_t month = 0; month < own.share.size(); ++month) {
        own.share[month] = (usual * fleet.season[month] + flown[month]) / (usual + expected[month]);
        own.shape += flown[month];
    }
    const double mean = std::accumulate(own.share.begin(), own.share.end(), 0.0) / monthsOfYear;
    for (auto& each : own.share)
        each /= mean;
    return own;
}

/// ln of the negative binomial probability of a count by mean and variance, but for what hangs on the count alone.
double lnChance(int count, double mean, double variance) {
    const double size = mean * mean / std::max(variance - mean, mean * 1e-3);
    double sum = size * std::log(size / (size + mean)) + count * std::log(mean / (size + mean));
    double product = 1;
    for (int i = 0; i < count; ++i) { // the gamma function of count + size over that of size
        product *= size + i;
        if (product > 1e200) {
            sum += std::log(product);
            product = 1;
        }
    }
    return sum + std::log(product);
}

class Learning {
public:
    Learning(Utilisation& use, const MonthlyUse& log) : m_use(use), m_log(log) {}

    void learn() {
        std::vector<double> lnWeights;
        for (std::size_t memory = 0; memory < memories.size(); ++memory) {
            PaceLevel level{0, m_use.priorShape, m_use.priorRate};
            lnWeights.push_back(through(level, memory));
            m_use.levels.push_back(level);
        }
        const double best = std::ranges::max(lnWeights);
        double sum = 0;
        for (std::size_t i = 0; i < lnWeights.size(); ++i)
            sum += m_use.levels[i].weight = std::exp(lnWeights[i] - best);
        for (auto& level : m_use.levels)
            level.weight /= sum;
    }

private:
    /// Lets it learn from all months. @return ln of the chance that it gave them
    double through(PaceLevel& level, std::size_t memory) const {
        const double dispersion = m_use.dispersion.month;
        double lnAll = 0;
        for (const auto& month : m_log.months) {
            const double share = keptAfter(memory, 2 * static_cast<int>(month.days));
            level.shape = share * level.shape + (1 - share) * m_use.priorShape;
            level.rate = share * level.rate + (1 - share) * m_use.priorRate;
            const double days = month.days * ofMonth(m_use.season, month.month);
            const double mean = std::max(level.mean() * days, 1e-9);
            lnAll += lnChance(static_cast<int>(month.flights), mean, dispersion * mean + mean * mean / level.shape);
            level.shape += month.flights / dispersion;
            level.rate += days / dispersion;
        }
        return lnAll;
    }

    Utilisation& m_use;
    const MonthlyUse& m_log;
};

}

double keptAfter(std::size_t memory, int halfDays) {
    constexpr std::size_t most = 62;
    constexpr double halfDaysOfYear = 2 * 365.25;
    static const auto kept = [] {
        std::array<std::array<double, most + 1>, memories.size()> table{};
        for (std::size_t each = 0; each < memories.size(); ++each)
            for (std::size_t half = 0; half <= most; ++half)
                table[each][half] = std::pow(memories[each], static_cast<double>(half) / halfDaysOfYear);
        return table;
    }();
    return kept[memory].at(static_cast<std::size_t>(halfDays));
}

double Utilisation::level() const {
    double mean = 0;
    for (const auto& each : levels)
        mean += each.weight * each.mean();
    return mean;
}

Utilisation utilisationOf(const MonthlyUse& log, const FleetPattern& fleet, const std::optional<double>& level) {
    Utilisation use;
    const auto own = scatterOf(log, fleet.season);
    use.dispersion.week = shrunk(own.week, fleet.dispersion.week, scatterWorth);
    use.dispersion.month = std::max(shrunk(own.month, fleet.dispersion.month, scatterWorth), use.dispersion.week);
    const auto season = seasonOf(log, fleet, use.dispersion.month);
    use.season = season.share;
    use.seasonShape = season.shape;
    use.priorShape = fleet.levelShape;
    use.priorRate = fleet.levelShape / std::max(level.value_or(fleet.level), 1e-4);
    use.flights = log.sums.flights;
    for (std::size_t clock = 0; clock < useClocks; ++clock) {
        const auto& usual = fleet.flight[clock];
        const double flights = log.sums.flights + flightWorth;
        const double mean = (log.sums.sum[clock] + flightWorth * usual.mean) / flights;
        const double square =
            (log.sums.squares[clock] + flightWorth * (usual.variance + usual.mean * usual.mean)) / flights;
        use.flight[clock] = {mean, std::max(square - mean * mean, 0.0)};
    }
    Learning(use, log).learn();
    return use;
}

}
