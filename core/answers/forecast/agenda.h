// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The days to come: flights that are planned, whether the record lets them be flown by then and what they make due.
/// Each is held against the rules of its day with what is planned before it flown. What visits are planned for is not
/// taken to be done.

#include "answers/check_rig_up.h"
#include "answers/forecast/planned.h"
#include "answers/forecast/supposed.h"

#include <memory>
#include <vector>

namespace crownring {

/// A row that stands worse once something is flown.
struct MadeDue {
    const DueRow* before = nullptr;
    const DueRow* after = nullptr;
};
/// In the order of `after`; rows that are recommended or not called for, too. Both lists are of the same items and day.
[[nodiscard]] std::vector<MadeDue> madeDue(const DueList& before, const DueList& after);

struct AgendaFlight {
    FlightAhead planned;
    std::vector<ItemId> kit;            ///< what would fly; empty where nothing is fitted
    std::shared_ptr<RigUpAnswer> check; ///< null where nothing would fly
    std::shared_ptr<DueList> after;     ///< of the same items, in the evening; null as `check`
    std::vector<MadeDue> makes;         ///< into the two
    std::optional<VisitPlanned> at;     ///< a visit of its balloon that is planned for that day as well

    [[nodiscard]] bool mayFly() const { return check && check->verdict.mayFly; }
};

struct Agenda {
    std::vector<AgendaFlight> flights; ///< in order
    std::vector<VisitAhead> visits;    ///< of which a day lies in these
};

/// @param from the first day; a flight of it that was logged by now is left out
/// @param known the last day of which the record is taken to hold what was flown, `from` or the day before
[[nodiscard]] Result<Agenda> agendaOf(Books& books, CivilDate from, CivilDate to, CivilDate known);

/// What flights make due that are only supposed: the due list of their day with and without them.
struct Supposed {
    DueList before;
    DueList after;
    std::vector<MadeDue> makes; ///< into the two
    std::vector<ItemId> flown;  ///< what they move the clocks of
};
[[nodiscard]] Result<Supposed> supposeFlights(Books& books, const std::vector<SupposedFlight>& flights,
                                              const Scope& scope, CivilDate on, Outside outside = Outside::LeftOut);

}
