// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What the record holds of the wording that is signed: what is adopted, by whom it was confirmed against which rule.

#include "bench/confirmed/confirmation.h"
#include "registry/books.h"

#include <optional>
#include <string>
#include <vector>

namespace crownring {

struct ConfirmedLine {
    Confirmation confirmation;
    bool counts = true; ///< who confirmed was entitled on its day
};

/// A text or a checklist as it is in use on a day.
struct WordingLine {
    NamedText named;
    std::string body; ///< of a text; of a checklist its document
    std::string source;
    bool read = false; ///< the words were read in the source: of a wording that ships
    bool ships = true; ///< else it is an organisation's own
    std::string note;
    std::optional<AdoptedText> adopted;   ///< of a text; a checklist is adopted by opening an inspection with it
    std::vector<Visit> visits;            ///< that are signed by it; none: a review is
    std::vector<ConfirmedLine> confirmed; ///< of exactly this, by stamp

    [[nodiscard]] bool isText() const { return named.text.has_value(); }
    [[nodiscard]] bool isConfirmed() const;
};

/// All texts, the checklists that ship, and those that open inspections were opened by.
[[nodiscard]] Result<std::vector<WordingLine>> wordingsOn(Books& books, CivilDate on);

/// One of them by its id; of a checklist in the revision named, else the first. Nothing where there is none.
[[nodiscard]] std::optional<WordingLine> wordingIn(const std::vector<WordingLine>& lines, std::string_view id,
                                                   std::string_view revision = {});

/// A checklist that an inspection of the record was opened by, or that an organisation adopted, by its digest; its
/// document; empty where there is none.
[[nodiscard]] Result<std::string> checklistOfRecord(Books& books, const TextConfirmed& said);

}
