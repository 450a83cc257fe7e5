// SPDX-License-Identifier: GPL-3.0-or-later
#include "bench/checklist/inspection.h"
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"

#include <algorithm>

namespace crownring {

namespace {

/// A release, or a return that was approved after a list, which nobody has withdrawn: dated before the withdrawal.
bool holds(const Inspection& inspection, const Entry& withdrawal) {
    const auto& closed = inspection.closed;
    if (closed && closed->body.outcome == Outcome::Released)
        return !inspection.revoked && closed->stamp.at.on() <= withdrawal.on;
    return inspection.approved && inspection.approved->stamp < stampOf(withdrawal);
}

Findings judged(const Batch& batch, const Entry& entry, const ReleaseRevoked& revoked, int line) {
    auto told = batch.books.told({Subject::Inspection,
                                  revoked.inspection.text(),
                                  {kindName<InspectionOpened>(), kindName<InspectionClosed>(),
                                   kindName<ReturnApproved>(), kindName<ReleaseRevoked>()},
                                  CivilDate::last()});
    if (!told)
        return tl::unexpected(told.error());
    std::erase_if(*told, [&](const JournalLine& each) { return each.entry.id == entry.id; });
    const auto inspection = inspectionFrom(revoked.inspection, *told);
    if (!inspection)
        return tl::unexpected(inspection.error());
    std::vector<Problem> problems;
    if (!holds(*inspection, entry))
        problems.push_back(Problem{ReleaseFault::NoReleaseToRevoke, {revoked.inspection}, {{}, line, "inspection"}});
    if (entry.by.empty())
        problems.push_back(Problem{ReleaseFault::NobodyRevokes, {}, {{}, line, "by"}});
    return problems;
}

/// Nothing is accomplished again by taking a withdrawal back: that wants a signature.
Result<std::optional<Problem>> takenBack(Journal& journal, const Entry& entry, int line) {
    const auto* taken = std::get_if<EntryVoided>(&entry.body);
    if (!taken)
        return std::nullopt;
    const auto root = rootOf(journal, taken->voids);
    if (!root)
        return tl::unexpected(root.error());
    const auto* revoked = std::get_if<ReleaseRevoked>(&root->entry.body);
    if (!revoked || !root->voided)
        return std::nullopt;
    return Problem{ReleaseFault::StaysRevoked, {revoked->inspection}, {{}, line, "voids"}};
}

}

Findings askRevocations(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<ReleaseRevoked>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        if (const auto* revoked = *now ? std::get_if<ReleaseRevoked>(&(*now)->body) : nullptr) {
            auto found = judged(batch, **now, *revoked, line);
            if (!found)
                return tl::unexpected(atLine(found.error(), line));
            std::ranges::move(*found, std::back_inserter(problems));
        }
        auto back = takenBack(batch.journal, entry, line);
        if (!back)
            return tl::unexpected(atLine(back.error(), line));
        if (*back)
            problems.push_back(std::move(**back));
    }
    return problems;
}

}
