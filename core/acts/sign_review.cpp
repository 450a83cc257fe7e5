// SPDX-License-Identifier: GPL-3.0-or-later
#include "acts/sign_review.h"

#include "answers/review/reviews.h"

namespace crownring {

Result<ReviewDraft> draftReview(Books& books, const ReviewSigning& signing) {
    const auto envelope = envelopeOf(books, signing.balloon, signing.on);
    if (!envelope)
        return tl::unexpected(envelope.error());
    ReviewSigned said;
    said.balloon = signing.balloon;
    said.item = envelope->value_or(ItemId());
    said.act = signing.act;
    said.form = signing.form;
    said.certificate = signing.certificate;
    said.expires = signing.expires;
    said.reviewer = signing.reviewer;
    said.capacity = std::string(capacityName(signing.capacity));
    said.findings = signing.findings;
    said.photographs = signing.photographs;
    said.inspection = signing.inspection;
    ReviewDraft draft;
    draft.entry.on = signing.on;
    draft.entry.time = signing.time;
    draft.entry.by = signing.reviewer.text();
    draft.entry.body = said;
    auto file = reviewFile(books, draft.entry);
    if (!file)
        return tl::unexpected(file.error());
    said.authorisation = file->authorisation;
    if (!said.expires && signing.act != ReviewAct::Recommendation)
        said.expires = file->due;
    draft.refusals = refusals(*file, said);
    const auto asked = wordingAsked(*file, said);
    for (const auto& refusal : refusals(asked))
        draft.refusals.push_back(problemOf(refusal));
    draft.wording = statesOf(asked);
    said.statement = asked.statement.text;
    said.confirmed = confirmedFor(asked);
    draft.file = std::move(*file);
    draft.entry.body = std::move(said);
    return draft;
}

Results<Receipt> signReview(Journal& journal, Books& books, const ReviewSigning& signing, const SaidCode& said) {
    auto draft = draftReview(books, signing);
    if (!draft)
        return tl::unexpected(std::vector{draft.error()});
    if (!draft->refusals.empty())
        return tl::unexpected(std::move(draft->refusals));
    return postSigned(journal, books, {{std::move(draft->entry), 0}}, said);
}

}
