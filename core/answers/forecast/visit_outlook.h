// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a visit on some days means: what it covers then, and what falls due before it. Plain values in and out, so that
/// a visit can be moved to and fro before anything is written.

#include "forecast/dates.h"
#include "record/entry.h"
#include "rules/due/due_list.h"

#include <optional>
#include <span>
#include <vector>

namespace crownring {

/// How surely something is due by the day before the visit. Its tolerance is not planned into.
enum class LapseChance {
    Already, ///< it is past, or nobody can say
    Surely,  ///< nine in ten at least
    Likely,  ///< one in two at least
    Perhaps, ///< one in ten at least
};

struct VisitWork {
    PlannedWork work;
    const DueRow* row = nullptr; ///< null where the record does not ask for it
    std::optional<DateBand> band;
};
struct LapsesBefore {
    const DueRow* row = nullptr;
    std::optional<DateBand> band;
    LapseChance how = LapseChance::Already;
    bool isCovered = false; ///< by the visit, too late
};
struct VisitOutlook {
    std::vector<VisitWork> covers;
    std::vector<LapsesBefore> before; ///< what binds and blocks flight; what is sure first
    std::vector<VisitWork> nearby;    ///< due with even chance within `nearbyDays` after its end, and not covered
};
inline constexpr int nearbyDays = 60;

/// @param rows with the bands of each, in the same order
/// @param from the visit's first day, instead of that which it states
[[nodiscard]] VisitOutlook outlookOf(const VisitPlanned& visit, std::span<const DueRow> rows,
                                     std::span<const std::optional<DateBand>> bands, CivilDate from);

/// The same visit that begins on another day and takes as long.
[[nodiscard]] VisitPlanned movedTo(VisitPlanned visit, CivilDate from);

}
