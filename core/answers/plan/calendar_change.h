// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the visits that are planned in the record lack to be those of a plan.

#include "answers/plan/already_planned.h"

namespace crownring {

struct CalendarChange {
    struct Wider {
        StandingVisit standing;        ///< as it is written
        std::vector<PlannedWork> more; ///< what the plan covers by it besides
        bool operator==(const Wider&) const = default;
    };
    std::vector<VisitPlanned> added; ///< from Monday to Friday
    std::vector<Wider> wider;
    std::vector<StandingVisit> takenBack; ///< was let go, and the plan has no visit there
    std::vector<StandingVisit> stays;     ///< as it is written
    [[nodiscard]] bool isNothing() const { return added.empty() && wider.empty() && takenBack.empty(); }
    bool operator==(const CalendarChange&) const = default;
};

/// The entry that plans that visit of the plan already, where one does: one that is held, or was let go and is in the
/// plan all the same.
[[nodiscard]] std::optional<EntryId> entryOf(const PlannedStay& stay, const AlreadyPlanned& already);

/// What a visit was written to cover stays in it. Visits that could not be held and were not let go are no part of it.
/// @param already what the plan was asked with
[[nodiscard]] CalendarChange calendarChange(const FleetVisits& plan, const AlreadyPlanned& already);

}
