// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Who may decide that what bars flight is less than it was found to be, or never was.

#include "answers/aircraft_rules.h"
#include "gate/check.h"
#include "problem/faults/release_fault.h"

namespace crownring {

/// Who found it takes his own word back: at once, before anybody wrote another, or in an inspection that is open, since
/// nothing of that is signed yet.
[[nodiscard]] Result<bool> takesBackOwnWord(const Batch& batch, const Entry& amendment, const JournalLine& root,
                                            const std::optional<InspectionId>& inspection);

/// What grounds, and is amended or voided.
struct TakenBack {
    const JournalLine& root;
    std::optional<InspectionId> inspection;
    std::optional<ItemId> item;
    ReleaseFault unsaid = ReleaseFault::GroundUnsaid; ///< where it is not said by whom or why, of `what`
    Argument what;
};
/// Nothing where who takes it back may decide that and says why, or where it is his own slip.
[[nodiscard]] Findings askWhoTakesBack(const Batch& batch, const Entry& amendment, const TakenBack& taken, int line);
/// The same of what is nobody's own slip.
[[nodiscard]] Findings askWhoDecides(const Batch& batch, const Entry& entry, const TakenBack& taken, int line);

/// Nothing where the person who writes the amendment may decide so of what was found on the item, under the rules
/// that its balloon flies by; without an item, where he may of any.
[[nodiscard]] Result<std::optional<Barred>> mayDecide(Books& books, const Entry& amendment,
                                                      const std::optional<ItemId>& on, const std::string& finder);

}
