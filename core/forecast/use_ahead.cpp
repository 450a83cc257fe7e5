// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/use_ahead.h"

#include <algorithm>
#include <cmath>

namespace crownring {

namespace {

constexpr double daysOfYear = 365.25;
constexpr double daysOfUsualMonth = daysOfYear / 12;
constexpr double aWeek = 7;

ByClock<double> eachOf(const Usage& use, int days) {
    return {static_cast<double>(use.minutes.value()) * days, static_cast<double>(use.landings.value()) * days,
            static_cast<double>(use.inflations.value()) * days};
}

}

/// Adds stretch after stretch. A level that drifts is the later the less known, and what two stretches have in common
/// is what was not known at the earlier: cov(level_j, level_k) = var(level_j) for j before k.
class UseAhead::Adding {
public:
    explicit Adding(const Utilisation& use) : m_use(use) {
        for (const auto& level : use.levels)
            m_paths.push_back({level.mean(), level.shape, level.weight, 0, 0});
    }

    /// Time goes by, in which nothing is asked for. @param halfDays at most 62
    void pass(int halfDays) {
        for (std::size_t memory = 0; memory < m_paths.size(); ++memory) {
            const double kept = keptAfter(memory, halfDays);
            m_paths[memory].shape = kept * m_paths[memory].shape + (1 - kept) * m_use.priorShape;
        }
    }
    void add(const Stretch& stretch) {
        pass(stretch.span.days); // to its middle
        m_usual += stretch.usual;
        m_stated += stretch.stated;
        for (std::size_t clock = 0; clock < useClocks; ++clock)
            m_certain[clock] += stretch.certain[clock];
        for (auto& path : m_paths) {
            const double variance = path.mean * path.mean / std::max(path.shape, 0.05);
            path.variance += stretch.usual * (2 * path.common + stretch.usual * variance);
            path.common += stretch.usual * variance;
        }
        pass(stretch.span.days);
    }
    [[nodiscard]] const ByClock<double>& certain() const { return m_certain; }
    [[nodiscard]] UseMoments flights() const {
        double level = 0;
        for (const auto& path : m_paths)
            level += path.weight * path.mean;
        double variance = 0;
        for (const auto& path : m_paths)
            variance += path.weight * (path.variance + (path.mean - level) * (path.mean - level) * m_usual * m_usual);
        const double years = m_usual / daysOfYear;
        const double share = years - std::floor(years);
        const double ofYear = level * daysOfYear;
        variance += ofYear * ofYear * share * (1 - share) / (m_use.seasonShape + 1);
        return {level * m_usual + m_stated, variance};
    }

private:
    struct Path {
        double mean, shape, weight;
        double common, variance;
    };
    const Utilisation& m_use;
    std::vector<Path> m_paths;
    double m_usual = 0;
    double m_stated = 0;
    ByClock<double> m_certain{};
};

UseAhead::UseAhead(const Utilisation& use, CivilDate from, std::span<const StatedPlan> plans)
    : m_use(use), m_from(from) {
    lay(from, plans);
    Adding adding(m_use);
    m_sums.reserve(m_stretches.size());
    for (const auto& stretch : m_stretches) {
        adding.add(stretch);
        m_sums.push_back({stretch.span.first.dayNumber() + stretch.span.days, adding.flights(), adding.certain()});
    }
}

void UseAhead::lay(CivilDate from, std::span<const StatedPlan> plans) {
    std::vector<CivilDate> cuts;
    for (const auto& plan : plans) {
        cuts.push_back(plan.first);
        cuts.push_back(addDays(plan.last, 1));
    }
    std::ranges::sort(cuts);
    const auto end = addMonths(from, horizonYears * 12, DayRule::Same);
    for (auto first = from; first <= end;) {
        const auto cut = std::ranges::upper_bound(cuts, first);
        const auto last = cut == cuts.end() ? end : std::min(addDays(*cut, -1), end);
        const StatedPlan* holds = nullptr;
        for (const auto& plan : plans)
            if (plan.first <= first && first <= plan.last)
                holds = &plan;
        for (const auto& span : spansBetween(first, last)) {
            Stretch stretch{span, 0, 0, {}};
            if (holds && holds->flown)
                stretch.certain = eachOf(*holds->flown, span.days);
            else if (holds && holds->flightsAWeek)
                stretch.stated = *holds->flightsAWeek * span.days / aWeek;
            else
                stretch.usual = span.days * ofMonth(m_use.season, span.month) * (holds ? holds->times.value_or(0) : 1);
            m_stretches.push_back(stretch);
        }
        if (last == CivilDate::last())
            break;
        first = addDays(last, 1);
    }
}

UseDistribution UseAhead::distributionOf(const Sum& sum, double days, UseClock clock) const {
    const auto& flights = sum.flights;
    const auto& scatter = m_use.dispersion;
    const double longer = std::clamp((days - aWeek) / (daysOfUsualMonth - aWeek), 0.0, 1.0);
    const double dispersion = scatter.week + (scatter.month - scatter.week) * longer;
    return {{flights.mean, flights.mean * dispersion + flights.variance},
            m_use.flight[static_cast<std::size_t>(clock)],
            sum.certain[static_cast<std::size_t>(clock)]};
}

UseAhead::Sum UseAhead::sumAt(CivilDate day) const {
    const auto until = day.dayNumber() + 1;
    const auto next = std::ranges::lower_bound(m_sums, until, {}, &Sum::until);
    if (next == m_sums.end())
        return m_sums.back();
    const Sum before = next == m_sums.begin() ? Sum{m_from.dayNumber(), {}, {}} : *std::prev(next);
    const double share = static_cast<double>(until - before.until) / (next->until - before.until);
    const auto between = [share](double a, double b) { return a + share * (b - a); };
    Sum sum{
        until,
        {between(before.flights.mean, next->flights.mean), between(before.flights.variance, next->flights.variance)},
        {}};
    for (std::size_t clock = 0; clock < useClocks; ++clock)
        sum.certain[clock] = between(before.certain[clock], next->certain[clock]);
    return sum;
}

UseDistribution UseAhead::upTo(CivilDate day, UseClock clock) const {
    if (day < m_from)
        return {};
    const auto sum = sumAt(day);
    return distributionOf(sum, sum.until - m_from.dayNumber(), clock);
}

UseDistribution UseAhead::between(CivilDate first, CivilDate last, UseClock clock) const {
    Adding adding(m_use);
    double days = 0;
    for (auto stretch : m_stretches) {
        const auto begins = stretch.span.first.dayNumber();
        const auto ends = begins + stretch.span.days; // the day after
        const auto from = std::max(begins, first.dayNumber());
        const auto to = std::min(ends, last.dayNumber() + 1);
        if (begins > last.dayNumber())
            break;
        if (to <= from) {
            adding.pass(2 * stretch.span.days);
            continue;
        }
        adding.pass(2 * (from - begins));
        const double part = static_cast<double>(to - from) / stretch.span.days;
        stretch.usual *= part;
        stretch.stated *= part;
        for (auto& certain : stretch.certain)
            certain *= part;
        stretch.span.days = to - from;
        days += to - from;
        adding.add(stretch);
    }
    return distributionOf({0, adding.flights(), adding.certain()}, days, clock);
}

double UseAhead::chanceOf(UseClock clock, double left, CivilDate by) const { return upTo(by, clock).chanceOf(left); }

std::optional<CivilDate> UseAhead::reached(UseClock clock, double left, double share) const {
    struct Looked {
        std::int32_t day;
        double chance;
    };
    const auto look = [&](std::int32_t day) {
        return Looked{day, chanceOf(clock, left, CivilDate::fromDayNumber(day))};
    };
    const auto lookAtEnd = [&](std::size_t stretch) { return look(m_sums[stretch].until - 1); };
    // From where it is used up on the mean, in steps that grow, until it lies between two ends of stretches.
    const double flights = left / m_use.flight[static_cast<std::size_t>(clock)].mean;
    const auto mean = std::ranges::lower_bound(m_sums, flights, {}, [](const Sum& sum) { return sum.flights.mean; });
    auto high = std::min(static_cast<std::size_t>(mean - m_sums.begin()), m_sums.size() - 1);
    auto after = lookAtEnd(high);
    Looked before{m_from.dayNumber() - 1, 0};
    std::size_t low = 0; // all before it is too early
    for (std::size_t step = 1; after.chance < share; step *= 2) {
        if (high + 1 == m_sums.size())
            return std::nullopt;
        before = after;
        low = high + 1;
        high = std::min(high + step, m_sums.size() - 1);
        after = lookAtEnd(high);
    }
    for (std::size_t step = 1; low < high;) {
        const auto middle = before.chance > 0 ? low + (high - low) / 2 : high - std::min(step, high - low);
        step *= 2;
        if (const auto looked = lookAtEnd(middle); looked.chance >= share) {
            after = looked;
            high = middle;
        } else {
            before = looked;
            low = middle + 1;
        }
    }
    // Within the stretch the chance grows evenly enough to guess the day; each second guess is its middle.
    for (bool guesses = true; after.day - before.day > 1; guesses = !guesses) {
        const auto days = after.day - before.day;
        const double part = guesses ? (share - before.chance) / std::max(after.chance - before.chance, 1e-12) : 0.5;
        const auto guess = before.day + std::clamp(static_cast<std::int32_t>(std::lround(part * days)), 1, days - 1);
        const auto looked = look(guess);
        (looked.chance >= share ? after : before) = looked;
    }
    return CivilDate::fromDayNumber(after.day);
}

}
