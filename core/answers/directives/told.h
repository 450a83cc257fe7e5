// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Directives and bulletins of the record: whom each binds on a day, who not and why, of whom nobody knows, what was
/// answered, and when it is due next.

#include "answers/directives/fitted.h"
#include "bench/checklist/inspection.h"
#include "parts/directive_due.h"
#include "registry/books.h"
#include "rules/due/due_list.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring {

/// It was complied with, and that counts.
struct ComplianceTold {
    Said<DirectiveAnswered> said;
    Figures clock; ///< stated, or as computed for the moment; absent where neither is known
    Evidence evidence = Evidence::Stated;
};

/// One revision of a directive, held against one item.
struct DirectiveRow {
    enum class Life {
        Upcoming, ///< effective after the day
        InForce,
        Superseded, ///< by another directive or revision; told where it was answered
    };
    const ItemFacts* item = nullptr;
    DirectiveIssued directive;
    Life life = Life::InForce;
    Applicability applicability;
    std::optional<Said<DirectiveAnswered>> excused; ///< why it is not applicable: then `applicability` says no
    std::vector<ComplianceTold> done;               ///< in the order of their stamps
    DirectiveState state;                           ///< of what is in force and binds it
    bool atOnce = false; ///< lapsed because it comes before the next flight: not flown since it took effect
};
/// "upcoming", "superseded", "not-bound", else as `standingText`.
[[nodiscard]] std::string_view standingOf(const DirectiveRow& row);
/// For lists: worst first, what is not bound and what is history last.
[[nodiscard]] int directivePlace(const DirectiveRow& row);
/// What it bounds, in the order of the clocks.
[[nodiscard]] std::vector<Limit> limitsFrom(const DoneWithin& within);
/// Why it is bound or not, or why nobody knows.
[[nodiscard]] Phrase whyOf(const DirectiveRow& row);
[[nodiscard]] Phrase whyOf(const Applicability& applicability);

/// All revisions that the record learnt of up to the day, in the order of their stamps.
[[nodiscard]] Result<std::vector<Said<DirectiveIssued>>> directivesIssued(Books& books, CivilDate on);
/// What each of them is on that day, in the order given.
[[nodiscard]] std::vector<DirectiveRow::Life> livesOn(const std::vector<Said<DirectiveIssued>>& issued, CivilDate on);

struct DirectivesAsked {
    CivilDate on;
    FlyingAs as;                             ///< the items would fly together as that balloon
    std::optional<InspectionId> releasing{}; ///< what was done in it counts as if it were released
    bool everyLife = false;                  ///< what is not in force yet, or no longer, too
};

/// For items of the kinds that each is for; by item and directive, in the order given and of their stamps.
/// @param items the rows point into them
[[nodiscard]] Result<std::vector<DirectiveRow>> directiveRows(Books& books, const std::vector<ItemFacts>& items,
                                                              const DirectivesAsked& asked);

/// The rows of the due list: what is in force and binds, or may bind.
[[nodiscard]] Result<DirectiveMarks> directiveMarks(Books& books, const std::vector<ItemFacts>& items,
                                                    const DirectivesAsked& asked);

/// As the rules hold it: without whom it binds.
[[nodiscard]] Directive directiveFrom(const DirectiveIssued& issued);

}
