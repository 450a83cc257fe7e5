// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A visit: one kind of stay on the bench, under one set of rules, and what it accomplishes. The one list of visits:
/// forms, the gate and checklists ask here, and a test holds the schemas to it.

#include "measure/name.h"
#include "problem/argument.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace crownring {

/// Whose rules a visit is carried out under. A visit is under one; both may bind one balloon in turn.
enum class Regime {
    PartMl,  ///< Regulation (EU) 1321/2014, Annex Vb (Part-ML)
    Us14Cfr, ///< 14 CFR Parts 43 and 91
};
inline constexpr std::array allRegimes{Regime::PartMl, Regime::Us14Cfr};
/// "part-ml", "us-14cfr".
[[nodiscard]] std::string_view regimeName(Regime regime);
[[nodiscard]] std::optional<Regime> regimeFrom(std::string_view name);

enum class Visit {
    PartMlInspection, ///< annual or 100-hour
    PartMlSpecial,    ///< after a hard landing, an over-temperature …
    PartMlOwnerTasks, ///< limited pilot-owner maintenance
    UsAnnual,
    UsHundredHour,
    UsSpecial,
    UsOwnerTasks, ///< preventive maintenance
    PartMlRepair,
    PartMlRectification, ///< of defects, of what an inspection listed
    PartMlCompliance,    ///< with a directive or a bulletin
    PartMlModification,
    PartMlComponent, ///< off the aircraft
    UsRepair,
    UsRectification,
    UsCompliance,
    UsAlteration,
    UsComponent,
};
inline constexpr std::array allVisits{Visit::PartMlInspection,   Visit::PartMlSpecial,       Visit::PartMlOwnerTasks,
                                      Visit::PartMlRepair,       Visit::PartMlRectification, Visit::PartMlCompliance,
                                      Visit::PartMlModification, Visit::PartMlComponent,     Visit::UsAnnual,
                                      Visit::UsHundredHour,      Visit::UsSpecial,           Visit::UsOwnerTasks,
                                      Visit::UsRepair,           Visit::UsRectification,     Visit::UsCompliance,
                                      Visit::UsAlteration,       Visit::UsComponent};

/// "part-ml-inspection" …, as the record writes it.
[[nodiscard]] std::string_view visitName(Visit visit);
[[nodiscard]] std::optional<Visit> visitFrom(std::string_view name);
/// All their names, for whoever wrote another.
[[nodiscard]] std::vector<std::string_view> visitNames();
[[nodiscard]] Term termOf(Visit visit);
[[nodiscard]] Regime regimeOf(Visit visit);
/// An annual or 100-hour inspection: the visits of a line that names none.
[[nodiscard]] bool isPeriodic(Visit visit);
/// An inspection after an event.
[[nodiscard]] bool isSpecial(Visit visit);
/// What an owner or pilot may do by themselves.
[[nodiscard]] bool isOfOwnersTasks(Visit visit);
/// Work that is no inspection: its release describes what was done (14 CFR 43.9(a); ML.A.801(e)).
[[nodiscard]] bool isMaintenance(Visit visit);
/// A repair, a modification or an alteration: whether it is a major one is asked.
[[nodiscard]] bool isGraded(Visit visit);
/// It ends with a release or a list of discrepancies: 14 CFR 43.11(b) (read) has lists of inspections alone.
[[nodiscard]] bool isInspection(Visit visit);
/// Of items that are on no balloon, each of which goes back to the pool with a release of its own.
[[nodiscard]] bool isOfComponents(Visit visit);

/// The requirements that a released visit accomplishes on the items inspected; none for owner's tasks and other work,
/// which accomplish what they were opened for. An annual counts as a 100-hour by the requirement's own `satisfied_by`.
[[nodiscard]] std::vector<RequirementId> accomplishes(Visit visit);
[[nodiscard]] bool accomplishes(Visit visit, const RequirementId& requirement);

}
