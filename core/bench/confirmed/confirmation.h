// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Who may confirm that a wording is what the rule says now, and for whose signatures that counts: who may sign such a
/// visit may say by what words. An owner confirms for himself alone. No rule says so: it is the house's own.

#include "bench/release/entitlement.h"
#include "bench/wording/named_text.h"

namespace crownring {

/// Nothing when somebody in that capacity may confirm what is signed in any of these visits.
/// @param visits none: it is of reviews, which a reviewer confirms
[[nodiscard]] std::optional<Barred> barOfConfirming(Capacity capacity, std::span<const Visit> visits);

/// Nothing when the record entitles the person to the capacity on that day, for whatever balloon.
[[nodiscard]] std::optional<Barred> notHeld(std::span<const Entitlement> entitlements, const PersonId& person,
                                            Capacity capacity, CivilDate on);

/// What a signature asks of a confirmation.
struct Served {
    std::optional<Visit> visit; ///< nothing: a review
    PersonId signatory;
    bool approving = false; ///< the return to service after the visit's list of discrepancies
};

/// The latest confirmation of it that counts for that signature, by somebody who was entitled on its day; null where
/// there is none.
[[nodiscard]] const Confirmation* servingConfirmation(const WordingBook& book,
                                                      std::span<const Entitlement> entitlements, const NamedText& named,
                                                      const Served& served);

}
