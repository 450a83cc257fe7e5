// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Time since overhaul, which papers of components state beside time since new (EASA Form 1 and FAA Form 8130-3, block
/// 12, from memory). An overhaul is what a requirement of that name was done for: its id ends in "overhaul", as
/// "burner.overhaul" does.

#include "registry/item_facts.h"

#include <optional>

namespace crownring {

struct SinceOverhaul {
    CivilDate done;
    Figures use; ///< since then; what either clock does not say is unknown
    bool operator==(const SinceOverhaul&) const = default;
};

/// Since the last one; nothing where none is in the record.
[[nodiscard]] std::optional<SinceOverhaul> sinceOverhaul(const ItemFacts& item);

}
