// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Closing an inspection: what would be signed is composed and shown; signing posts it, with all that it accomplishes,
/// in one transaction. A release that the rules refuse cannot be posted.

#include "acts/own_code.h"
#include "bench/confirmed/wording_refusals.h"
#include "bench/release/release.h"
#include "record/journal.h"
#include "registry/books.h"

namespace crownring {

struct ReleaseDraft {
    BenchFile file;
    ReleaseFacts facts;
    std::vector<ReleaseSection> sections;
    PrescribedStatement statement;
    std::vector<Refusal> refusals;     ///< empty: it may be signed
    std::vector<WordingState> wording; ///< what is signed by, and who has confirmed it
    /// After incomplete maintenance: why no check flight can rest on it. It may be signed all the same.
    std::vector<Argument> noCheckFlight;
    std::vector<Work> accomplishments;
};

[[nodiscard]] Result<ReleaseDraft> draftRelease(Books& books, const InspectionId& inspection, const Signing& signing);

/// @param time of the signature, UTC
/// NotReleasable with every reason while anything stands in the way; then nothing is written.
[[nodiscard]] Results<Receipt> sign(Journal& journal, Books& books, const InspectionId& inspection,
                                    const Signing& signing, std::optional<TimeOfDay> time, const SaidCode& said = {});

}
