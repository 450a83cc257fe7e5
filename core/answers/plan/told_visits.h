// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A balloon's plan as it is told: what each visit covers and why, and what could not be kept.

#include "answers/plan/balloon_tasks.h"
#include "answers/plan/planned_visits.h"

namespace crownring {

[[nodiscard]] PlannedRow plannedRowOf(const DueRow& row);
/// Puts the plan's visits, and what it does not keep, behind what is told already.
void tell(const BalloonWork& work, const VisitPlan& plan, const PlanGround& ground, FleetVisits& told);

}
