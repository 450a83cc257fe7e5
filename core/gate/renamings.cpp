// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"

#include <algorithm>

namespace crownring {

namespace {

/// What is stated of a registration that the balloon no longer has would ground nothing.
Result<std::optional<Problem>> outUnderAnother(const Batch& batch, const Registration& balloon) {
    const auto cards = batch.books.balloons(CivilDate::last());
    if (!cards)
        return tl::unexpected(cards.error());
    const auto card = std::ranges::find(*cards, balloon, &BalloonCard::balloon);
    if (card == cards->end() || !card->renamed || !card->out)
        return std::nullopt;
    return Problem{ReleaseFault::RenamedAndOut, {balloon, reasonOf(*card->out), reasonOf(*card->renamed)}};
}

}

Findings askRenamings(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<BalloonRenamed, BalloonState>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        if (!*now)
            continue;
        const auto* renamed = std::get_if<BalloonRenamed>(&(*now)->body);
        const auto out =
            outUnderAnother(batch, renamed ? renamed->balloon : std::get<BalloonState>((*now)->body).balloon);
        if (!out)
            return tl::unexpected(atLine(out.error(), line));
        if (*out)
            problems.push_back(atLine(**out, line));
    }
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<BalloonRenamed>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        if (!*now)
            continue;
        const auto& to = std::get<BalloonRenamed>((*now)->body).to;
        const auto facts = batch.books.facts({to, {}}, (*now)->on);
        if (!facts)
            return tl::unexpected(atLine(facts.error(), line));
        const auto envelopes = std::ranges::count(*facts, ItemKind::Envelope, &ItemFacts::kind);
        if (envelopes > 1)
            problems.push_back(Problem{ReleaseFault::RegistrationInUse, {to}, {{}, line, "to"}});
    }
    return problems;
}

}
