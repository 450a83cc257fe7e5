// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"

#include <algorithm>

namespace crownring {

Findings askRenamings(const Batch& batch) {
    std::vector<Problem> problems;
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
