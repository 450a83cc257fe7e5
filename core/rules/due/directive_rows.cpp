// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due/directive_rows.h"

#include "rules/due/due_phrase.h"

namespace crownring {

namespace {

constexpr std::string_view directivePrefix = "directive/";

}

RequirementId directiveRequirementId(const DirectiveId& directive) {
    return RequirementId(std::string(directivePrefix) + directive.text());
}

std::optional<DirectiveId> directiveOf(const RequirementId& requirement) {
    const std::string_view text = requirement.text();
    return text.starts_with(directivePrefix) ? std::optional(DirectiveId(text.substr(directivePrefix.size())))
                                             : std::nullopt;
}

Requirement directiveRequirement(const DirectiveMark& mark) {
    Requirement requirement;
    requirement.id = directiveRequirementId(mark.directive);
    requirement.title = mark.directive.text() + ": " + mark.title;
    requirement.source = mark.source;
    requirement.note = mark.note;
    requirement.action = Action::Comply;
    requirement.force = mark.recommended ? Force::Recommended : Force::Mandatory;
    return requirement;
}

const Programme& directiveProgramme() {
    static const Programme programme{ProgrammeId("directives"),
                                     "",
                                     Phrase{DuePhrase::DirectivesIssued, {}},
                                     Phrase{DuePhrase::TheRecordItself, {}},
                                     Phrase{DuePhrase::DirectivesAreNoProgramme, {}},
                                     {}};
    return programme;
}

Assessment assessDirective(const DirectiveMark& mark, std::pmr::memory_resource* memory) {
    Assessment state{.governs = {}, .limits = std::pmr::vector<LimitState>(memory), .share = {}};
    state.because = mark.isUnknown ? Because::DirectiveUnknown : Because::Directive;
    state.standing = mark.isUnknown ? Standing::Unproven : mark.standing;
    state.evidence = mark.evidence;
    if (!mark.isUnknown && mark.next) {
        state.limits.push_back(*mark.next);
        state.governs = mark.next->clock;
        state.share = mark.next->share;
    }
    return state;
}

}
