// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The last year is hidden, foretold, and compared. Two things are foretold: the minutes of each of its months, and the
/// days on which a quarter, a half and three quarters of what the year before flew are used up again.
///
/// Months of no flight at all are common, and a band from 0 to 0 would hold them whatever it is worth; so whether a
/// band holds is asked of the probability integral transform, drawn evenly within a jump of the distribution (Czado,
/// Gneiting and Held, Biometrics 65 (2009) 1254-1261, from memory): it holds in one case of five less, whoever is
/// honest. What was not used up within the year has its place drawn from what was then still to come.

#include "registry/use_log.h"

#include <cstdint>
#include <string>
#include <vector>

namespace crownring::made {

struct MadeBalloon;

struct Score {
    long asked = 0;
    double held = 0;            ///< between p10 and p90
    double below = 0;           ///< of those that were not: under p10
    double error = 0;           ///< sum of absolute errors of p50
    double errorOfLastYear = 0; ///< of last year's average per month
    double errorOfMeanRate = 0; ///< of the mean rate of the whole log

    Score& operator+=(const Score& other);
    [[nodiscard]] double coverage() const { return asked > 0 ? held / static_cast<double>(asked) : 0; }
    /// Of mean absolute errors, to the better of the two.
    [[nodiscard]] double ratio() const;
};

struct Scores {
    Score months; ///< errors in minutes
    Score dates;  ///< errors in days
    Score year;   ///< minutes of the whole year

    Scores& operator+=(const Scores& other);
};

/// @param seed of the places within jumps
[[nodiscard]] Scores backtest(const std::vector<MadeBalloon>& fleet, std::uint64_t seed);

/// A row of the table in tests/README.md.
[[nodiscard]] std::string rowOf(const std::string& name, const Scores& scores);

}
