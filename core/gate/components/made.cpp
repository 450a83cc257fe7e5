// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/entry_fault.h"

namespace crownring {

Findings askMade(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<ItemEntered>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        const auto* entered = *now ? std::get_if<ItemEntered>(&(*now)->body) : nullptr;
        if (entered && entered->made && isBefore((*now)->on, *entered->made))
            problems.push_back(asAmended(
                Problem{EntryFault::MadeLater, {entered->made->iso(), (*now)->on}, {{}, line, "made"}}, entry));
    }
    return problems;
}

}
