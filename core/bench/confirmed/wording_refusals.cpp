// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/confirmed/wording_refusals.h"

#include <utility>

namespace crownring {

namespace {

ConfirmedText carried(const Confirmation& confirmation) {
    const auto& said = confirmation.said;
    return {said.text,        said.checklist, said.revision,   said.digest,
            said.confirmedBy, said.licence,   confirmation.on, said.against};
}

WordingState wordingState(const WordingAsked& asked, NamedText named, bool adopted) {
    WordingState state{std::move(named), adopted, {}};
    if (const auto* serving = servingConfirmation(*asked.book, asked.entitlements, state.named, asked.served))
        state.confirmed = carried(*serving);
    return state;
}

Refusal refusalOf(ReleaseFault fault, const WordingState& state, std::string rule) {
    return {Refusal::Kind::Wording, fault, {state.named.id(), state.named.revision}, std::move(rule), {}, {}};
}

}

WordingAsked wordingAsked(const BenchFile& file, const Signing& signing) {
    if (signing.outcome == Outcome::Abandoned)
        return {&file.wordings, file.entitlements, {}, {}, {file.visit(), signing.person}};
    return {&file.wordings,
            file.entitlements,
            statementOf(releaseFacts(file, signing)),
            namedChecklist(file.inspection.opened.body.checklist),
            {file.visit(), signing.person}};
}

std::vector<WordingState> statesOf(const WordingAsked& asked) {
    std::vector<WordingState> states;
    if (asked.statement.wording)
        states.push_back(wordingState(asked, named(*asked.statement.wording), asked.statement.adopted));
    if (asked.checklist)
        states.push_back(wordingState(asked, *asked.checklist, true));
    return states;
}

std::vector<Refusal> refusals(const WordingAsked& asked) {
    std::vector<Refusal> refused;
    for (const auto& state : statesOf(asked)) {
        const auto& rule = state.named.text ? asked.statement.source : std::string();
        if (!state.adopted)
            refused.push_back(refusalOf(ReleaseFault::WordingNotAdopted, state, rule));
        else if (!state.confirmed)
            refused.push_back(
                refusalOf(state.named.text ? ReleaseFault::WordingNotConfirmed : ReleaseFault::ChecklistNotConfirmed,
                          state, rule));
    }
    for (const auto& place : asked.statement.unfilled)
        refused.push_back({Refusal::Kind::Wording,
                           ReleaseFault::PlaceUnfilled,
                           {asked.statement.wording->text, place},
                           asked.statement.source,
                           {},
                           {}});
    return refused;
}

std::vector<ConfirmedText> confirmedFor(const WordingAsked& asked) {
    std::vector<ConfirmedText> confirmed;
    for (auto& state : statesOf(asked))
        if (state.adopted && state.confirmed)
            confirmed.push_back(std::move(*state.confirmed));
    return confirmed;
}

}
