// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/backtest.h"

#include "fabric/numeric/draws.h"
#include "forecast/dates.h"
#include "forecast/made_logs.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace crownring::made {

namespace {

double minutesBetween(const UseLog& log, CivilDate first, CivilDate last) {
    double minutes = 0;
    for (const auto& day : log.days)
        if (first <= day.on && day.on <= last)
            minutes += static_cast<double>(day.use.minutes.value());
    return minutes;
}

double daysOf(const UseLog& log) { return static_cast<double>(daysBetween(log.first, log.last).value()) + 1; }

/// The two things that people do now.
struct Naive {
    double lastYear = 0; ///< minutes a day
    double meanRate = 0;

    explicit Naive(const UseLog& known) {
        const double year = std::min(daysOf(known), 365.0);
        lastYear = minutesBetween(known, addDays(known.last, -364), known.last) / year;
        meanRate = minutesBetween(known, known.first, known.last) / daysOf(known);
    }
};

class Judge {
public:
    Judge(const MadeBalloon& balloon, const FleetPattern& fleet, Draws& draws)
        : m_balloon(balloon), m_naive(balloon.known), m_from(addDays(balloon.known.last, 1)),
          m_ahead(utilisationOf(inMonths(balloon.known), fleet), m_from), m_draws(draws) {}

    Scores judge() {
        const auto& hidden = m_balloon.hidden;
        for (auto first = m_from; first < hidden.last;) {
            const auto last = std::min(addDays(addMonths(first, 1, DayRule::Same), -1), hidden.last);
            m_scores.months += amount(first, last);
            first = addDays(last, 1);
        }
        m_scores.year += amount(m_from, hidden.last);
        // Of what was flown before, which nothing hidden decides.
        const double lastYear = std::max(m_naive.lastYear * 365, 300.0);
        for (const double share : {0.25, 0.5, 0.75})
            m_scores.dates += date(std::round(share * lastYear));
        return m_scores;
    }

private:
    static void hold(Score& score, double place) {
        score.held += place >= 0.1 && place <= 0.9;
        score.below += place < 0.1;
    }

    Score amount(CivilDate first, CivilDate last) {
        const auto told = m_ahead.between(first, last, UseClock::Minutes);
        const double flown = minutesBetween(m_balloon.hidden, first, last);
        const double days = static_cast<double>(daysBetween(first, last).value()) + 1;
        Score score;
        score.asked = 1;
        const double place = flown <= 0 ? told.chanceOfNone() * m_draws.uniform() : 1 - told.chanceOf(flown);
        hold(score, place);
        score.error = std::abs(told.quantile(0.5) - flown);
        score.errorOfLastYear = std::abs(m_naive.lastYear * days - flown);
        score.errorOfMeanRate = std::abs(m_naive.meanRate * days - flown);
        return score;
    }

    Score date(double left) {
        const auto end = m_balloon.hidden.last;
        auto used = addDays(end, 1); // or later
        double minutes = 0;
        for (const auto& day : m_balloon.hidden.days) {
            minutes += static_cast<double>(day.use.minutes.value());
            if (minutes >= left) {
                used = day.on;
                break;
            }
        }
        const auto within = [&](double days) {
            return std::min(days, static_cast<double>(daysBetween(m_from, end).value()) + 1);
        };
        const double truth = static_cast<double>(daysBetween(m_from, used).value());
        Score score;
        score.asked = 1;
        // The chance that it was used up by that day, and by the day before: the jump of that day.
        const double before = m_ahead.chanceOf(UseClock::Minutes, left, addDays(used, -1));
        const double by = used > end ? 1 : m_ahead.chanceOf(UseClock::Minutes, left, used);
        hold(score, before + (by - before) * m_draws.uniform());
        const auto middle = m_ahead.reached(UseClock::Minutes, left, 0.5);
        const double told = middle ? static_cast<double>(daysBetween(m_from, *middle).value()) : 1e6;
        const auto naively = [&](double rate) { return rate > 0 ? left / rate : 1e6; };
        score.error = std::abs(within(told) - truth);
        score.errorOfLastYear = std::abs(within(naively(m_naive.lastYear)) - truth);
        score.errorOfMeanRate = std::abs(within(naively(m_naive.meanRate)) - truth);
        return score;
    }

    const MadeBalloon& m_balloon;
    Naive m_naive;
    CivilDate m_from;
    UseAhead m_ahead;
    Draws& m_draws;
    Scores m_scores;
};

}

Score& Score::operator+=(const Score& other) {
    asked += other.asked;
    held += other.held;
    below += other.below;
    error += other.error;
    errorOfLastYear += other.errorOfLastYear;
    errorOfMeanRate += other.errorOfMeanRate;
    return *this;
}

double Score::ratio() const {
    const double better = std::min(errorOfLastYear, errorOfMeanRate);
    return better > 0 ? error / better : 0;
}

Scores& Scores::operator+=(const Scores& other) {
    months += other.months;
    dates += other.dates;
    year += other.year;
    return *this;
}

Scores backtest(const std::vector<MadeBalloon>& fleet, std::uint64_t seed) {
    Draws draws(seed);
    std::vector<MonthlyUse> known;
    for (const auto& balloon : fleet)
        known.push_back(inMonths(balloon.known));
    const auto pattern = fleetPattern(known);
    Scores scores;
    for (const auto& balloon : fleet)
        if (balloon.isAsked)
            scores += Judge(balloon, pattern, draws).judge();
    return scores;
}

std::string rowOf(const std::string& name, const Scores& scores) {
    std::array<char, 400> row{};
    const auto& [months, dates, year] = scores;
    const auto share = [](double part, const Score& score) {
        return score.asked > 0 ? part / static_cast<double>(score.asked) : 0;
    };
    std::snprintf(row.data(), row.size(),
                  "| %s | %ld | %.3f (%.3f below) | %.2f | %ld | %.3f (%.3f below) | %.2f | %.3f |", name.c_str(),
                  months.asked, months.coverage(), share(months.below, months), months.ratio(), dates.asked,
                  dates.coverage(), share(dates.below, dates), dates.ratio(), year.coverage());
    return row.data();
}

}
