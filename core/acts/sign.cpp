// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/sign.h"

#include "answers/bench_file.h"
#include "answers/closing.h"
#include "answers/visit/check_flights.h"
#include "bench/confirmed/wording_refusals.h"
#include "bench/release/accomplished.h"

#include <algorithm>
#include <iterator>

namespace crownring {

namespace {

Entry signedEntry(const Signing& signing, std::optional<TimeOfDay> time, Body body) {
    Entry entry;
    entry.on = signing.on;
    entry.time = time;
    entry.by = signing.person.text();
    entry.body = std::move(body);
    return entry;
}

}

Result<ReleaseDraft> draftRelease(Books& books, const InspectionId& inspection, const Signing& signing) {
    auto file = benchFile(books, inspection, signing.on);
    if (!file)
        return tl::unexpected(file.error());
    ReleaseDraft draft;
    draft.file = std::move(*file);
    draft.facts = releaseFacts(draft.file, signing);
    draft.sections = sectionsOf(draft.facts);
    draft.statement = statementOf(draft.facts);
    draft.refusals = refusals(draft.file, signing);
    if (signing.outcome == Outcome::Released && draft.file.inspection.isOpen()) {
        auto unflown = refusalsOfCheckFlights(books, draft.file, signing.on);
        if (!unflown)
            return tl::unexpected(unflown.error());
        std::ranges::move(*unflown, std::back_inserter(draft.refusals));
    }
    const auto asked = wordingAsked(draft.file, signing);
    if (draft.file.inspection.isOpen())
        std::ranges::move(refusals(asked), std::back_inserter(draft.refusals));
    draft.wording = statesOf(asked);
    if (signing.outcome == Outcome::Incomplete)
        draft.noCheckFlight = barsOfCheckFlight(draft.file, signing);
    draft.accomplishments = accomplishments(draft.file);
    return draft;
}

Results<Receipt> sign(Journal& journal, Books& books, const InspectionId& inspection, const Signing& signing,
                      std::optional<TimeOfDay> time, const SaidCode& said) {
    auto draft = draftRelease(books, inspection, signing);
    if (!draft)
        return tl::unexpected(std::vector<Problem>{draft.error()});
    if (signing.outcome == Outcome::Incomplete) {
        auto release = composedIncomplete(journal, books, draft->file, signing);
        if (!release)
            return tl::unexpected(std::vector<Problem>{release.error()});
        return postSigned(journal, books, {{signedEntry(signing, time, std::move(*release)), 0}}, said);
    }
    auto closing = composedClosing(journal, books, draft->file, signing);
    if (!closing)
        return tl::unexpected(std::vector<Problem>{closing.error()});
    std::vector<NumberedEntry> entries;
    entries.push_back({signedEntry(signing, time, std::move(*closing)), 0});
    if (signing.outcome == Outcome::Released)
        for (const auto& work : draft->accomplishments)
            entries.push_back(
                {signedEntry(signing, time, RequirementDone{work.item, work.requirement, {}, {}, inspection.text()}),
                 0});
    return postSigned(journal, books, std::move(entries), said);
}

}
