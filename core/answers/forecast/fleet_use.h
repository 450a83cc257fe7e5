// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a forecast of use rests on: logs of the last years, and what the fleet's have in common.

#include "forecast/use_ahead.h"
#include "registry/books.h"

#include <optional>

namespace crownring {

/// Further back nothing is looked at.
inline constexpr int yearsOfUse = 5;
[[nodiscard]] CivilDate firstDayOfUse(CivilDate known);

/// A balloon's log, under each registration that it had.
/// @param known the last day of which the record is taken to hold what was flown
[[nodiscard]] Result<UseLog> logOf(Books& books, const BalloonCard& card, CivilDate known);

/// What logs of the whole fleet have in common: of those that were flown within the last year, else of all; of so many
/// of them, evenly picked by the ids of items, that it costs no more for a large fleet. It is the same whatever was
/// asked for, and in whatever order entries came.
inline constexpr std::size_t mostOfPattern = 200;
[[nodiscard]] FleetPattern patternOf(const UseLogs& everything, CivilDate known);
/// Of all items.
[[nodiscard]] Result<UseLogs> everyLog(Books& books, CivilDate known);

/// A log of less than a year is held against the balloon that the item is on rather than against the fleet.
[[nodiscard]] bool isShort(const UseLog& log);
/// Flights a day by a balloon's log; nothing where it was not flown.
[[nodiscard]] std::optional<double> flownPaceOf(const UseLog& log, const FleetPattern& fleet);

}
