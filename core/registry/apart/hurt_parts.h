// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What heat or fire on an item leaves of its parts: who takes a valve off an overheated cylinder, or off a burner that
/// a fire was on, knows no more of the valve than of what it was on. It is kept apart until it is released by itself
/// (ML.A.504, from memory); nobody has to write the word.

#include "registry/apart/kept_apart.h"
#include "registry/apart/overheated.h"

#include <map>
#include <vector>

namespace crownring {

/// What befell something that carries parts.
struct HurtCarrier {
    std::optional<Stamp> overheated; ///< it is condemned since then
    std::vector<Stamp> fires;        ///< that were reported of it, or of the balloon that it was on
    std::vector<Stamp> inspected;    ///< it was inspected or worked on, signed or by a paper
    StateWords words;                ///< what is said of its state
    bool operator==(const HurtCarrier&) const = default;
};

[[nodiscard]] HurtCarrier hurtCarrier(const ItemFacts& carrier, std::optional<VesselMaterial> material,
                                      StateWords words);

/// As what a part is kept apart before `end`: with an overheated cylinder that it is in still, or since it was taken
/// out of one, whenever it came in; or since it was taken out of what a fire was on while it was in it, and which
/// nobody had inspected in between. Nothing where it was released since by itself, or after a fire with what it was
/// back in.
/// @param carried what carried it until then
/// @param own what is said of its own state
/// @param carriers those that anything befell
[[nodiscard]] std::optional<OutOfService> apartSinceHurt(const Stamp& end, const std::vector<Carried>& carried,
                                                         const StateWords& own,
                                                         const std::map<ItemId, HurtCarrier>& carriers);

}
