// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due/lists.h"

#include "rules/due/due_phrase.h"

namespace crownring {

namespace {

constexpr std::string_view listPrefix = "list/";

Argument titleOf(const PendingList& list) {
    Argument name = titleOfList(list.inspection);
    if (!list.count)
        return name;
    if (list.count->standing == 0)
        return Phrase{DuePhrase::ListAnswered, {std::move(name)}};
    return Phrase{DuePhrase::ListStands,
                  {std::move(name), list.count->listed, Phrase{DuePhrase::StillStand, {list.count->standing}}}};
}

}

RequirementId listRequirementId(const InspectionId& inspection) {
    return RequirementId(std::string(listPrefix) + inspection.text());
}

std::optional<InspectionId> listOf(const RequirementId& requirement) {
    const std::string_view text = requirement.text();
    return text.starts_with(listPrefix) ? std::optional(InspectionId(text.substr(listPrefix.size()))) : std::nullopt;
}

Phrase titleOfList(const InspectionId& inspection) { return {DuePhrase::ListOfInspection, {inspection}}; }

Requirement listRequirement(const PendingList& list) {
    Requirement requirement;
    requirement.id = listRequirementId(list.inspection);
    requirement.title = titleOf(list);
    requirement.source = Phrase{DuePhrase::ListSignedOn, {list.closed.at.on()}};
    requirement.note = Phrase{DuePhrase::ListNote, {}};
    requirement.action = Action::Service;
    return requirement;
}

const Programme& listProgramme() {
    static const Programme programme{ProgrammeId("lists"),
                                     "",
                                     Phrase{DuePhrase::ListsSigned, {}},
                                     Phrase{DuePhrase::TheRecordItself, {}},
                                     Phrase{DuePhrase::ListsAreNoProgramme, {}},
                                     {}};
    return programme;
}

Assessment assessList(std::pmr::memory_resource* memory) {
    Assessment state{.governs = {}, .limits = std::pmr::vector<LimitState>(memory), .share = {}};
    state.because = Because::Listed;
    state.standing = Standing::Lapsed;
    return state;
}

}
