// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Approving the return to service after a list of discrepancies: what would be signed is composed and shown; approving
/// posts it in one transaction, with all that the inspection accomplished, dated as the inspection was closed.

#include "acts/own_code.h"
#include "bench/returns/discrepancies.h"
#include "record/journal.h"
#include "registry/books.h"

namespace crownring {

struct ReturnDraft {
    ReturnFile file;
    PrescribedStatement statement;
    std::vector<Refusal> refusals;     ///< empty: it may be approved
    std::vector<WordingState> wording; ///< what is signed by, and who has confirmed it
};

/// ListAnswered for an inspection that was not closed with a list.
[[nodiscard]] Result<ReturnDraft> draftReturn(Books& books, const InspectionId& inspection, const Approving& approving);

/// @param time of the signature, UTC
/// NotReleasable with every reason while anything stands in the way; then nothing is written.
[[nodiscard]] Results<Receipt> approveReturn(Journal& journal, Books& books, const InspectionId& inspection,
                                             const Approving& approving, std::optional<TimeOfDay> time,
                                             const SaidCode& said = {});

}
