// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/approve_return.h"

#include "answers/discrepancies.h"

#include <algorithm>
#include <iterator>

namespace crownring {

Result<ReturnDraft> draftReturn(Books& books, const InspectionId& inspection, const Approving& approving) {
    auto file = returnFile(books, inspection, approving.on);
    if (!file)
        return tl::unexpected(file.error());
    ReturnDraft draft;
    draft.file = std::move(*file);
    draft.statement = statementOf(draft.file, approving);
    draft.refusals = refusals(draft.file, approving);
    const auto asked = wordingAsked(draft.file, approving);
    if (draft.file.pending)
        std::ranges::move(refusals(asked), std::back_inserter(draft.refusals));
    draft.wording = statesOf(asked);
    return draft;
}

Results<Receipt> approveReturn(Journal& journal, Books& books, const InspectionId& inspection,
                               const Approving& approving, std::optional<TimeOfDay> time, const SaidCode& said) {
    const auto file = returnFile(books, inspection, approving.on);
    if (!file)
        return tl::unexpected(std::vector<Problem>{file.error()});
    std::vector<NumberedEntry> entries;
    const auto say = [&](CivilDate on, std::optional<TimeOfDay> at, Body body) {
        Entry entry;
        entry.on = on;
        entry.time = at;
        entry.by = approving.person.text();
        entry.body = std::move(body);
        entries.push_back({std::move(entry), 0});
    };
    say(approving.on, time, composedApproval(*file, approving));
    for (const auto& work : file->accomplishments)
        say(file->list.closed.at.on(), file->time,
            RequirementDone{work.item, work.requirement, {}, {}, inspection.text()});
    return postSigned(journal, books, std::move(entries), said);
}

}
