// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What one line says of a balloon: the row of its due list that governs it.
///
///     strength test due in 38 days, annual in 160 days, a recommended hose in 367 days: the test, 38 days
///     an annual in 160 days, 100-hour with 12 h left at 1.5 h a week: the 100-hour, in 56 days
///
/// Only what is mandatory, blocks flight and is called for by the operations can govern; recommended rows and those of
/// filling stand apart and never colour the balloon.

#include "rules/due/due_list.h"

#include <functional>
#include <optional>
#include <span>
#include <vector>

namespace crownring {

/// What an item went through lately.
struct RecentUse {
    Usage use;
    Days over; ///< how many of the last days; 0: nothing is known of its pace
};
using PaceOf = std::function<RecentUse(const ItemFacts&)>;

/// Is the row one that can ground the balloon: mandatory, blocking flight, called for?
[[nodiscard]] bool isBinding(const DueRow& row);

/// When a limit comes at a pace: its due date, or the day on which what is left is used up. Nothing where it is not
/// known, or nothing is used.
[[nodiscard]] std::optional<CivilDate> comesOn(const LimitState& limit, const RecentUse& pace, CivilDate today);

struct Headline {
    const DueRow* row = nullptr;       ///< null: nothing binds the balloon, so nothing is known of it
    std::optional<LimitState> limit{}; ///< the limit of the row that governs, where one does
    std::optional<CivilDate> comes{};  ///< when it comes, where that is known
};

/// The worst standing governs; among equal ones that stand clear or nearing the one that comes first, else the first in
/// the order of the due list. Of a row with several limits the first that comes counts, under `last` the last one.
/// @param rows of one balloon, worst first, as a due list has them; the answer points into them
[[nodiscard]] Headline headlineOf(std::span<const DueRow* const> rows, const PaceOf& paceOf, CivilDate today);

/// The same rows as one meets them: what binds before the rest, the worse standing before the better, and of what
/// stands clear or nearing that first which comes first, as for the headline; what nobody can date last.
[[nodiscard]] std::vector<const DueRow*> asTheyCome(std::vector<const DueRow*> rows, const PaceOf& paceOf,
                                                    CivilDate today);

}
