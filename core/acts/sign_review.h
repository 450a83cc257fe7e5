// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Signing an airworthiness review, the extension of its certificate, or a recommendation: what would be signed is
/// composed and shown; signing posts it as one entry, which accomplishes what it says by itself.

#include "acts/own_code.h"
#include "bench/review/review_refusals.h"
#include "record/journal.h"
#include "registry/books.h"

namespace crownring {

struct ReviewSigning {
    Registration balloon;
    ReviewAct act = ReviewAct::Review;
    std::string form;
    std::string certificate;
    std::optional<CivilDate> expires; ///< as printed; nothing: what the rule gives
    PersonId reviewer;
    Capacity capacity = Capacity::AirworthinessReviewStaff;
    std::string findings;
    std::vector<std::string> photographs;
    std::optional<InspectionId> inspection;
    CivilDate on;
    std::optional<TimeOfDay> time; ///< UTC
};

struct ReviewDraft {
    Entry entry; ///< as it would be posted
    ReviewFile file;
    std::vector<Problem> refusals;     ///< empty: it may be signed
    std::vector<WordingState> wording; ///< what is signed by, and who has confirmed it
};

/// The envelope is the one that the balloon has on that day; the authorisation is what the record entitles the reviewer
/// by.
[[nodiscard]] Result<ReviewDraft> draftReview(Books& books, const ReviewSigning& signing);

/// With every reason while anything stands in the way; then nothing is written.
[[nodiscard]] Results<Receipt> signReview(Journal& journal, Books& books, const ReviewSigning& signing,
                                          const SaidCode& said = {});

}
