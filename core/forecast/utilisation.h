// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// At what pace something is flown: learnt from its own log, and from its fleet where that is short.
///
/// Flights a day are level x season. The **level** is a gamma law that forgets: each month what was learnt before
/// counts for less, the mean stays (power discounting: Smith, J. R. Statist. Soc. B 41 (1979) 375-387; for counts
/// Harvey and Fernandes, J. Bus. Econ. Statist. 7 (1989) 407-417, both from memory). How quickly it should forget is
/// not known: several memories run side by side, each weighted by how well it foretold every past month (dynamic model
/// averaging; Raftery, Karny and Ettler, Technometrics 52 (2010) 52-66, from memory). What kept its habits remembers
/// for years, what changed them half way forgets what was before. The **season** is a share of each month, shrunk to
/// the fleet's as if that had been watched for `seasonWorth` flights. Counts are divided by their dispersion first.
///
/// Shrinkage, in words: a log of n flights at a dispersion of f weighs n / f against the fleet's `levelShape` for its
/// level, against `seasonWorth` for its season, against `flightWorth` flights for how long one takes, and against
/// `scatterWorth` months for how much months scatter.

#include "forecast/fleet_pattern.h"

#include <array>
#include <optional>
#include <vector>

namespace crownring {

inline constexpr double seasonWorth = 24;
inline constexpr double flightWorth = 10;
inline constexpr double scatterWorth = 12;

/// A level that forgets.
struct PaceLevel {
    double weight = 0; ///< of this memory among all; they add to 1
    double shape = 0;  ///< of the gamma law, in flights over their dispersion
    double rate = 0;   ///< of that law, in days at a season of 1
    [[nodiscard]] double mean() const { return rate > 0 ? shape / rate : 0; } ///< flights a day
};
inline constexpr std::array<double, 5> memories{0.1, 0.3, 0.5, 0.7, 0.85};
/// What is left of what a memory had learnt, by its place among them, after so many halves of a day, at most 62.
[[nodiscard]] double keptAfter(std::size_t memory, int halfDays);

struct Utilisation {
    std::vector<PaceLevel> levels;
    double priorShape = 1; ///< of the fleet, to which what is forgotten falls back
    double priorRate = 1;
    ByMonth season{};       ///< the mean of its months is 1
    double seasonShape = 1; ///< how well that is known: parameters of a Dirichlet law, added up
    Dispersion dispersion;
    ByClock<PerFlight> flight{};
    double flights = 0; ///< of its own log

    /// Flights a day that it is expected to make at a season of 1, the mean of the year.
    [[nodiscard]] double level() const;
};

/// A log and what it is held against where it is short.
/// @param level flights a day instead of the fleet's, where something nearer is known: of the balloon that an item is
/// on
[[nodiscard]] Utilisation utilisationOf(const MonthlyUse& log, const FleetPattern& fleet,
                                        const std::optional<double>& level = {});

}
