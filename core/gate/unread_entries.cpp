// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/release_fault.h"

#include <algorithm>

namespace crownring {

namespace {

/// What leans on all that the record holds: a release or a list of discrepancies, an approval, a deferral.
bool leansOnTheRecord(const Entry& entry) {
    const auto* closing = std::get_if<InspectionClosed>(&entry.body);
    return closing ? closing->outcome != Outcome::Abandoned
                   : std::holds_alternative<DefectDeferred>(entry.body) ||
                         std::holds_alternative<ReturnApproved>(entry.body);
}

}

Findings askUnreadEntries(const Batch& batch) {
    std::vector<Problem> problems;
    if (std::none_of(batch.entries.begin(), batch.entries.end(),
                     [](const auto& each) { return leansOnTheRecord(each.entry); }))
        return problems;
    const auto unread = batch.books.unreadable();
    if (!unread)
        return tl::unexpected(unread.error());
    for (const auto& [entry, line] : batch.entries)
        if (leansOnTheRecord(entry))
            for (const auto& question : *unread)
                problems.push_back(
                    Problem{ReleaseFault::EntryUnread, {question.subject, question.detail}, {{}, line, {}}});
    return problems;
}

}
