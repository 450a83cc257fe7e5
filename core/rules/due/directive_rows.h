// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// How directives and bulletins stand in the due list: by what is answered to them. No tolerance of inspections applies
/// (14 CFR 39, ML.A.301(c): none is granted, from memory), and nothing puts one off.

#include "registry/item_facts.h"
#include "rules/programme/requirement.h"
#include "rules/standing/standing.h"

#include <memory_resource>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace crownring {

/// One that is in force and binds the item, or of which nobody can say whether it does.
struct DirectiveMark {
    DirectiveId directive;
    std::string revision;
    std::string title;
    std::string source;
    Argument note; ///< why it is not known, or what ends it
    bool recommended = false;
    bool isUnknown = false; ///< whether it binds the item
    Standing standing = Standing::Unproven;
    std::optional<LimitState> next; ///< that governs
    std::optional<Evidence> evidence{};
    bool operator==(const DirectiveMark&) const = default;
};
using DirectiveMarks = std::unordered_map<ItemId, std::vector<DirectiveMark>>;

/// "directive/…": the name that it has in the due list, and the directive that such a name is of; nothing for another.
[[nodiscard]] RequirementId directiveRequirementId(const DirectiveId& directive);
[[nodiscard]] std::optional<DirectiveId> directiveOf(const RequirementId& requirement);
[[nodiscard]] Requirement directiveRequirement(const DirectiveMark& mark);
[[nodiscard]] const Programme& directiveProgramme();

[[nodiscard]] Assessment assessDirective(const DirectiveMark& mark,
                                         std::pmr::memory_resource* memory = std::pmr::get_default_resource());

}
