// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Who is offered for a signature: each person in each capacity that the record entitles them to.

#include "bench/release/entitlement.h"
#include "screen/lists/choice_model.h"

#include <span>
#include <vector>

namespace crownring::screen {

/// A person in one of the capacities that the record entitles them to.
struct Signer {
    PersonId person;
    Capacity capacity = Capacity::PilotOwner;
    bool operator==(const Signer&) const = default;
};

/// value: person; label: person and capacity; detail: licence, or why not; chosen: may sign; of: the `Signer`. Those
/// who may come first.
/// @param blank what is signed for, and when; its person and capacity are not looked at
[[nodiscard]] std::vector<Choice> signersOf(std::span<const Entitlement> entitlements, const Signatory& blank,
                                            Visit visit);
/// The same of who approves the return to service after its list.
[[nodiscard]] std::vector<Choice> approversOf(std::span<const Entitlement> entitlements, const Signatory& blank,
                                              Visit visit);

/// The one at a place among them; nothing where there is none.
[[nodiscard]] std::optional<Signer> signerAt(const ChoiceModel& people, int at);
/// Its place; -1 where nobody is chosen or he is not among them.
[[nodiscard]] int placeOf(const std::optional<Signer>& signer, const ChoiceModel& people);

}
