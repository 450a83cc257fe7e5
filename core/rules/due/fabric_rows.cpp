// SPDX-License-Identifier: GPL-3.0-or-later
#include "rules/due/fabric_rows.h"

#include "rules/due/due_phrase.h"

#include <algorithm>

namespace crownring {

namespace {

constexpr std::string_view ofFabric = "fabric/", ofAnother = "reading/";

Standing standingOf(FabricMark::State state) {
    switch (state) {
    case FabricMark::State::Within:
        return Standing::Clear;
    case FabricMark::State::Near:
        return Standing::Nearing;
    case FabricMark::State::Undecided:
    case FabricMark::State::Said:
        return Standing::Unproven;
    case FabricMark::State::Panel:
        return Standing::Lapsed;
    case FabricMark::State::Item:
        return Standing::Spent;
    }
    return Standing::Unproven;
}

}

RequirementId fabricRequirementId(const FabricMark& mark) {
    return RequirementId(std::string(mark.ofFabric ? ofFabric : ofAnother) + mark.quantity);
}

std::optional<std::string> quantityOfFabric(const RequirementId& id) {
    return id.text().starts_with(ofFabric) ? std::optional(id.text().substr(ofFabric.size())) : std::nullopt;
}

Requirement fabricRequirement(const FabricMark& mark) {
    Requirement requirement;
    requirement.id = fabricRequirementId(mark);
    requirement.title = Phrase{mark.ofFabric ? DuePhrase::Fabric : DuePhrase::Reading, {mark.title}};
    requirement.source = mark.source;
    const auto note = mark.ofFabric ? DuePhrase::FabricNote : DuePhrase::ReadingNote;
    requirement.note =
        Phrase{mark.state == FabricMark::State::Said ? DuePhrase::FabricSaid : note, {mark.what, mark.stamp.at.on()}};
    requirement.action = mark.state == FabricMark::State::Item ? Action::Retire : Action::Test;
    return requirement;
}

const Programme& fabricProgramme() {
    static const Programme programme{ProgrammeId("fabric"),
                                     "",
                                     Phrase{DuePhrase::ReadingsOfFabric, {}},
                                     Phrase{DuePhrase::TheRecordItself, {}},
                                     Phrase{DuePhrase::ReadingsAreNoProgramme, {}},
                                     {}};
    return programme;
}

Assessment assessFabric(const FabricMark& mark, std::pmr::memory_resource* memory) {
    Assessment state{.governs = {}, .limits = std::pmr::vector<LimitState>(memory), .share = {}};
    state.because = Because::Fabric;
    state.standing = standingOf(mark.state);
    if (mark.share > 0)
        state.share = std::clamp(1 - 1 / mark.share, -1.0, 1.0);
    return state;
}

}
