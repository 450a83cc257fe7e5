// SPDX-License-Identifier: GPL-3.0-or-later
#include "gate/checks.h"
#include "gate/refusing.h"
#include "problem/faults/entry_fault.h"

namespace crownring {

Findings askNotifiedEvents(const Batch& batch) {
    std::vector<Problem> problems;
    for (const auto& [entry, line] : batch.entries) {
        const auto now = standingAs<EventNotified>(batch.journal, entry);
        if (!now)
            return tl::unexpected(atLine(now.error(), line));
        if (!*now)
            continue;
        const auto& said = std::get<EventNotified>((*now)->body);
        const auto told = batch.journal.line(said.event);
        if (!told)
            return tl::unexpected(atLine(told.error(), line));
        const auto* event =
            *told && !(*told)->unread && !(*told)->voided ? std::get_if<EventReported>(&nowOf(**told).body) : nullptr;
        if (!event || event->subject != said.subject)
            problems.push_back(
                asAmended(Problem{EntryFault::NotTheEvent, {said.event.text()}, {{}, line, "event"}}, entry));
    }
    return problems;
}

}
