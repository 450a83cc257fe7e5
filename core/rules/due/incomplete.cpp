// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due/incomplete.h"

#include "rules/due/due_phrase.h"

namespace crownring {

namespace {

constexpr std::string_view incompletePrefix = "incomplete/";

}

RequirementId incompleteRequirementId(const InspectionId& inspection) {
    return RequirementId(std::string(incompletePrefix) + inspection.text());
}

std::optional<InspectionId> incompleteOf(const RequirementId& requirement) {
    const std::string_view text = requirement.text();
    return text.starts_with(incompletePrefix) ? std::optional(InspectionId(text.substr(incompletePrefix.size())))
                                              : std::nullopt;
}

Requirement incompleteRequirement(const IncompleteWork& work) {
    Requirement requirement;
    requirement.id = incompleteRequirementId(work.inspection);
    requirement.title = Phrase{DuePhrase::IncompleteIn, {work.inspection}};
    requirement.source = Phrase{DuePhrase::IncompleteSignedOn, {work.released.at.on()}};
    requirement.note = Phrase{DuePhrase::IncompleteNote, {}};
    requirement.action = Action::Service;
    return requirement;
}

const Programme& incompleteProgramme() {
    static const Programme programme{ProgrammeId("incomplete"),
                                     "",
                                     Phrase{DuePhrase::IncompleteReleases, {}},
                                     Phrase{DuePhrase::TheRecordItself, {}},
                                     Phrase{DuePhrase::IncompleteAreNoProgramme, {}},
                                     {}};
    return programme;
}

Assessment assessIncomplete(std::pmr::memory_resource* memory) {
    Assessment state{.governs = {}, .limits = std::pmr::vector<LimitState>(memory), .share = {}};
    state.because = Because::Incomplete;
    state.standing = Standing::Lapsed;
    return state;
}

}
