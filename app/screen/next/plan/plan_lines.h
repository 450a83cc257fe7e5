// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A found plan in words: its rows, what another plan changes in it, what becomes of the calendar by it.

#include "answers/plan/calendar_change.h"
#include "screen/next/plan/plan_model.h"
#include "screen/next/plan/plan_work.h"

#include <QStringList>

namespace crownring::screen {

/// "QE-OVA at Lakeside, week from Mon 1 Mar"
[[nodiscard]] QString stayText(const VisitPlace& place, CivilDate on);
/// @param on the day from which days are read
[[nodiscard]] std::vector<PlanLine> planLines(const PlanAnswer& answer, const PlanWishes& wishes, CivilDate on);
/// "QE-OVA, Annual inspection of ENV-12: due 2027-03-02: …"
[[nodiscard]] QStringList notKeptLines(const FleetVisits& plan);
[[nodiscard]] QStringList leftOutLines(const FleetVisits& plan);
/// Visits of the record that are no part of the plan; those that the user let go are said by his wishes.
[[nodiscard]] QStringList looseLines(const AlreadyPlanned& already);

/// What `tried` costs more than `now`, which visits change, what more could not be kept.
[[nodiscard]] QStringList differenceLines(const FleetVisits& now, const FleetVisits& tried, CivilDate on);
[[nodiscard]] QStringList changeLines(const CalendarChange& change);

}
