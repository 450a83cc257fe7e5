// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// "If I fly this envelope with this basket, this burner and these cylinders: may I, and what governs?"

#include "registry/books.h"
#include "rules/due/rig_up.h"

#include <vector>

namespace crownring {

/// The answer and the due list of the kit that it points into.
struct RigUpAnswer {
    DueList due;
    RigUp verdict;
    std::vector<std::string> limitations{}; ///< of a check flight: what the releases that let it fly limit it to
};

struct UnreleasedWork {
    const ItemFacts* item; ///< of what was asked
    Phrase why;            ///< which visit
};

/// No flight between work and its release (ML.A.801(a); 14 CFR 91.407(a)(1)): a repair, a part or described work of a
/// visit that is open, unless that was released incomplete, which stands by itself; or that was abandoned, and no later
/// visit of the item released it.
[[nodiscard]] Result<std::vector<UnreleasedWork>> unreleasedWork(Books& books, const std::vector<ItemFacts>& kit,
                                                                 CivilDate on);

/// The kit flies as the balloon that its envelope is fitted to: that balloon's programmes and operations bind all of
/// it, besides those that bind each item where it is fitted now. While the record holds an entry that cannot be read,
/// or of a part of the kit none of that day, no kit may fly.
/// A check flight passes over what a release after incomplete maintenance covers, within the limitation that it names.
/// @return UnknownReference when an item is not in the record on that day; BadUse when the kit is empty.
[[nodiscard]] Result<RigUpAnswer> checkRigUp(Books& books, const std::vector<ItemId>& kit, CivilDate on,
                                             const PlannedFlight& flight);

}
