// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Visits that the record plans already: in a plan each holds its place, where it can be held.
///
/// A visit is of the week in which it ends, since its work is signed at its end. Of a plan that it cannot be held in
/// (`LooseVisit::Why`) it is no part: it stays written, and nothing is taken as done by it.

#include "answers/forecast/planned.h"
#include "answers/plan/planned_visits.h"

#include <span>

namespace crownring {

struct StandingVisit {
    EntryId entry; ///< that plans it
    VisitPlanned visit;
    bool operator==(const StandingVisit&) const = default;
};

struct LooseVisit {
    enum class Why {
        Begun,     ///< its week is before the plan's first
        Beyond,    ///< its week is after the plan's last
        NotBound,  ///< nothing on its balloon is planned for
        NoStation, ///< no station is called so
        Closed,    ///< the station is not open for that week, or a day of it is kept free for flying
        Full,      ///< others hold all its places in that week
        Elsewhere, ///< another visit of the balloon is held in that week
        LetGo,     ///< by who asks for the plan: it need not be in it
    };
    StandingVisit standing;
    Why why = Why::Begun;
    bool operator==(const LooseVisit&) const = default;
};

struct AlreadyPlanned {
    std::vector<StandingVisit> held; ///< by their first day
    std::vector<LooseVisit> loose;
};

/// @param asked its pins come before what the record plans: what they say otherwise of is let go
/// @param letGo entries that plan visits which need not be in it
[[nodiscard]] Result<AlreadyPlanned> alreadyPlanned(Books& books, const PlanAsked& asked,
                                                    std::span<const EntryId> letGo = {});

/// The same plan asked with what is held as pins.
[[nodiscard]] PlanAsked holding(PlanAsked asked, const AlreadyPlanned& already);

}
