// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A pressure vessel that was overheated is condemned for good: aluminium at 176 °C (350 °F), steel at 343 °C (650 °F);
/// 49 CFR 180.203 (the first read, the second from memory) and 180.205(i) (from memory). Of what material is not known
/// the lower one is taken.

#include "record/kinds/items.h"
#include "registry/item_facts.h"

#include <optional>
#include <span>

namespace crownring {

/// From which temperature on.
[[nodiscard]] Celsius overheatedFrom(std::optional<VesselMaterial> material);

/// What it is of by all that is said of how it came into the record; nothing where nobody said, or they contradict each
/// other.
[[nodiscard]] std::optional<VesselMaterial> materialSaid(std::span<const ItemEntered> said);

/// The first event that overheated a cylinder; null where none did, and of other items.
[[nodiscard]] const Occurrence* overheatedBy(const ItemFacts& item, std::optional<VesselMaterial> material);

/// Where it was overheated it is out of service as what is condemned, whatever is said of its state: nobody has to
/// write that down, and no test takes it away.
void condemnOverheated(ItemFacts& item, std::optional<VesselMaterial> material);

}
