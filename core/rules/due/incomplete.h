// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How a release after incomplete maintenance stands in the due list: what was inspected flies within its limitation
/// alone, a check flight for instance, until the closing release (ML.A.801(f), from memory; 145.A.50(e) and
/// GM1 ML.A.301(f), read).

#include "registry/item_facts.h"
#include "rules/programme/requirement.h"
#include "rules/standing/standing.h"

#include <memory_resource>
#include <optional>

namespace crownring {

/// "incomplete/…": its name in the due list, and the inspection that such a name is of; nothing for another one.
[[nodiscard]] RequirementId incompleteRequirementId(const InspectionId& inspection);
[[nodiscard]] std::optional<InspectionId> incompleteOf(const RequirementId& requirement);
[[nodiscard]] Requirement incompleteRequirement(const IncompleteWork& work);
[[nodiscard]] const Programme& incompleteProgramme();

/// `Lapsed` until the closing release.
[[nodiscard]] Assessment assessIncomplete(std::pmr::memory_resource* memory = std::pmr::get_default_resource());

}
