// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/programme_fault.h"
#include "record/chain/chain.h"

namespace crownring {

namespace {

std::optional<Problem> unreadable(const ProgrammeAdopted& adopted) {
    if (adopted.document.empty())
        return Problem{ProgrammeFault::NoText, {}, atKey("document")};
    if (auto problem = unreadableText(adopted))
        return problem;
    if (const auto digest = hex(sha256(adopted.document)); adopted.digest != digest)
        return Problem{ProgrammeFault::DigestNotAmended, {digest}, atKey("digest")};
    return std::nullopt;
}

}

Findings askAdoptions(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<ProgrammeAdopted>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        if (!*now)
            continue;
        if (auto found = unreadable(std::get<ProgrammeAdopted>((*now)->body)))
            problems.push_back(atLine(asAmended(std::move(*found), entry), line));
    }
    return problems;
}

}
