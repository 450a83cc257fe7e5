// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How the fabric of an envelope stands in the due list: by readings held against the bounds of its type's manual. A
/// reading beyond a bound retires the panel, or the envelope where the manual says so; a forecast retires nothing.

#include "registry/item_facts.h"
#include "rules/programme/requirement.h"
#include "rules/standing/standing.h"

#include <memory_resource>

namespace crownring {

/// "fabric/…": the name that readings of a quantity have in the due list.
[[nodiscard]] RequirementId fabricRequirementId(std::string_view quantity);
/// That, and what was read, as a requirement of the due list.
[[nodiscard]] Requirement fabricRequirement(const FabricMark& mark);
[[nodiscard]] const Programme& fabricProgramme();

/// Within the bound `Clear`, close to it `Nearing`, undecided `Unproven`, a panel beyond it `Lapsed`, the envelope
/// `Spent`. The share left is what the worst reading has above the bound, of the reading.
[[nodiscard]] Assessment assessFabric(const FabricMark& mark,
                                      std::pmr::memory_resource* memory = std::pmr::get_default_resource());

}
