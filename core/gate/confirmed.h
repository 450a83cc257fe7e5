// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What every signature is asked of its wording.

#include "bench/confirmed/wording_refusals.h"
#include "bench/release/signed_phrase.h"
#include "gate/refusing.h"

namespace crownring {

/// Where the wording was not confirmed, or who confirmed it is not as the record composes it.
inline void askConfirmed(const WordingAsked& asked, const std::vector<ConfirmedText>& posted, int line,
                         std::vector<Problem>& problems) {
    const auto refused = refusals(asked);
    for (const auto& refusal : refused)
        problems.push_back(atLine(problemOf(refusal), line));
    const auto composed = confirmedFor(asked);
    if (!refused.empty() || posted == composed)
        return;
    Listed all;
    for (const auto& each : composed)
        all.list.emplace_back(Phrase{SignedPhrase::ConfirmedAs,
                                     {each.text ? Argument(*each.text) : Argument(*each.checklist), each.revision,
                                      each.by, each.on, each.against}});
    problems.push_back(
        Problem{ReleaseFault::OtherText,
                {Phrase{SignedPhrase::Confirmed, {}},
                 composed.empty() ? Argument(Phrase{SignedPhrase::Nothing, {}}) : Argument(std::move(all))},
                {{}, line, "confirmed"}});
}

}
