// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How a list of discrepancies stands in the due list: it ends the inspection, not the matter. Each item that was
/// inspected is grounded by it until every item on the list is answered and a rated person approves the return to
/// service (14 CFR 43.11(a)(5), (b), read; 91.409(a), 91.405, gist read; under Part-ML after ML.A.403, from memory).

#include "registry/item_facts.h"
#include "rules/programme/requirement.h"
#include "rules/standing/standing.h"

#include <memory_resource>
#include <optional>

namespace crownring {

/// "list/…": the name that the list of an inspection has in the due list, and the inspection that such a name is of;
/// nothing for another requirement.
[[nodiscard]] RequirementId listRequirementId(const InspectionId& inspection);
[[nodiscard]] std::optional<InspectionId> listOf(const RequirementId& requirement);
/// "Discrepancies of inspection KS-2026-015".
[[nodiscard]] Phrase titleOfList(const InspectionId& inspection);
/// Its name, and how many items still stand where that is known, as a requirement of the due list.
[[nodiscard]] Requirement listRequirement(const PendingList& list);
[[nodiscard]] const Programme& listProgramme();

/// `Lapsed` as long as it is pending.
[[nodiscard]] Assessment assessList(std::pmr::memory_resource* memory = std::pmr::get_default_resource());

}
